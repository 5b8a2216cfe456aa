import type { AnalogError } from "../../analysis/switching/analog-error-at.ts";
import type { Statement } from "../../model/statement.ts";

/** What a set-point error is consistent with. */
export type ConsistentWith = "teach" | "shift" | "teach and shift" | "neither for certain";

/** A set-point error in two parts that add up to it, in distance, each with its U. */
export type SetPointShares = {
  analogErrorDistance: number;
  shift: number;
  shiftUncertainty: number;
  teach: number;
  teachUncertainty: number;
  consistentWith: ConsistentWith;
};

/** A part below this share of the set-point error is no cause of it: own choice. */
const leastShare = 0.25;

/**
 * Parts a set-point error into what the analog value has too and what the switch has for itself.
 *
 * A sensor that indicates too much by e, because of its mount, the datum or the air, reaches the taught distance too
 * early by e: the shift is −e, and opposite in sign to the analog error. What is left, error − shift = error + e, is by
 * how much the sensor's own distance at the trip differs from the set point: the teach. A part counts as a cause where it
 * is greater than its own U and at least a quarter of the set-point error.
 *
 * @param setPointError switching distance minus set point, distance, not zero
 * @param setPointUncertainty U of it, distance
 * @param analog error of the analog value at the set point, indicated minus reference, and its U, distance
 * @returns both parts and what the error is consistent with; U of the teach is the root sum of squares of both U, which
 *   is too great rather than too small: what the reference standard adds to both cancels in their sum
 * Source: own choice.
 * @example setPointShares(-21, 1, { errorDistance: 20, expandedUncertainty: 2 }) // shift -20, teach -1, consistentWith
 *   "shift"
 */
export function setPointShares(
  setPointError: number,
  setPointUncertainty: number,
  { errorDistance, expandedUncertainty }: AnalogError,
): SetPointShares {
  const shift = 0 - errorDistance;
  const teach = setPointError - shift;
  const teachUncertainty = Math.hypot(setPointUncertainty, expandedUncertainty);
  const isCause = (part: number, uncertainty: number) =>
    Math.abs(part) > uncertainty && Math.abs(part) >= leastShare * Math.abs(setPointError);
  return {
    analogErrorDistance: errorDistance,
    shift,
    shiftUncertainty: expandedUncertainty,
    teach,
    teachUncertainty,
    consistentWith: causeOf(isCause(teach, teachUncertainty), isCause(shift, expandedUncertainty)),
  };
}

/**
 * Whether there is a set-point error to explain: one that does not pass or, without a tolerance, is beyond its U.
 *
 * @param found error and its U, distance; what was decided, or null without a tolerance
 * @returns true where its parts are asked for
 * Source: own choice.
 * @example isToExplain({ error: 2, expandedUncertainty: 1, decision: null }) // true
 */
export function isToExplain(found: {
  error: number;
  expandedUncertainty: number;
  decision: { statement: Statement } | null;
}): boolean {
  const { error, expandedUncertainty, decision } = found;
  return decision === null ? Math.abs(error) > expandedUncertainty : decision.statement !== "pass";
}

function causeOf(isTeach: boolean, isShift: boolean): ConsistentWith {
  if (isTeach && isShift) return "teach and shift";
  if (isTeach) return "teach";
  return isShift ? "shift" : "neither for certain";
}
