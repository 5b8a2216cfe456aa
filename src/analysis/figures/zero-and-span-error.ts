import { spanOf } from "../../model/range.ts";
import { fitLine } from "../../numeric/fit-line.ts";
import { lineStandardUncertainty, lineValue } from "../../numeric/line-value.ts";
import type { CurveReading } from "./error-curve.ts";
import { type Figure, notDetermined } from "./figure.ts";

/** An error read off the fitted line, in percent of span; its standard uncertainty is null for two readings. */
export type LineError = { percentSpan: number; standardUncertainty: number | null };

/**
 * Zero error and span error: the least-squares line of error on reference, read at the two ends of the range.
 *
 * Zero error: the line at x = L. Span error: the line at U minus the line at L. Standard uncertainties from the
 * covariance of the fit: s · √(1/n + (L − x̄)²/Sxx), and S · u(slope).
 *
 * @param readings n readings, reference in distance, error in percent of span
 * @param rangeLower L, distance
 * @param rangeUpper U, distance
 * @returns both errors in percent of span with their standard uncertainties (null for two readings), or the reason
 *   why there is no line
 * Source: JCGM 100:2008 (GUM), H.3, for the fit and its uncertainties; ANSI/ISA-51.1-1979 (R1993) for the words.
 * @example zeroAndSpanError([{ point: 0, reference: 0, error: 1, direction: "rising", cycle: 1 }, { point: 100,
 *   reference: 100, error: 3, direction: "rising", cycle: 1 }], 0, 100).spanError // { percentSpan: 2,
 *   standardUncertainty: null }
 */
export function zeroAndSpanError(
  readings: readonly CurveReading[],
  rangeLower: number,
  rangeUpper: number,
): Figure<{ zeroError: LineError; spanError: LineError }> {
  const references = readings.map(({ reference }) => reference);
  if (readings.length === 0) return notDetermined("no usable reading");
  if (new Set(references).size < 2) return notDetermined("fewer than two reference distances");
  const line = fitLine(
    references,
    readings.map(({ error }) => error),
  );
  const span = spanOf({ rangeLower, rangeUpper });
  return {
    zeroError: {
      percentSpan: lineValue(line, rangeLower),
      standardUncertainty: lineStandardUncertainty(line, rangeLower),
    },
    spanError: {
      percentSpan: line.slope * span,
      standardUncertainty: line.slopeStdError === null ? null : line.slopeStdError * span,
    },
  };
}
