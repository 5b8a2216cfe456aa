import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Figure, isDetermined } from "../../../src/analysis/figures/figure.ts";
import {
  lineUnderUncertainty,
  type UncertainReadings,
} from "../../../src/analysis/uncertainty/line-under-uncertainty.ts";
import { frozen } from "../../charts/frozen.ts";
import { expectNear } from "../sample-loop.ts";

const readings: UncertainReadings = frozen({
  references: [1, 2, 3, 4, 5, 6],
  outputs: [3.3, 5.6, 7.1, 9.3, 10.7, 12.1],
  referenceUncertainty: 0,
  outputUncertainty: 0.5,
  commonReferenceUncertainty: 0,
  commonOutputUncertainty: 0,
});

function determined<Value>(figure: Figure<Value>): Value {
  if (!isDetermined(figure)) throw new Error(figure.notDetermined);
  return figure;
}

// ISO/TS 28037:2010, 6.3, to its three printed decimals.
test("slope 1.757, chi-squared 1.665 of 9.488, and 10.5 was measured at 4.913 with 0.322", () => {
  const line = determined(
    lineUnderUncertainty(
      {
        references: [1, 2, 3, 4, 5, 6],
        outputs: [3.3, 5.6, 7.1, 9.3, 10.7, 12.1],
        referenceUncertainty: 0,
        outputUncertainty: 0.5,
        commonReferenceUncertainty: 0,
        commonOutputUncertainty: 0,
      },
      [10.5],
    ),
  );
  expectNear(line.slope, 1.757, 0.0005);
  expectNear(line.chiSquared, 1.665, 0.0005);
  expectNear(line.chiSquaredLimit, 9.488, 0.0005);
  expectNear(line.inverse[0]?.reference, 4.913, 0.0005);
  expectNear(line.inverse[0]?.standardUncertainty, 0.322, 0.0005);
  expect(line).toMatchObject({ method: "weighted", isStraight: true, degreesOfFreedom: 4 });
});

test("what all readings share adds to the inverse in the square and leaves the line alone", () => {
  const alone = determined(lineUnderUncertainty(readings, [10.5]));
  const shared = { ...readings, commonReferenceUncertainty: 0.3, commonOutputUncertainty: 0.4 };
  const together = determined(lineUnderUncertainty(shared, [10.5]));
  expect({ ...together, inverse: [] }).toEqual({ ...alone, inverse: [] });
  const expected = Math.hypot(alone.inverse[0]!.standardUncertainty, 0.3, 0.4 / alone.slope);
  expectNear(together.inverse[0]?.standardUncertainty, expected, 1e-15);
});

test("a reverse-acting output has the mirrored line and the same uncertainties of the inverse", () => {
  const mirrored = { ...readings, outputs: readings.outputs.map((output) => 24 - output) };
  for (const referenceUncertainty of [0, 0.2]) {
    const shared = { referenceUncertainty, commonOutputUncertainty: 0.4 };
    const one = determined(lineUnderUncertainty({ ...readings, ...shared }, [10.5]));
    const other = determined(lineUnderUncertainty({ ...mirrored, ...shared }, [24 - 10.5]));
    expectNear(other.slope, -one.slope, 1e-13);
    expectNear(other.inverse[0]?.reference, one.inverse[0]!.reference, 1e-13);
    expectNear(other.inverse[0]?.standardUncertainty, one.inverse[0]!.standardUncertainty, 1e-13);
  }
});

/** A fraction of whole numbers: what a double holds, exactly, and what is reckoned from it without any rounding. */
type Fraction = readonly [numerator: bigint, denominator: bigint];

/** Halved until it is whole: a double is a whole number over a power of two. */
function exactly(value: number): Fraction {
  let [scaled, denominator] = [value, 1n];
  while (!Number.isInteger(scaled)) [scaled, denominator] = [scaled * 2, denominator * 2n];
  return [BigInt(scaled), denominator];
}
const plus = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * d + c * b, b * d];
const minus = (one: Fraction, [c, d]: Fraction): Fraction => plus(one, [-c, d]);
const times = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * c, b * d];
const over = ([a, b]: Fraction, [c, d]: Fraction): Fraction => [a * d, b * c];
const sumOf = (fractions: readonly Fraction[]) => fractions.reduce(plus, [0n, 1n]);

/** Thirty digits behind the point before the one rounding to a double. */
function rounded([numerator, denominator]: Fraction): number {
  const shift = 10n ** 30n;
  return Number((numerator * shift) / denominator) / 1e30;
}

/** The inverse of the weighted line by its formulas (ISO/TS 28037:2010, clause 6), in whole numbers. */
function exactInverse({ references, outputs, outputUncertainty }: UncertainReadings, output: number, offset: number) {
  const [xs, ys] = [references.map(exactly), outputs.map(exactly)];
  const count: Fraction = [BigInt(xs.length), 1n];
  const variance = times(exactly(outputUncertainty), exactly(outputUncertainty));
  const [x, y] = [over(sumOf(xs), count), over(sumOf(ys), count)];
  const squares = sumOf(xs.map((each) => times(minus(each, x), minus(each, x))));
  const products = sumOf(xs.map((each, index) => times(minus(each, x), minus(ys[index]!, y))));
  const slope = over(products, squares);
  const run = over(minus(exactly(output), y), slope);
  const ofLine = plus(over([1n, 1n], count), over(times(run, run), squares));
  const square = over(times(variance, plus(ofLine, [1n, 1n])), times(slope, slope));
  return {
    beyondOffset: rounded(minus(plus(x, run), exactly(offset))),
    standardUncertainty: Math.sqrt(rounded(square)),
    intercept: rounded(minus(y, times(slope, x))),
  };
}

test.each([0, 1e3, 1e6, -1e6, 1e9])("%d away from zero the inverse is that of exact arithmetic", (offset) => {
  const far = { ...readings, references: readings.references.map((reference) => offset + reference) };
  for (const output of [3, 7.1, 10.5]) {
    const exact = exactInverse(far, output, offset);
    const line = determined(lineUnderUncertainty(far, [output]));
    const { reference = 0, standardUncertainty = 0 } = line.inverse[0] ?? {};
    // The distance is held to half a unit of its last place, 6e-11 at 1e6; nothing else is lost.
    expectNear(reference - offset, exact.beyondOffset, 4e-15 + 1e-16 * Math.abs(offset));
    expectNear(standardUncertainty, exact.standardUncertainty, 1e-15);
    expectNear(line.intercept / exact.intercept, 1, 1e-14);
  }
});

test.each([0, 0.2])("1e6 away from zero everything but the intercept is as it was (u of a reference %d)", (own) => {
  const near = { ...readings, referenceUncertainty: own };
  const far = { ...near, references: readings.references.map((reference) => 1e6 + reference) };
  const [here, there] = [near, far].map((each) => determined(lineUnderUncertainty(each, [3, 10.5])));
  for (const [index, { reference, standardUncertainty }] of here!.inverse.entries()) {
    expectNear(there!.inverse[index]?.reference, 1e6 + reference, 1.2e-10);
    expectNear(there!.inverse[index]?.standardUncertainty, standardUncertainty, 1e-9);
  }
  expectNear(there!.slope, here!.slope, 1e-14);
  expectNear(there!.chiSquared, here!.chiSquared, 1e-12);
  // u(a) at zero is u(b) · 1e6 there, and a goes with b all but wholly.
  expectNear(there!.interceptStandardUncertainty / (1e6 * there!.slopeStandardUncertainty), 1, 1e-5);
  expectNear(there!.covariance / (-1e6 * there!.slopeStandardUncertainty ** 2), 1, 1e-5);
});

test("uncertain reference positions make it a line with errors in both, whose chi-squared is less", () => {
  const weighted = determined(lineUnderUncertainty(readings, []));
  const both = determined(lineUnderUncertainty({ ...readings, referenceUncertainty: 0.2 }, []));
  expect(both.method).toBe("errors in both");
  expect(both.chiSquared).toBeLessThan(weighted.chiSquared);
});

test("readings that bend more than they scatter are not straight", () => {
  const bent = { ...readings, outputUncertainty: 0.2 };
  // Chi-squared goes with 1/u²: 1.665 · 6.25 = 10.4, over 9.488.
  const { chiSquared, isStraight } = determined(lineUnderUncertainty(bent, []));
  expectNear(chiSquared, 10.404761904761898, 1e-12);
  expect(isStraight).toBe(false);
});

describe("there is no line", () => {
  test.each<[string, Partial<UncertainReadings>, string]>([
    ["of two readings", { references: [1, 2], outputs: [3, 5] }, "fewer than three readings at two distances"],
    ["of one distance", { references: [1, 1, 1], outputs: [3, 4, 5] }, "fewer than three readings at two distances"],
    ["of readings that do not scatter", { outputUncertainty: 0 }, "the readings of one test point do not scatter"],
    ["of an output that stands still", { outputs: Array(6).fill(12) }, "the output does not follow the distance"],
    [
      "of one that merely scatters",
      { outputs: [12.3, 12.1, 11.8, 12.4, 11.9, 12.2] },
      "the output does not follow the distance",
    ],
  ])("%s", (_, change, notDetermined) => {
    for (const referenceUncertainty of [0, 0.2])
      expect(lineUnderUncertainty({ ...readings, ...change, referenceUncertainty }, [12])).toEqual({ notDetermined });
  });
});

test("lists that differ in length or values that are not finite are a caller's mistake", () => {
  for (const outputs of [
    [1, 2],
    [1, 2, 3, 4, 5, Number.NaN],
  ])
    expect(() => lineUnderUncertainty({ ...readings, outputs, referenceUncertainty: 0.2 }, [])).toThrow(RangeError);
});

test("no readings of any kind throw, and every number of a line is finite", () => {
  const place = fc.integer({ min: 0, max: 8 });
  const output = fc.oneof(fc.constant(12), fc.double({ min: 4, max: 20, noNaN: true }));
  const size = fc.integer({ min: -5, max: 3 }).map((exponent) => 10 ** exponent);
  let withoutLine = 0;
  fc.assert(
    fc.property(fc.array(fc.tuple(place, output), { maxLength: 12 }), size, size, (pairs, ofReference, ofOutput) => {
      const line = lineUnderUncertainty(
        {
          references: pairs.map(([reference]) => reference),
          outputs: pairs.map(([, found]) => found),
          referenceUncertainty: ofReference,
          outputUncertainty: ofOutput,
          commonReferenceUncertainty: 0.1,
          commonOutputUncertainty: 0.001,
        },
        [4, 12, 20],
      );
      if (!isDetermined(line)) withoutLine += 1;
      else expect(JSON.stringify(line)).not.toContain("null");
    }),
    { seed: 20260504, numRuns: 2000 },
  );
  expect(withoutLine).toBeGreaterThan(100);
  expect(withoutLine).toBeLessThan(1900);
});
