import fc from "fast-check";
import { expect, test } from "vitest";
import { shortestInterval, symmetricInterval } from "../../src/numeric/shortest-interval.ts";

const six = Object.freeze([5, 6, 7, 8, 12, 20]);

test("half of six values: the three steps that lie closest, and the three in the middle", () => {
  expect(shortestInterval(six, 0.5)).toEqual({ low: 5, high: 8 });
  expect(symmetricInterval(six, 0.5)).toEqual({ low: 6, high: 12 });
});

test("of a million evenly spread values the symmetric interval leaves 2.5 % on either side", () => {
  const even = Float64Array.from({ length: 1_000_000 }, (_, index) => index + 1);
  // JCGM 101, 7.7.2: q = 950000, r = (M − q)/2 = 25000, and the ends are y(r) and y(r + q).
  expect(symmetricInterval(even, 0.95)).toEqual({ low: 25_000, high: 975_000 });
});

test("of exponential values the shortest interval begins at the least, the symmetric one does not", () => {
  const count = 100_001;
  const values = Array.from({ length: count - 1 }, (_, index) => -Math.log1p(-(index + 0.5) / (count - 1)));
  const shortest = shortestInterval(values, 0.95);
  expect(shortest.low).toBe(values[0]);
  // −ln 0.05 = 2.9957, −ln 0.975 = 0.0253 and −ln 0.025 = 3.6889; values near 3 lie 20/n = 2e-4 apart, near 3.7 4e-4.
  expect(Math.abs(shortest.high - 2.9957)).toBeLessThan(4e-4);
  const symmetric = symmetricInterval(values, 0.95);
  expect(Math.abs(symmetric.low - 0.0253)).toBeLessThan(1e-4);
  expect(Math.abs(symmetric.high - 3.6889)).toBeLessThan(8e-4);
});

test("no interval of the same count is shorter (all tried), and it holds the share", () => {
  const whole = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 4, maxLength: 40 });
  fc.assert(
    fc.property(whole, fc.double({ min: 0.3, max: 0.8, noNaN: true }), (unordered, share) => {
      const values = Object.freeze(unordered.toSorted((left, right) => left - right));
      const { low, high } = shortestInterval(values, share);
      const inside = (from: number, to: number) => values.filter((value) => value >= from && value <= to).length;
      const steps = Math.round(share * values.length);
      expect(inside(low, high)).toBeGreaterThan(steps);
      for (const [index, from] of values.entries())
        for (const to of values.slice(index + steps)) expect(to - from).toBeGreaterThanOrEqual(high - low);
    }),
  );
});

test("values out of order, not finite or too few, and shares that are none, are refused", () => {
  for (const interval of [shortestInterval, symmetricInterval]) {
    expect(() => interval([1, 3, 2, 4], 0.5)).toThrow("ascending");
    expect(() => interval([1, Number.NaN, 3, 4], 0.5)).toThrow("ascending");
    expect(() => interval([1, 2, 3, Number.POSITIVE_INFINITY], 0.5)).toThrow("finite");
    expect(() => interval([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 0.95)).toThrow("too few");
    expect(() => interval([], 0.5)).toThrow("too few");
    for (const share of [0, 1, Number.NaN]) expect(() => interval(six, share)).toThrow(RangeError);
  }
});
