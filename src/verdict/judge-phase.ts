import { curveReadingsOf, type PhaseAnalysis } from "../analysis/analyse-phase.ts";
import { type BudgetRows, budgetBasis } from "../analysis/budget-basis.ts";
import { isDetermined, notDetermined } from "../analysis/figure.ts";
import type { Loop } from "../analysis/loop.ts";
import { loopCurve } from "../analysis/loop-curve.ts";
import type { BudgetBasis } from "../analysis/point-budget.ts";
import type { DecisionRule } from "./decision-rule.ts";
import { type JudgedPoint, judgePoints } from "./judge-points.ts";

/** The test points of one phase with their uncertainties: of the judged quantity, and of what the controller showed. */
export type JudgedPhase = {
  basis: BudgetBasis;
  points: readonly JudgedPoint[];
  /** Absent where no controller value was read, or where it is the judged quantity itself. */
  controllerPoints?: readonly JudgedPoint[];
};

/**
 * Judges the test points of one phase, for the sensor and for what the controller showed.
 *
 * The controller's budget needs no signal meter: the value is compared with the reference as it stands, to half a step
 * of what was displayed.
 *
 * @param analysis of the phase
 * @param rows instrument, calibration, standards, typed steps
 * @param loop what the loop is meant to do
 * @param rule decision rule
 * @returns the judged points by rising distance, and the basis of their budgets
 * Source: as `judgePoints`.
 * @example judgePhase(analysis, rows, loop, { name: "guard band", guardFactor: 1 }).points[0].decision.statement // "pass"
 */
export function judgePhase(analysis: PhaseAnalysis, rows: BudgetRows, loop: Loop, rule: DecisionRule): JudgedPhase {
  const readings = curveReadingsOf(analysis.readings);
  const slope = isDetermined(analysis.fit) ? analysis.fit.slope : analysis.fit;
  const judged = { stage: analysis.judged, curve: analysis.curve, readings, slope };
  const basis = budgetBasis(rows, judged, loop);
  const points = judgePoints({ curve: analysis.curve, readings, basis, loop, rule });
  const controller = analysis.judged === "value" ? undefined : loopCurve(analysis.readings);
  if (controller === undefined) return { basis, points };
  const controllerJudged = { stage: "value" as const, ...controller, slope: notDetermined("the ideal slope is taken") };
  const controllerBasis = budgetBasis(rows, controllerJudged, loop);
  return { basis, points, controllerPoints: judgePoints({ ...controller, basis: controllerBasis, loop, rule }) };
}
