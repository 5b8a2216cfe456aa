import type { PhaseAnalysis } from "../../analysis/figures/analyse-phase.ts";
import type { Loop, ReadStage } from "../../analysis/readings/loop.ts";
import { stageCurve } from "../../analysis/stages/stage-curve.ts";
import { type BudgetRows, budgetBasis } from "../../analysis/uncertainty/budget-basis.ts";
import type { BudgetBasis } from "../../analysis/uncertainty/point-budget.ts";
import { stagesRead } from "./decide-phase.ts";
import type { DecisionRule } from "./decision-rule.ts";
import { isWorse, type JudgedPoint, judgePoints } from "./judge-points.ts";

/** The test points of one phase with their uncertainties, for each stage that was read, in the order of the loop. */
export type JudgedPhase = {
  /** Of the first stage that was read. */
  basis: BudgetBasis;
  stages: ReadonlyMap<ReadStage, readonly JudgedPoint[]>;
};

/**
 * Judges the test points of one phase, for each stage of the loop that was read.
 *
 * Neither counts nor the controller's value need a signal meter: they are compared with the reference as they stand, to
 * half a step of what was displayed.
 *
 * @param analysis of the phase
 * @param rows instrument, calibration, standards, typed steps
 * @param loop what the loop is meant to do
 * @param rule decision rule
 * @returns the judged points of each stage by rising distance, and the basis of the first stage's budgets
 * Source: as `judgePoints`.
 * @example judgePhase(emptyAnalysis, { instrument: needs.instrument, calibration: needs.calibration, standards: [],
 *   steps: { reference: 0.1, signal: 0.001, counts: 1, value: 0.1 } }, loop, { name: "guard band", guardFactor: 1
 *   }).stages.size // 0
 */
export function judgePhase(analysis: PhaseAnalysis, rows: BudgetRows, loop: Loop, rule: DecisionRule): JudgedPhase {
  const basisOf = (stage: ReadStage, curve = stageCurve(analysis.readings, stage) ?? { curve: [], readings: [] }) => ({
    ...curve,
    basis: budgetBasis(rows, { stage: stage === "signalAtCard" ? "signal" : stage, ...curve }, loop),
  });
  const stages = stagesRead(analysis.readings, analysis.judged);
  return {
    basis: basisOf(analysis.judged).basis,
    stages: new Map(stages.map((stage) => [stage, judgePoints({ ...basisOf(stage), loop, rule })])),
  };
}

/**
 * The judged points by which the loop is decided: at each test point that of the last stage which was read there.
 *
 * @param phase judged
 * @returns points by rising distance, each with its stage
 * Source: own choice, as `decidePhase`.
 * @example decidingPoints({ stages: new Map() }) // []
 */
export function decidingPoints({
  stages,
}: Pick<JudgedPhase, "stages">): readonly (JudgedPoint & { stage: ReadStage })[] {
  const last = new Map<number, JudgedPoint & { stage: ReadStage }>();
  for (const [stage, points] of stages) for (const one of points) last.set(one.curvePoint.point, { ...one, stage });
  return [...last.values()].toSorted((one, other) => one.curvePoint.point - other.curvePoint.point);
}

/**
 * The deciding point with the worst statement, then the greatest risk.
 *
 * @param deciding of `decidingPoints`
 * @returns its place among them, or undefined where there is none
 * Source: as `isWorse`.
 * @example worstOf([]) // undefined
 */
export function worstOf(deciding: readonly JudgedPoint[]): number | undefined {
  if (deciding.length === 0) return undefined;
  return deciding.reduce((worst, one, index) => (isWorse(one, deciding[worst] as JudgedPoint) ? index : worst), 0);
}
