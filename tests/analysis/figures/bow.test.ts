import { expect, test } from "vitest";
import { bowOf } from "../../../src/analysis/figures/bow.ts";
import { readColumns, readExpected } from "../../published/read-data.ts";
import { expectNear, rounding } from "../sample-loop.ts";
import { outAndBack } from "../sample-staged.ts";

const points = [0, 25, 50, 75, 100];

test("a bow of 1 % in the middle leaves 0.6 % there, less what the line takes", () => {
  const bow = bowOf(outAndBack(points, 2, ({ point }) => (point * (100 - point)) / 2500));
  // The mean of 0, 0.75, 1, 0.75, 0 is 0.5; the line is level by symmetry; the ends tie with the middle at 0.5.
  expectNear(Math.abs(bow?.greatest ?? 0), 0.5, rounding);
  expect(bow?.residuals.map((residual) => Number(residual.toFixed(12)))).toEqual([-0.5, 0.25, 0.5, 0.25, -0.5]);
});

test("a straight line of any slope has none, and rising and falling count alike", () => {
  const straight = outAndBack(points, 2, ({ point, direction }) => point / 30 + (direction === "rising" ? 1 : -1));
  expectNear(bowOf(straight)?.greatest, 0, rounding);
});

test("the load cell of the NIST handbook bends by some twenty scatters: its lack of fit is 214.7", () => {
  const { x = [], y = [] } = readColumns("nist-load-cell");
  const expected = readExpected<Record<string, number>>("nist-load-cell");
  const bow = bowOf(
    x.map((load, index) => ({
      index,
      point: load,
      input: load,
      direction: "rising",
      cycle: 1,
      elapsed: index,
      error: y[index]!,
    })),
  );
  expect(bow?.degreesOfFreedom).toBe(expected.pureErrorDegreesOfFreedom);
  // Lack of fit: twice the squares of the 20 mean residuals on 18 degrees of freedom, over the pure error; printed to 7
  // digits, reproduced by NumPy to 214.7469.
  const lackOfFit =
    (2 * (bow?.residuals ?? []).reduce((sum, residual) => sum + residual ** 2, 0)) /
    18 /
    (bow?.repeatability ?? 1) ** 2;
  expect(Math.abs(lackOfFit / (expected.lackOfFit as number) - 1)).toBeLessThan(1e-5);
});

test("three points tell none, nor does one run one way", () => {
  expect(bowOf(outAndBack([0, 50, 100], 2, () => 0))).toBeUndefined();
  expect(bowOf(outAndBack(points, 1, () => 0).filter(({ direction }) => direction === "rising"))).toBeUndefined();
});

test("one run out and back tells it by the gaps between the two ways", () => {
  const gaps = [0.02, -0.01, 0.01, 0, -0.02];
  const bow = bowOf(
    outAndBack(points, 1, ({ point, direction }) => (direction === "rising" ? (gaps[point / 25] ?? 0) : 0)),
  );
  // The standard deviation of the five gaps, of mean 0, is √(0.001/4); a reading scatters √2 times less.
  expectNear(bow?.repeatability, Math.sqrt(0.001 / 4 / 2), rounding);
  expect(bow?.degreesOfFreedom).toBe(4);
});
