import type { Budget } from "../../analysis/uncertainty/budget.ts";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import { isInside } from "../../units/is-inside.ts";
import { type DecisionRule, decidePoint, type PointDecision } from "../decision/decision-rule.ts";
import { riskUncertainty, specificRisk } from "../decision/specific-risk.ts";
import { testUncertaintyRatio } from "../decision/test-uncertainty-ratio.ts";

/** The distances at which an output switched in the direction that matters, and what they should be; one unit. */
export type SetPointToJudge = {
  distances: readonly number[];
  /** Mean of the distances minus the set point. */
  error: number;
  setPoint: number;
  tolerance: number;
  budget: Budget;
  rule: DecisionRule;
};

/** What is said of a set point, and the risk that it is wrong. */
export type JudgedSetPoint = PointDecision & {
  toleranceLow: number;
  toleranceHigh: number;
  specificRisk: number;
  testUncertaintyRatio: number;
};

/**
 * Judges the error of a set point by the record's decision rule.
 *
 * As for readings, simple acceptance judges each trip on its own; the other rules judge the mean with its uncertainty,
 * which holds the scatter of the trips already.
 *
 * @param set at least one distance, error, set point, tolerance above zero, budget of the mean, rule
 * @returns decision, limits of the error in distance, probability that the true error lies outside them, tolerance over U
 * Faults: as `decidePoint`.
 * Source: ILAC-G8:09/2019; JCGM 106:2012, 9.3.2; ISO/IEC 17025:2017, 7.8.6.
 * @example judgeSetPoint({ distances: [99, 102], error: 0.5, setPoint: 100, tolerance: 1, budget:
 *   combineBudget([contribution({ source: "standard", value: 0.2, unit: "mm", distribution: "normal", divisor: 2 })]),
 *   rule: { name: "simple acceptance", guardFactor: 0 } }).statement // "fail": 102 lies outside 99 to 101
 */
export function judgeSetPoint(set: SetPointToJudge): JudgedSetPoint {
  const { distances, error, setPoint, tolerance, budget, rule } = set;
  const magnitude = Math.max(tolerance, greatestOf([setPoint, ...distances].map(Math.abs)));
  const limits = { low: -tolerance, high: tolerance };
  const decision = decidePoint({ error, limits, ...budget, rule, magnitude });
  const isOneOutside = distances.some((distance) => !isInside(distance - setPoint, limits, magnitude));
  const isFailed = rule.name === "simple acceptance" && isOneOutside;
  return {
    ...decision,
    ...(isFailed && { statement: "fail" as const }),
    toleranceLow: limits.low,
    toleranceHigh: limits.high,
    specificRisk: specificRisk(error, limits, riskUncertainty(budget)),
    testUncertaintyRatio: testUncertaintyRatio(limits, budget.expandedUncertainty),
  };
}
