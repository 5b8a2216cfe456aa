import fc from "fast-check";
import { expect, test } from "vitest";
import { lineOfLeastShare } from "../../src/numeric/line-of-least-share.ts";

type Triple = readonly [abscissa: number, middle: number, halfWidth: number];

const points = fc
  .array(
    fc.tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: -50, max: 50 }), fc.integer({ min: 1, max: 40 })),
    {
      minLength: 2,
      maxLength: 8,
    },
  )
  .filter((list) => new Set(list.map(([abscissa]) => abscissa)).size > 1);

const found = (list: readonly Triple[]) =>
  lineOfLeastShare(
    list.map(([x]) => x),
    list.map(([, y]) => y),
    list.map(([, , width]) => width),
  );

const shareOf = (list: readonly Triple[], slope: number, intercept: number) =>
  Math.max(...list.map(([x, y, width]) => Math.abs(intercept + slope * x - y) / width));

/** The slopes at which the share that a slope needs may have its corner: three points that all need it, by Cramer's rule. */
function cornerSlopes(list: readonly Triple[]): readonly number[] {
  const signs = [1, -1] as const;
  return list.flatMap(([x1, y1, w1], first) =>
    list.slice(first + 1).flatMap(([x2, y2, w2], second) => {
      const pairs = x1 === x2 ? [] : [(y2 - y1) / (x2 - x1)];
      const triples = list.slice(first + second + 2).flatMap(([x3, y3, w3]) =>
        signs.flatMap((s2) =>
          signs.flatMap((s3) => {
            // a + m·x − s·t·w = y for the three, the first with s = 1; differences leave m and t.
            const [a11, a12, b1] = [x2 - x1, -(s2 * w2 - w1), y2 - y1];
            const [a21, a22, b2] = [x3 - x1, -(s3 * w3 - w1), y3 - y1];
            const determinant = a11 * a22 - a12 * a21;
            return determinant === 0 ? [] : [(b1 * a22 - a12 * b2) / determinant];
          }),
        ),
      );
      return [...pairs, ...triples];
    }),
  );
}

/** For one slope the least share, by halving: between two shares of which one is too small and one is enough. */
function leastShareAt(list: readonly Triple[], slope: number): number {
  let [low, high] = [0, shareOf(list, slope, 0)];
  for (let step = 0; step < 200; step += 1) {
    const share = (low + high) / 2;
    const floor = Math.max(...list.map(([x, y, width]) => y - slope * x - share * width));
    const ceiling = Math.min(...list.map(([x, y, width]) => y - slope * x + share * width));
    if (floor <= ceiling) high = share;
    else low = share;
  }
  return high;
}

test("the docblock's three points: by hand 6/7 of each half width stays, below, above and below", () => {
  const { slope, intercept, greatestShare } = found([
    [0, 0, 1],
    [1, 3, 1],
    [2, 0, 4],
  ]);
  for (const [value, expected] of [
    [slope, 9 / 7],
    [intercept, 6 / 7],
    [greatestShare, 6 / 7],
  ] as const)
    expect(Math.abs(value - expected)).toBeLessThan(1e-14);
});

test("a straight line is met everywhere, however narrow the bounds are at one end", () => {
  const list = [0, 1, 2, 3, 4, 5].map((x): Triple => [x, 50 + x, 10 * (x + 1)]);
  const { slope, intercept, greatestShare } = found(list);
  expect(Math.abs(slope - 1)).toBeLessThan(1e-12);
  expect(Math.abs(intercept - 50)).toBeLessThan(1e-12);
  expect(greatestShare).toBeLessThan(1e-13);
});

test("by brute force: at no slope where three points need the same share is less enough", () => {
  fc.assert(
    fc.property(points, (list) => {
      const { slope, valueAtMean, abscissaMean, greatestShare } = found(list);
      const least = Math.min(...cornerSlopes(list).map((each) => leastShareAt(list, each)));
      expect(greatestShare).toBeLessThanOrEqual(least + 1e-10);
      expect(Math.abs(shareOf(list, slope, valueAtMean - slope * abscissaMean) - greatestShare)).toBeLessThan(1e-10);
    }),
    { seed: 20261128, numRuns: 300 },
  );
});

test("what determines no line, and a bound without width, are refused", () => {
  expect(() => lineOfLeastShare([1], [0], [1])).toThrow(RangeError);
  expect(() => lineOfLeastShare([1, 1], [0, 0], [1, 2])).toThrow(RangeError);
  expect(() => lineOfLeastShare([1, 2], [0, 0], [1, 0])).toThrow(RangeError);
  expect(() => lineOfLeastShare([1, 2], [0, 0], [1])).toThrow(RangeError);
  expect(() => lineOfLeastShare([1, 2], [0, 0], [1, Number.NaN])).toThrow(RangeError);
});
