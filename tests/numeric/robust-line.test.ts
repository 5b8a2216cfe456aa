import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { robustLine, robustScale } from "../../src/numeric/robust-line.ts";
import { readColumns } from "../published/read-data.ts";

const alone = (count: number) => Array.from({ length: count }, (_, index) => [index]);

test("a wild seventh point of a line is left out", () => {
  const line = robustLine([0, 1, 2, 3, 4, 5, 6], [0, 1, 2, 3, 4, 5, 60], alone(7), 0);
  expect(line.excluded).toEqual([6]);
  expect(line.fit).toMatchObject({ n: 6, slope: 1, intercept: 0 });
});

test("Norris as published keeps all its 36 readings, so that the line is least squares as certified", () => {
  const { x = [], y = [] } = readColumns("nist-norris");
  const line = robustLine(x, y, alone(x.length), 0);
  expect(line.excluded).toEqual([]);
  expect(line.fit).toEqual(fitLine(x, y));
});

test("Norris with one reading ten times too great leaves out that one and no other", () => {
  const { x = [], y = [] } = readColumns("nist-norris");
  const wild = y.with(3, 8880);
  const line = robustLine(x, wild, alone(x.length), 0);
  expect(line.excluded).toEqual([3]);
  const rest = x.map((_, index) => index).filter((index) => index !== 3);
  expect(line.fit).toEqual(
    fitLine(
      rest.map((index) => x[index] as number),
      rest.map((index) => y[index] as number),
    ),
  );
});

test("exact points with a rounded one: what rounding hides is no wild point", () => {
  const y = [0, 1, 2, 3.004, 4, 5];
  expect(robustLine([0, 1, 2, 3, 4, 5], y, alone(6), 0).excluded).toEqual([3]);
  expect(robustLine([0, 1, 2, 3, 4, 5], y, alone(6), 0.003).excluded).toEqual([]);
});

test("fewer than six points exclude none, and a single place falls back to the points", () => {
  expect(robustLine([0, 1, 2, 3, 4], [0, 1, 2, 3, 40], alone(5), 0).excluded).toEqual([]);
  expect(robustLine([0, 1, 2], [0, 1, 2], [[0, 1, 2]], 0).fit.slope).toBe(1);
  expect(() => robustLine([0, 1], [0, 1], alone(2), 0)).toThrow(RangeError);
});

test("the robust scale of six values is 3.03933… and that of ±1 is 1.482602…", () => {
  // Median of sizes 2.05 over Φ⁻¹(0.75), NumPy and SciPy 1.17.1; relative tolerance 1e-14, a rounding of each.
  expect(Math.abs(robustScale([-3.1, 0.4, 2.2, 9.7, -0.6, 1.9]) / 3.0393345479364835 - 1)).toBeLessThan(1e-14);
  expect(robustScale([-1, 1, -1, 1, 100])).toBe(1.482602218505602);
});

test("where all but two points stand in one place, none is left out: the others would be no line", () => {
  const line = robustLine([5, 5, 5, 5, 5, 5, 0, 10], [1, 1, 1, 1, 1, 1, 9, 9], [[0, 1, 2, 3, 4, 5], [6], [7]], 0);
  expect(line.excluded).toEqual([]);
  expect(Number.isFinite(line.fit.slope)).toBe(true);
});
