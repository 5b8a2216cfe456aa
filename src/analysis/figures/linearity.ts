import { fitLine } from "../../numeric/fit-line.ts";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import { lineValue } from "../../numeric/line-value.ts";
import { minimaxLine } from "../../numeric/minimax-line.ts";
import { minimaxSlopeThrough } from "../../numeric/minimax-slope-through.ts";
import type { CurvePoint } from "./error-curve.ts";
import { type Figure, notDetermined } from "./figure.ts";

/** Part of a distance below which a difference is the rounding of binary numbers: 1e-16, with room for a mean. */
const roundingShare = 1e-14;

/** The four linearities of one error curve, in percent of span, each at least 0. */
export type Linearity = { independent: number; terminal: number; zeroBased: number; leastSquares: number };

/**
 * Linearity: how far the error curve departs from a straight line, for four ways to lay that line.
 *
 * Each is max over j of |a(j) − line(x(j))|. Independent: the line that makes this least (minimax, computed exactly).
 * Terminal-based: through the first and the last test point. Zero-based: through the first test point, with the slope
 * that makes it least. Least-squares: through the a(j) by least squares.
 *
 * @param curve test points in any order; a(j) in percent of span
 * @returns four figures in percent of span, or the reason why there are none: fewer than three test points, or test
 *   points at fewer than three reference distances
 * Source: IEC 61298-2:2008 and ANSI/ISA-51.1-1979 (R1993), "linearity"; least-squares is an extra, named as such.
 * @example linearity([{ point: 0, reference: 0, up: 0, down: null, mean: 0 }, { point: 1, reference: 1, up: 1,
 *   down: null, mean: 1 }, { point: 2, reference: 2, up: 4, down: null, mean: 4 }, { point: 3, reference: 3, up: 9,
 *   down: null, mean: 9 }]) // { independent: 1, terminal: 2, zeroBased: 1.5, leastSquares: 1 }
 */
export function linearity(curve: readonly CurvePoint[]): Figure<Linearity> {
  if (curve.length < 3) return notDetermined("fewer than three test points");
  const sorted = [...curve].sort((left, right) => left.reference - right.reference);
  const references = sorted.map(({ reference }) => reference);
  if (placesOf(references) < 3) return notDetermined("the test points lie at fewer than three reference distances");
  const means = sorted.map(({ mean }) => mean);
  const first = { abscissa: references[0] as number, ordinate: means[0] as number };
  const last = { abscissa: references.at(-1) as number, ordinate: means.at(-1) as number };
  const terminalSlope = (last.ordinate - first.ordinate) / (last.abscissa - first.abscissa);
  const leastSquares = fitLine(references, means);
  return {
    independent: minimaxLine(references, means).greatestDeviation,
    terminal: greatestDeviation((reference) => first.ordinate + terminalSlope * (reference - first.abscissa)),
    zeroBased: minimaxSlopeThrough(references, means, first).greatestDeviation,
    leastSquares: greatestDeviation((reference) => lineValue(leastSquares, reference)),
  };

  function greatestDeviation(line: (reference: number) => number): number {
    return sorted.reduce((greatest, { reference, mean }) => Math.max(greatest, Math.abs(mean - line(reference))), 0);
  }
}

/** Mean references of one distance differ by their rounding: what is closer than that is one place. */
function placesOf(sortedReferences: readonly number[]): number {
  const largest = greatestOf(sortedReferences.map(Math.abs));
  return sortedReferences.filter(
    (reference, index) => index === 0 || reference - (sortedReferences[index - 1] as number) > roundingShare * largest,
  ).length;
}
