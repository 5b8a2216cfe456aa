import { curveReadingsOf, type PhaseAnalysis } from "../../analysis/figures/analyse-phase.ts";
import type { Loop } from "../../analysis/readings/loop.ts";
import { loopCurve } from "../../analysis/stages/loop-curve.ts";
import { type BudgetRows, budgetBasis } from "../../analysis/uncertainty/budget-basis.ts";
import type { BudgetBasis } from "../../analysis/uncertainty/point-budget.ts";
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
 * @example judgePhase({ judged: "signal", readings: [], curve: [], cycles: 0,
 *   fit: { notDetermined: "no usable reading" }, zeroAndSpan: { notDetermined: "no usable reading" },
 *   inaccuracy: { positive: 1, negative: 0 }, maximumMeasuredError: { notDetermined: "no usable reading" },
 *   linearity: { notDetermined: "no usable reading" }, hysteresis: { notDetermined: "no usable reading" },
 *   hysteresisWithinOneCycle: { notDetermined: "no usable reading" },
 *   repeatability: { notDetermined: "no usable reading" }, greatestLoopError: { notDetermined: "no usable reading" } },
 *   { instrument: { tag: "LT-1", rangeLower: 0, rangeUpper: 100, distanceUnit: "mm", signalLower: 4,
 *   signalUpper: 20, signalUnit: "mA", tolerance: 1, toleranceBasis: "distance" },
 *   calibration: { calibration: "C-1", tag: "LT-1" }, standards: [],
 *   steps: { reference: 0.1, signal: 0.001, counts: 1, value: 0.1 } },
 *   { characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
 *   toleranceTerms: [{ basis: "distance", plus: 1, minus: 1 }], faultLevels: {}, signalUnit: "mA" },
 *   { name: "guard band", guardFactor: 1 }).points // []
 */
export function judgePhase(analysis: PhaseAnalysis, rows: BudgetRows, loop: Loop, rule: DecisionRule): JudgedPhase {
  const readings = curveReadingsOf(analysis.readings);
  const basis = budgetBasis(rows, { stage: analysis.judged, curve: analysis.curve, readings }, loop);
  const points = judgePoints({ curve: analysis.curve, readings, basis, loop, rule });
  const controller = analysis.judged === "value" ? undefined : loopCurve(analysis.readings);
  if (controller === undefined) return { basis, points };
  const controllerBasis = budgetBasis(rows, { stage: "value", ...controller }, loop);
  return { basis, points, controllerPoints: judgePoints({ ...controller, basis: controllerBasis, loop, rule }) };
}
