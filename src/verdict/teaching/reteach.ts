import type { Figure } from "../../analysis/figures/figure.ts";
import { isDetermined, notDetermined } from "../../analysis/figures/figure.ts";
import {
  bestCorrection,
  type Correction,
  correctedDistance,
  endsCorrection,
  type RangeEnds,
  shareOfRoom,
} from "../../analysis/figures/two-constant-correction.ts";
import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import type { Direction } from "../../model/calibration-words.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { greatestDistanceOf } from "../../model/range.ts";
import { type Statement, worstStatement } from "../../model/statement.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { type DecisionRule, decidePoint } from "../decision/decision-rule.ts";

// What re-teaching could do. Judged is what the decision rule judges: every reading under simple acceptance, otherwise
// the mean of each direction at each test point. The uncertainty of an error is taken to stay as it is: a correction
// changes its size by no more than it changes the span.

/** An error that the decision rule judges. */
export type JudgedError = {
  point: number;
  direction: Direction;
  reference: number;
  indicated: number;
  tolerance: ToleranceLimits;
  expandedUncertainty: number;
  /** k of that U, where the rule asks for it. */
  coverageFactor?: number;
};

/** The error that is worst after a correction, and what the decision rule says of all of them. */
export type ErrorLeft = {
  errorDistance: number;
  point: number;
  direction: Direction;
  expandedUncertainty: number;
  statement: Statement;
};

/** A correction, and what it leaves. */
export type CorrectionResult = Correction & { worst: ErrorLeft };

/** Why the best correction there is does not suffice. */
export type WhyNotCurable = { because: "spread at one point" | "curvature"; point: number; halfSpread: number };

/** What re-teaching could do for one error curve; `isCurable` is null where the rule can decide nothing. */
export type ReteachResult = {
  now: ErrorLeft;
  best: Figure<CorrectionResult>;
  ends: Figure<CorrectionResult>;
  isCurable: Figure<boolean | null>;
  whyNot?: WhyNotCurable;
};

/** By which rule, over which range. */
export type ReteachContext = { rule: DecisionRule; range: RangeEnds };

/**
 * What re-teaching could do: the worst error now, after the best two-constant correction, after a re-teach at the ends.
 *
 * If even the best correction leaves an error outside the acceptance limits, no re-teach can cure the loop, for every
 * straight line through its readings leaves one.
 *
 * @param errors that the rule judges, one or more; distances in one unit
 * @param context decision rule, range
 * @returns each with its worst error left; figures that two distances at least are needed for say so
 * @throws RangeError where there is no error
 * Source: own choice; `bestCorrection` for the exactness, ILAC-G8:09/2019 for the rule.
 * @example reteach([{ point: 0, direction: "rising", reference: 0, indicated: 2, tolerance: { low: -1, high: 1 },
 *   expandedUncertainty: 0.1 }, { point: 100, direction: "rising", reference: 100, indicated: 102, tolerance: { low: -1,
 *   high: 1 }, expandedUncertainty: 0.1 }], { rule: { name: "simple acceptance", guardFactor: 0 }, range: {
 *   rangeLower: 0, rangeUpper: 100 } }).best // { lower: -2, upper: 98, worst: { errorDistance: 0, … } }
 */
export function reteach(errors: readonly JudgedError[], context: ReteachContext): ReteachResult {
  const best = withResult(errors, correctionOf(errors, context), context);
  const isCurable = isDetermined(best) ? curableBy(best.worst.statement) : best;
  return {
    now: errorLeft(errors, context),
    best,
    ends: withResult(errors, taughtAtEnds(errors, context.range), context),
    isCurable,
    ...(isCurable === false && isDetermined(best) && { whyNot: whyNotCurable(errors, best, context) }),
  };
}

/**
 * The best correction for errors that a rule judges: inside the acceptance limits, where there are any.
 *
 * @param errors that the rule judges
 * @param context decision rule, range
 * @returns what the range ends are to stand for; or why there is none
 * Source: `bestCorrection`.
 * @example correctionOf([], { rule: { name: "simple acceptance", guardFactor: 0 }, range: { rangeLower: 0, rangeUpper:
 *   100 } }) // { notDetermined: "fewer than two indicated distances" }
 */
export function correctionOf(errors: readonly JudgedError[], context: ReteachContext): Figure<Correction> {
  const withLimits = errors.map((error) => ({ ...error, limits: limitsOf(error, context) }));
  return bestCorrection(withLimits, context.range);
}

/**
 * The worst error after a correction, and what the rule says of all errors then.
 *
 * @param errors that the rule judges, one or more
 * @param context decision rule, range
 * @param correction what the range ends are to stand for; left out for the errors as they are
 * @returns the error that takes up most of the room between its limits
 * @throws RangeError where there is no error
 * Source: `decidePoint`.
 * @example errorLeft([judgedError(0, 2), judgedError(100, 2)], { rule: { name: "simple acceptance", guardFactor: 0 },
 *   range: { rangeLower: 0, rangeUpper: 100 } }, { lower: -2, upper: 98 }).statement // "pass"
 */
export function errorLeft(
  errors: readonly JudgedError[],
  context: ReteachContext,
  correction: Correction = { lower: context.range.rangeLower, upper: context.range.rangeUpper },
): ErrorLeft {
  const [first, ...others] = errors.map((error) => judged(error, correction, context));
  if (first === undefined) throw new RangeError("errorLeft: requires at least one error");
  const worst = others.reduce((left, right) => (right.share > left.share ? right : left), first);
  const statements = [first, ...others].map(({ statement }) => statement);
  const { error, errorDistance } = worst;
  return {
    errorDistance,
    point: error.point,
    direction: error.direction,
    expandedUncertainty: error.expandedUncertainty,
    statement: worstStatement(statements) ?? worst.statement,
  };
}

function judged(error: JudgedError, correction: Correction, context: ReteachContext) {
  const errorDistance = correctedDistance(error.indicated, correction, context.range) - error.reference;
  const { statement, acceptance } = decided(error, errorDistance, context);
  return { error, errorDistance, statement, share: shareOfRoom(errorDistance, acceptance ?? error.tolerance) };
}

function decided(
  { tolerance: limits, expandedUncertainty, coverageFactor }: JudgedError,
  error: number,
  { rule, range }: ReteachContext,
) {
  const magnitude = greatestDistanceOf(range);
  return decidePoint({ error, limits, expandedUncertainty, coverageFactor, rule, magnitude });
}

function limitsOf(error: JudgedError, context: ReteachContext): ToleranceLimits {
  return decided(error, 0, context).acceptance ?? error.tolerance;
}

function withResult(
  errors: readonly JudgedError[],
  correction: Figure<Correction>,
  context: ReteachContext,
): Figure<CorrectionResult> {
  if (!isDetermined(correction)) return correction;
  return { ...correction, worst: errorLeft(errors, context, correction) };
}

/** As the error curve takes it: the mean of the two directions' means. */
function taughtAtEnds(errors: readonly JudgedError[], range: RangeEnds): Figure<Correction> {
  const points = [...new Set(errors.map(({ point }) => point))].sort((left, right) => left - right);
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || first === last) return notDetermined("fewer than two test points");
  return endsCorrection(directionMeans(errors, first), directionMeans(errors, last), range);
}

function directionMeans(errors: readonly JudgedError[], point: number) {
  const groups = (["rising", "falling"] as const)
    .map((direction) => errors.filter((error) => error.point === point && error.direction === direction))
    .filter((group) => group.length > 0);
  const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    references: groups.map((group) => meanOf(group.map(({ reference }) => reference))),
    indicated: groups.map((group) => meanOf(group.map(({ indicated }) => indicated))),
  };
}

function curableBy(statement: Statement): boolean | null {
  if (statement === "cannot be decided") return null;
  return statement === "pass";
}

/** Spread, where the errors of one test point alone are too far apart for any line; otherwise the curve is bent. */
function whyNotCurable(
  errors: readonly JudgedError[],
  { worst }: CorrectionResult,
  context: ReteachContext,
): WhyNotCurable {
  const spreads = Array.from(
    groupedBy(errors, ({ point }) => point),
    ([point, group]) => {
      const sizes = group.map(({ reference, indicated }) => indicated - reference);
      const room = leastOf(group.map((error) => widthOf(limitsOf(error, context)))) / 2;
      const halfSpread = (greatestOf(sizes) - leastOf(sizes)) / 2;
      return { point, halfSpread, beyond: halfSpread - room };
    },
  );
  const widest = spreads.reduce((left, right) => (right.beyond > left.beyond ? right : left));
  if (widest.beyond > 0) {
    return { because: "spread at one point", point: widest.point, halfSpread: widest.halfSpread };
  }
  return { because: "curvature", point: worst.point, halfSpread: Math.abs(worst.errorDistance) };
}

function widthOf({ low, high }: ToleranceLimits): number {
  return high - low;
}
