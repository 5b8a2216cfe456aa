import { expect, test } from "vitest";
import { leastScatter, readingScatter } from "../../../src/verdict/teaching/reading-scatter.ts";

const tolerance = { low: -2, high: 2 };
const reading = (point: number, direction: "rising" | "falling", error: number) => ({
  ...{ point, direction, reference: point, tolerance },
  indicated: point + error,
});

test("pooled over the repeats of each point and direction, over the tolerance", () => {
  const readings = [0.1, 0.3, 0.5]
    .map((error) => reading(0, "rising", error))
    .concat([1, 1.4].map((error) => reading(50, "falling", error)));
  // By hand: squares about the means 0.04 + 0 + 0.04 and 0.04 + 0.04, three degrees of freedom.
  const expected = Math.sqrt(0.16 / 3) / 2;
  const found = readingScatter(readings)!;
  expect(Math.abs(found.part - expected)).toBeLessThan(1e-12);
  expect(found.degreesOfFreedom).toBe(3);
});

test("with one cycle the gaps tell it, and not how wide they are", () => {
  const gaps = [1, 1.2, 0.8, 1];
  const one = gaps.flatMap((gap, place) => [reading(place, "rising", 0), reading(place, "falling", gap)]);
  // Sample standard deviation of 1, 1.2, 0.8, 1 is √(0.08/3); a difference scatters √2 times as much; tolerance 2.
  expect(Math.abs(readingScatter(one)!.part - Math.sqrt(0.08 / 3) / Math.SQRT2 / 2)).toBeLessThan(1e-12);
  expect(readingScatter(one.filter(({ direction }) => direction === "rising"))).toBeUndefined();
});

test("the lower bound is that of the confidence interval of a variance", () => {
  // NIST/SEMATECH e-Handbook 1.3.6.7.4: the 95 % point of chi-squared with 10 degrees of freedom is 18.307.
  expect(Math.abs(leastScatter({ part: 1, degreesOfFreedom: 10 }) - Math.sqrt(10 / 18.307))).toBeLessThan(1e-5);
});
