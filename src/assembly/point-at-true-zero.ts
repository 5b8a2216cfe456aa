import { greatestDistanceOf, spanOf } from "../model/range.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { isInside } from "../units/is-inside.ts";
import type { ReadPoint } from "../verdict/completeness/missing-points.ts";

/** Percent of span: so near to an end of the range its ideal signal is the end of the signal. */
const atEndWithin = 0.125;

type Measured = Pick<PhaseRecord, "readings" | "zeroError" | "spanError">;

/**
 * The end of the range at which a signal that begins at zero stands at zero, where the loop shows what it should.
 *
 * An output cannot go below zero, so that a loop whose line lies a little low shows this end exactly. That counts as a
 * test point where every reading there is inside, and the error that the line of the others has there is inside as well,
 * with its own uncertainty.
 *
 * @param phase its readings and its line
 * @param instrument its range and its signal
 * @returns one point with the line's error there and its U; none for a signal that begins elsewhere, or without a line
 * Source: own choice; the line's error and its uncertainty are those of the record (k = 2): of the fit
 *   alone where no standard states its own.
 * @example pointAtTrueZero({ readings: [], zeroError: null, spanError: null }, record.instrument) // []
 */
export function pointAtTrueZero(
  { readings, zeroError, spanError }: Measured,
  instrument: CalibrationRecord["instrument"],
): readonly ReadPoint[] {
  const { signalLower, signalUpper, rangeLower, rangeUpper } = instrument;
  if (Math.min(signalLower, signalUpper) !== 0 || zeroError === null || spanError === null) return [];
  const isAtUpper = signalUpper === 0;
  const span = spanOf(instrument);
  const at = isAtUpper ? rangeUpper : rangeLower;
  const here = readings.filter(({ reference }) => Math.abs(reference - at) <= (atEndWithin / 100) * span);
  const railed = here.filter((one) => one.railed === "low");
  const [first] = railed;
  const isMoving = here.some((one) => one.railed !== "low" && one.leftOut === undefined);
  if (first === undefined || isMoving || railed.some(({ verdict }) => verdict === "fail")) return [];
  const parts = isAtUpper ? [zeroError, spanError] : [zeroError];
  const errorDistance = (parts.reduce((sum, { percentSpan }) => sum + percentSpan, 0) * span) / 100;
  const unknown = Number.POSITIVE_INFINITY;
  const uncertainties = parts.map(
    ({ combinedStandardUncertainty, standardUncertainty }) =>
      combinedStandardUncertainty ?? standardUncertainty ?? unknown,
  );
  const expandedUncertainty = (2 * Math.hypot(...uncertainties) * span) / 100;
  const limits = { low: first.toleranceLow, high: first.toleranceHigh };
  const isHeld = [-expandedUncertainty, expandedUncertainty].every((part) =>
    isInside(errorDistance + part, limits, greatestDistanceOf(instrument)),
  );
  return isHeld ? [{ point: first.point, errorDistance, expandedUncertainty, tolerance: limits }] : [];
}
