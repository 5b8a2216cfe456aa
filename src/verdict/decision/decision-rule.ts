import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import type { Statement } from "../../model/statement.ts";
import { isInside } from "../../units/is-inside.ts";
import { managedGuardBand, whyNotManaged } from "./managed-guard-band.ts";
import { testUncertaintyRatio } from "./test-uncertainty-ratio.ts";

// A decision rule says how the uncertainty of a measured error counts in a statement of conformity. The same error can
// pass under one rule and fail under another, so the rule belongs to the result and is printed with it
// (ISO/IEC 17025:2017, 7.8.6).

/** A rule, and for "guard band" and "non-binary guard band" the guard band as a multiple of the expanded uncertainty, w = r·U. */
export type DecisionRule = {
  name: "simple acceptance" | "guard band" | "non-binary guard band" | "managed guard band";
  /** r, >= 0: 1 for a guard band equal to U; not used by the other two rules. */
  guardFactor: number;
};

/** One error to be decided; all distances in one unit. */
export type PointToDecide = {
  /** Indicated minus reference, not rounded. */
  error: number;
  limits: ToleranceLimits;
  /** U of the error, >= 0; not used by simple acceptance. */
  expandedUncertainty: number;
  /** k of that U; the managed guard band asks for it. */
  coverageFactor?: number | undefined;
  rule: DecisionRule;
  /** Greatest distance from zero that the error came of; 10⁻¹² of it is what storing a decimal number may change. */
  magnitude: number;
};

/** The statement, the limits inside which an error passes (null where there are none), and the guard band, distance. */
export type PointDecision = {
  statement: Statement;
  acceptance: ToleranceLimits | null;
  guardBand: number;
  /** Why the managed guard band does not hold here, and a guard band of U takes its place. */
  whyNotManaged?: string;
};

/**
 * Decides one measured error by a decision rule.
 *
 * Acceptance limits are the tolerance limits moved inwards by the guard band w: T1 + w and T2 − w. On an acceptance limit
 * is a pass; for a non-binary one, on a tolerance limit is a conditional pass and w beyond it a conditional fail. The limits
 * need not be symmetric. Errors are compared as they are, never rounded.
 *
 * Where w is half of the tolerance or more, no error can pass, whatever the instrument does. "Fail" would then speak of
 * the standard and not of the instrument, and "conditional pass" would be said of errors whose risk is above one half
 * (T = 1, U = 5: an error of 0 is outside with 69 %). So nothing is decided (own choice), but for one case: an error
 * more than w outside a tolerance limit is a fail, since it is as surely out as a passed error would be in. A zone of a
 * single point counts as none (own choice), because a pass there would hang on the last digit.
 *
 * @param point error, limits (low <= high), expanded uncertainty, rule, magnitude > 0
 * @returns statement; acceptance limits, null where there is no acceptance zone; guard band w >= 0
 * Faults: `RangeError` for a value that is not finite, a negative uncertainty or guard factor, a lower limit above the
 * upper, or a managed guard band without uncertainty. Where that guard band does not hold (`whyNotManaged`), it is U.
 * Source: ILAC-G8:09/2019, 4.2 (binary statements, w = 0 or r·U; non-binary statements); JCGM 106:2012, 8.2 and 8.3.
 * Boundaries and the case without an acceptance zone: own choice, as above.
 * @example decidePoint({ error: 1.2, limits: { low: -2, high: 2 }, expandedUncertainty: 0.5, magnitude: 100, rule: {
 *   name: "non-binary guard band", guardFactor: 1 } }) // { statement: "pass", acceptance: { low: -1.5, high: 1.5 }, guardBand:
 *   0.5 }
 */
export function decidePoint(point: PointToDecide): PointDecision {
  requirePoint(point);
  const { rule } = point;
  const reason = rule.name === "managed guard band" ? whyNotManaged(point) : undefined;
  return { ...decidedBy(point, guardBandOf(point, reason !== undefined)), ...(reason && { whyNotManaged: reason }) };
}

function decidedBy(point: PointToDecide, guardBand: number): PointDecision {
  const { error, limits, rule, magnitude } = point;
  if (leavesNoZone(guardBand, point)) {
    const statement = isInside(error, movedOutwards(limits, guardBand), magnitude) ? "cannot be decided" : "fail";
    return { statement, acceptance: null, guardBand };
  }
  const acceptance = movedOutwards(limits, -guardBand);
  if (isInside(error, acceptance, magnitude)) return { statement: "pass", acceptance, guardBand };
  return {
    statement: rule.name === "non-binary guard band" ? otherWord(point, guardBand) : "fail",
    acceptance,
    guardBand,
  };
}

function guardBandOf({ rule, limits, expandedUncertainty }: PointToDecide, isReplaced: boolean): number {
  if (isReplaced) return expandedUncertainty;
  switch (rule.name) {
    case "simple acceptance":
      return 0;
    case "guard band":
    case "non-binary guard band":
      return rule.guardFactor * expandedUncertainty;
    case "managed guard band":
      return managedGuardBand(expandedUncertainty, testUncertaintyRatio(limits, expandedUncertainty));
  }
}

function leavesNoZone(guardBand: number, point: PointToDecide): boolean {
  const { low, high } = point.limits;
  return guardBand > 0 && isInside((high - low) / 2, { low: 0, high: guardBand }, point.magnitude);
}

function otherWord({ error, limits, magnitude }: PointToDecide, guardBand: number): Statement {
  if (isInside(error, limits, magnitude)) return "conditional pass";
  return isInside(error, movedOutwards(limits, guardBand), magnitude) ? "conditional fail" : "fail";
}

function movedOutwards({ low, high }: ToleranceLimits, distance: number): ToleranceLimits {
  return { low: low - distance, high: high + distance };
}

function requirePoint({ error, limits, expandedUncertainty, rule, magnitude }: PointToDecide): void {
  const values = [error, limits.low, limits.high, expandedUncertainty, rule.guardFactor, magnitude];
  if (!values.every(Number.isFinite)) throw new RangeError("a value of the point is not finite");
  if (limits.low > limits.high) throw new RangeError(`a lower limit of ${limits.low} above ${limits.high}`);
  if (expandedUncertainty < 0) throw new RangeError(`an expanded uncertainty of ${expandedUncertainty}`);
  if (rule.guardFactor < 0) throw new RangeError(`a guard factor of ${rule.guardFactor}`);
  if (magnitude <= 0) throw new RangeError(`a magnitude of ${magnitude}`);
}
