import fc from "fast-check";
import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { lineValue } from "../../src/numeric/line-value.ts";
import { minimaxLine } from "../../src/numeric/minimax-line.ts";
import { minimaxSlopeThrough } from "../../src/numeric/minimax-slope-through.ts";
import { minimaxDeviationByTriples } from "../published/minimax-by-triples.ts";

// fast-check prints seed and path with any counterexample; give them to fc.assert as { seed, path } to see it again.

type Points = { readonly abscissas: readonly number[]; readonly ordinates: readonly number[] };

/** Coordinates are small whole numbers, so that shifts and scalings by powers of two are exact and repeats frequent. */
const wholePoints = (least: number) =>
  fc
    .array(fc.tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: -100, max: 100 })), {
      minLength: least,
      maxLength: 12,
    })
    .map(
      (pairs): Points => ({
        abscissas: Object.freeze(pairs.map(([x]) => x)),
        ordinates: Object.freeze(pairs.map(([, y]) => y)),
      }),
    )
    .filter(({ abscissas }) => new Set(abscissas).size > 1);

const greatest = (values: readonly number[]) => Math.max(...values.map(Math.abs));

const near = (value: number, expected: number, tolerance: number) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance);

// Ordinates reach 100 and slopes 200; sums of 12 such terms round to about 1e-13.
const ROUNDING = 1e-11;

test("shifting abscissas and ordinates moves the least-squares line and changes neither slope nor scatter", () => {
  fc.assert(
    fc.property(
      wholePoints(3),
      fc.integer({ min: -1e9, max: 1e9 }),
      fc.integer({ min: -1e9, max: 1e9 }),
      (points, dx, dy) => {
        const fit = fitLine(points.abscissas, points.ordinates);
        const moved = fitLine(
          points.abscissas.map((x) => x + dx),
          points.ordinates.map((y) => y + dy),
        );
        near(moved.slope, fit.slope, ROUNDING);
        // A perfect line leaves a residual that is rounding only, so the comparison is absolute.
        near(moved.residualStdDev!, fit.residualStdDev!, ROUNDING);
        near(moved.slopeStdError!, fit.slopeStdError!, ROUNDING);
        // Means of numbers near 1e9 carry 1e-7.
        near(lineValue(moved, dx) - dy, lineValue(fit, 0), 1e-4);
      },
    ),
  );
});

test("another unit on either axis gives the same line in that unit", () => {
  fc.assert(
    fc.property(wholePoints(3), fc.integer({ min: -8, max: 8 }), fc.integer({ min: -8, max: 8 }), (points, px, py) => {
      const fit = fitLine(points.abscissas, points.ordinates);
      const scaled = fitLine(
        points.abscissas.map((x) => x * 2 ** px),
        points.ordinates.map((y) => y * 2 ** py),
      );
      // Scaling by powers of two is exact in every step, square roots included only to the last digit.
      expect(scaled.slope).toBe(fit.slope * 2 ** (py - px));
      expect(scaled.intercept).toBe(fit.intercept * 2 ** py);
      near(scaled.residualStdDev! / 2 ** py, fit.residualStdDev!, ROUNDING);
      expect(scaled.rSquared).toBe(fit.rSquared);
    }),
  );
});

test("the order of the readings does not matter to the least-squares line", () => {
  fc.assert(
    fc.property(wholePoints(3), ({ abscissas, ordinates }) => {
      const fit = fitLine(abscissas, ordinates);
      const reversed = fitLine(abscissas.toReversed(), ordinates.toReversed());
      near(reversed.slope, fit.slope, ROUNDING);
      near(reversed.intercept, fit.intercept, ROUNDING);
    }),
  );
});

test("the residuals of the least-squares line add up to nothing and do not lean", () => {
  fc.assert(
    fc.property(wholePoints(2), ({ abscissas, ordinates }) => {
      const fit = fitLine(abscissas, ordinates);
      const residuals = ordinates.map((y, index) => y - lineValue(fit, abscissas[index]!));
      near(
        residuals.reduce((total, residual) => total + residual, 0),
        0,
        ROUNDING,
      );
      near(
        residuals.reduce((total, residual, index) => total + residual * abscissas[index]!, 0),
        0,
        20 * ROUNDING,
      );
    }),
  );
});

test("the minimax deviation is what every three points (slow road) make it", () => {
  fc.assert(
    fc.property(wholePoints(2), ({ abscissas, ordinates }) => {
      const line = minimaxLine(abscissas, ordinates);
      near(line.greatestDeviation, minimaxDeviationByTriples(abscissas, ordinates), ROUNDING);
    }),
    { numRuns: 500 },
  );
});

test("the minimax line leaves what it says, read from its mean or from its intercept", () => {
  fc.assert(
    fc.property(wholePoints(2), ({ abscissas, ordinates }) => {
      const line = minimaxLine(abscissas, ordinates);
      const fromMean = ordinates.map((y, i) => y - line.valueAtMean - line.slope * (abscissas[i]! - line.abscissaMean));
      const fromOrigin = ordinates.map((y, i) => y - line.intercept - line.slope * abscissas[i]!);
      near(greatest(fromMean), line.greatestDeviation, ROUNDING);
      near(greatest(fromOrigin), line.greatestDeviation, ROUNDING);
    }),
  );
});

test("no line leaves less than the minimax line: not least squares, not the terminal line, which leaves at most double", () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer({ min: -20, max: 20 }), { minLength: 2, maxLength: 12 }),
      fc.infiniteStream(fc.integer({ min: -100, max: 100 })),
      (unordered, stream) => {
        const abscissas = unordered.toSorted((a, b) => a - b);
        const ordinates = abscissas.map(() => stream.next().value as number);
        const least = minimaxLine(abscissas, ordinates).greatestDeviation;
        const fit = fitLine(abscissas, ordinates);
        const ofLeastSquares = greatest(ordinates.map((y, index) => y - lineValue(fit, abscissas[index]!)));
        const slope = (ordinates.at(-1)! - ordinates[0]!) / (abscissas.at(-1)! - abscissas[0]!);
        const ofTerminal = greatest(
          ordinates.map((y, index) => y - ordinates[0]! - slope * (abscissas[index]! - abscissas[0]!)),
        );
        expect(least).toBeLessThanOrEqual(ofLeastSquares + ROUNDING);
        expect(least).toBeLessThanOrEqual(ofTerminal + ROUNDING);
        expect(ofTerminal).toBeLessThanOrEqual(2 * least + ROUNDING);
      },
    ),
  );
});

test("taking a straight line off the points takes it off the minimax line and leaves the deviation", () => {
  fc.assert(
    fc.property(
      wholePoints(2),
      fc.integer({ min: -50, max: 50 }),
      fc.integer({ min: -1e6, max: 1e6 }),
      ({ abscissas, ordinates }, slope, offset) => {
        const tilted = ordinates.map((y, index) => y + slope * abscissas[index]! + offset);
        const difference =
          minimaxLine(abscissas, tilted).greatestDeviation - minimaxLine(abscissas, ordinates).greatestDeviation;
        // Ordinates near 1e6 carry 1e-10 each.
        near(difference, 0, 1e-8);
      },
    ),
  );
});

/** The least of a convex function, by halving thirds: the slow road that checks `minimaxSlopeThrough`. */
function ternarySearch(height: (slope: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 200; step++) {
    const third = (high - low) / 3;
    if (height(low + third) < height(high - third)) high -= third;
    else low += third;
  }
  return (low + high) / 2;
}

test("the minimax slope through a point is what a fine search of all slopes finds", () => {
  fc.assert(
    fc.property(
      wholePoints(2),
      fc.integer({ min: -25, max: 25 }),
      fc.integer({ min: -100, max: 100 }),
      ({ abscissas, ordinates }, abscissa, ordinate) => {
        const found = minimaxSlopeThrough(abscissas, ordinates, { abscissa, ordinate });
        const height = (slope: number) =>
          greatest(ordinates.map((y, index) => y - ordinate - slope * (abscissas[index]! - abscissa)));
        // Rises reach 200 and runs are at least 1, so every useful slope lies within 200.
        const searched = ternarySearch(height, -201, 201);
        near(found.greatestDeviation, height(searched), 1e-9);
        near(found.greatestDeviation, height(found.slope), ROUNDING);
      },
    ),
    { numRuns: 300 },
  );
});
