import fc from "fast-check";
import { expect, test } from "vitest";
import { lineBetween, upperHull } from "../../src/numeric/line-between.ts";

const points = fc
  .array(
    fc.tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: -50, max: 50 }), fc.integer({ min: 0, max: 30 })),
    {
      minLength: 2,
      maxLength: 9,
    },
  )
  .filter((list) => new Set(list.map(([abscissa]) => abscissa)).size > 1);

function excess(list: readonly (readonly [number, number, number])[], slope: number): number {
  const floor = Math.max(...list.map(([x, low]) => low - slope * x));
  const ceiling = Math.min(...list.map(([x, low, width]) => low + width - slope * x));
  return (floor - ceiling) / 2;
}

function found(list: readonly (readonly [number, number, number])[]) {
  return lineBetween(
    list.map(([x]) => x),
    list.map(([, low]) => low),
    list.map(([, low, width]) => low + width),
  );
}

test("between 0, 1, 4, 9 less and more 1 the line 3x − 1 touches both bounds", () => {
  const line = lineBetween(Object.freeze([0, 1, 2, 3]), Object.freeze([-1, 0, 3, 8]), Object.freeze([1, 2, 5, 10]));
  expect(line).toMatchObject({ slope: 3, intercept: -1, greatestExcess: 0 });
});

test("a bound that is wide at one end only lets the line go there", () => {
  // Below 0 and above 10 at x = 1 there is room for any line through (0, 0): it keeps half the least width away.
  expect(lineBetween([0, 1], [-1, -10], [1, 10]).greatestExcess).toBe(-1);
});

test("by brute force: no slope through any two bounds leaves them less, and the line given leaves them by that much", () => {
  fc.assert(
    fc.property(points, (list) => {
      const { slope, valueAtMean, abscissaMean, greatestExcess } = found(list);
      const ends = list.flatMap(([x, low, width]) => [
        [x, low],
        [x, low + width],
      ]) as [number, number][];
      const slopes = ends.flatMap(([x, y]) =>
        ends.flatMap(([otherX, otherY]) => (otherX === x ? [] : [(otherY - y) / (otherX - x)])),
      );
      // Sums of numbers below 4000: their rounding is under 1e-11.
      expect(greatestExcess).toBeLessThanOrEqual(Math.min(...slopes.map((each) => excess(list, each))) + 1e-11);
      const left = list.map(([x, low, width]) => {
        const value = valueAtMean + slope * (x - abscissaMean);
        return Math.max(low - value, value - low - width);
      });
      expect(Math.abs(Math.max(...left) - greatestExcess)).toBeLessThan(1e-11);
    }),
    { seed: 20261125, numRuns: 300 },
  );
});

test("what determines no line is refused", () => {
  expect(() => lineBetween([1], [0], [1])).toThrow(RangeError);
  expect(() => lineBetween([1, 1], [0, 0], [1, 1])).toThrow(RangeError);
  expect(() => lineBetween([1, 2], [0, 0], [1, Number.NaN])).toThrow(RangeError);
  expect(() => lineBetween([1, 2], [0, 0], [1])).toThrow(RangeError);
});

const cornersAt = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([abscissa, ordinate]) => ({ abscissa, ordinate }));

test("the string over four points rests on three of them", () => {
  expect(upperHull(cornersAt([2, 1], [0, 0], [3, 0], [1, 2]))).toEqual(cornersAt([0, 0], [1, 2], [3, 0]));
});

test("of points at one abscissa the highest counts, and points on a straight line are no corners", () => {
  expect(upperHull(cornersAt([1, 5], [1, 7], [1, 6]))).toEqual(cornersAt([1, 7]));
  expect(upperHull(cornersAt([0, 0], [1, 1], [2, 2], [3, 3]))).toEqual(cornersAt([0, 0], [3, 3]));
  expect(upperHull(cornersAt([0, -9], [2, -9], [0, 3], [2, 1]))).toEqual(cornersAt([0, 3], [2, 1]));
});

test("points that sag leave the ends only, and none leave none", () => {
  expect(upperHull(cornersAt([0, 0], [1, -1], [2, -1], [3, 0]))).toEqual(cornersAt([0, 0], [3, 0]));
  expect(upperHull([])).toEqual([]);
});
