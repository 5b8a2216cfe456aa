import { fitLine } from "../numeric/fit-line.ts";
import { lineValue } from "../numeric/line-value.ts";
import { minimaxLine } from "../numeric/minimax-line.ts";
import { minimaxSlopeThrough } from "../numeric/minimax-slope-through.ts";
import type { CurvePoint } from "./error-curve.ts";
import { type Figure, notDetermined } from "./figure.ts";

/** The four linearities of one error curve, in percent of span, each at least 0. */
export type Linearity = { independent: number; terminal: number; zeroBased: number; leastSquares: number };

/**
 * Linearity: how far the error curve departs from a straight line, for four ways to lay that line.
 *
 * Each is max over j of |a(j) − line(x(j))|. Independent: the line that makes this least (minimax, computed exactly).
 * Terminal-based: through the first and the last test point. Zero-based: through the first test point, with the slope
 * that makes it least. Least-squares: through the a(j) by least squares.
 *
 * @param curve at least three test points by rising distance; a(j) in percent of span
 * @returns four figures in percent of span, or the reason why there are none
 * Source: IEC 61298-2:2008 and ANSI/ISA-51.1-1979 (R1993), "linearity"; least-squares is an extra, named as such.
 * @example linearity(…0 0.2 −0.3 0.5 1.1 −0.7 0.2 −0.9 0 at 0…8…).terminal // 1.1
 */
export function linearity(curve: readonly CurvePoint[]): Figure<Linearity> {
  if (curve.length < 3) return notDetermined("fewer than three test points");
  const references = curve.map(({ reference }) => reference);
  const means = curve.map(({ mean }) => mean);
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
    return curve.reduce((greatest, { reference, mean }) => Math.max(greatest, Math.abs(mean - line(reference))), 0);
  }
}
