import { expect, test } from "vitest";
import { centre, sumOfProducts } from "../../src/numeric/centre.ts";

test("the deviations of 1, 2, 6 stand about their mean 3", () => {
  expect(centre(Object.freeze([1, 2, 6]))).toEqual({ mean: 3, deviations: [-2, -1, 3] });
});

test("at an offset of 1e7 the rounding of the mean is taken off the deviations again", () => {
  const values = [10000000.2, ...Array.from({ length: 500 }, () => [10000000.1, 10000000.3]).flat()];
  const { deviations } = centre(values);
  const total = deviations.reduce((sum, deviation) => sum + deviation, 0);
  // 1001 deviations of 0.1, each rounded to 1.4e-17 at most, added plainly: 1e-12 is ample; left in, the mean's
  // rounding alone would be worth 1001 * 2e-10.
  expect(Math.abs(total)).toBeLessThan(1e-12);
});

test("the products of -2, -1, 3 with themselves add up to 14", () => {
  expect(sumOfProducts([-2, -1, 3], [-2, -1, 3])).toBe(14);
  expect(() => sumOfProducts([1], [1, 2])).toThrow(RangeError);
});
