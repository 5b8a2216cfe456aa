import { expect, test } from "vitest";
import { growingScatter } from "../../../src/analysis/uncertainty/growing-scatter.ts";
import { readingScatter } from "../../../src/analysis/uncertainty/reading-scatter.ts";
import { randomFrom } from "../../computed/loops/random.ts";
import { howMany } from "../../how-many.ts";
import { curveReading, expectNear } from "../sample-loop.ts";

const points = [0, 20, 40, 60, 80, 100];
const readOnce = (rising: readonly number[], falling: readonly number[]) =>
  [rising, falling].flatMap((errors, way) =>
    errors.map((error, place) => curveReading(points[place] as number, error, way === 0 ? "rising" : "falling")),
  );
const growing = readOnce([0.01, -0.02, 0.05, -0.11, 0.15, -0.21], [-0.01, 0.03, -0.04, 0.08, -0.17, 0.19]);

test("sizes of the residuals on the distance, by R 4.2.2 (lm, hatvalues, predict)", () => {
  const found = growingScatter(growing)!;
  const expected = [
    [0, 0.014874288954604811, 1],
    [60, 0.15217078742622356, 9.6817648083069159],
    [100, 0.26653568846735826, 3.3446096610514804],
  ] as const;
  // Sums of twelve numbers, summed otherwise.
  for (const [point, deviation, freedom] of expected) {
    expectNear(found.get(point)?.standardDeviation, deviation, 1e-12);
    expectNear(found.get(point)?.degreesOfFreedom, freedom, 1e-9);
  }
  expect(found.size).toBe(6);
});

test("the scatter of one cycle takes it, less the steps, beside the one about the line", () => {
  const scatter = readingScatter(growing, 0.02);
  if ("notDetermined" in scatter) throw new Error(scatter.notDetermined);
  expect(scatter.isAboutLine).toBe(true);
  expectNear(scatter.ofPoints?.get(100)?.standardDeviation, Math.sqrt(0.26653568846735826 ** 2 - 0.0004), 1e-12);
  expect(scatter.ofPoints?.get(0)?.standardDeviation).toBe(0);
});

test("no growth, few points, no scatter: nothing", () => {
  const even = readOnce([0.1, -0.11, 0.1, -0.1, 0.11, -0.1], [-0.1, 0.1, -0.1, 0.11, -0.1, 0.1]);
  expect(growingScatter(even)).toBeUndefined();
  expect(growingScatter(growing.filter(({ point }) => point >= 40))).toBeUndefined();
  expect(growingScatter(readOnce([0, 0, 0, 0, 0, 0], [0, 0, 0, 0, 0, 0]))).toBeUndefined();
});

test("normal scatter that is everywhere the same is said to grow in 5 % of the draws, one that grows ninefold in a third or more", () => {
  const draws = howMany(400, 1000);
  const saidOf = (sizeAt: (place: number) => number) => {
    let said = 0;
    for (let seed = 1; seed <= draws; seed++) {
      const random = randomFrom(seed);
      const row = () => points.map((_, place) => random.normal(sizeAt(place)));
      if (growingScatter(readOnce(row(), row())) !== undefined) said += 1;
    }
    return said / draws;
  };
  // Sizes are not normal, so the 5 % are not exact: 2 to 8 %, four standard deviations of 1000 draws (0.7 %) about what is expected, and nearly three of 400.
  const ofEven = saidOf(() => 1);
  expect(ofEven).toBeGreaterThan(0.02);
  expect(ofEven).toBeLessThan(0.08);
  expect(saidOf((place) => 0.2 + 0.32 * place)).toBeGreaterThan(0.3);
});
