import type { CurvePoint, CurveReading } from "../../analysis/figures/error-curve.ts";
import type { Loop } from "../../analysis/readings/loop.ts";
import { type ToleranceLimits, toleranceAt } from "../../analysis/readings/tolerance.ts";
import type { Budget } from "../../analysis/uncertainty/budget.ts";
import { type BudgetBasis, pointBudget } from "../../analysis/uncertainty/point-budget.ts";
import type { Sharing } from "../../analysis/uncertainty/scatter-contributions.ts";
import type { Direction } from "../../model/calibration-words.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { greatestDistanceOf, spanOf } from "../../model/range.ts";
import { statementSeverity } from "../../model/statement.ts";
import { type DecisionRule, decidePoint, type PointDecision } from "./decision-rule.ts";
import { riskOfDirections } from "./specific-risk.ts";
import { testUncertaintyRatio } from "./test-uncertainty-ratio.ts";

/** One test point with its uncertainty and what is said of it; the direction whose statement is worse stands for it. */
export type JudgedPoint = {
  curvePoint: CurvePoint;
  direction: Direction;
  errorDistance: number;
  errorPercentSpan: number;
  tolerance: ToleranceLimits;
  budget: Budget;
  /** In words, what the budget could not take in. */
  missing: readonly string[];
  sharing: Sharing;
  decision: PointDecision;
  /** That the true error of either direction lies outside. */
  specificRisk: number;
  testUncertaintyRatio: number;
};

/** What is judged: an error curve in percent of span with its readings, by which rule, on which basis. */
export type CurveToJudge = {
  curve: readonly CurvePoint[];
  readings: readonly CurveReading[];
  basis: BudgetBasis;
  loop: Loop;
  rule: DecisionRule;
};

/**
 * Judges each test point: mean error of each direction with its uncertainty against the tolerance there.
 *
 * @param judged curve, readings, basis of the budgets, loop, rule
 * @returns one result a test point, by rising distance; rising and falling are judged apart, the worse one is given, with
 *   the risk that the true error of either lies outside
 * Source: JCGM 106:2012 for the risk; ILAC-G8:09/2019 for the rules; own choice that each direction is judged on its
 * own: a mean of both would hide a hysteresis that is out of tolerance.
 * @example judgePoints({ curve: [{ point: 50, reference: 50, up: 0.5, down: null, mean: 0.5 }],
 *   readings: [{ point: 50, reference: 50, error: 0.5, direction: "rising", cycle: 1 }], basis: { standards: [],
 *   performedOn: "2026-03-04", distanceUnit: "mm", signalUnit: "mA", principle: "laser",
 *   isTemperatureCompensated: false, airTemperatureCelsius: 20, alignmentAngleDegrees: 0, judged: "signal",
 *   distancePerOutput: 6.25, steps: { reference: 0.1, output: 0.001 },
 *   repeatability: { notDetermined: "one cycle only" }, hysteresis: { width: 0 } },
 *   loop: { characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
 *   toleranceTerms: [{ basis: "distance", plus: 1, minus: 1 }], faultLevels: {}, signalUnit: "mA" },
 *   rule: { name: "guard band", guardFactor: 1 } })[0].decision.statement // "pass"
 */
export function judgePoints(judged: CurveToJudge): readonly JudgedPoint[] {
  const readingsOf = groupedBy(judged.readings, ({ point, direction }) => `${point} ${direction}`);
  return judged.curve.map((curvePoint) => {
    const directions = [
      { direction: "rising", error: curvePoint.up },
      { direction: "falling", error: curvePoint.down },
    ] as const;
    const each = directions.flatMap(({ direction, error }) =>
      error === null
        ? []
        : [
            judgeDirection(
              { ...judged, readings: readingsOf.get(`${curvePoint.point} ${direction}`) ?? [] },
              curvePoint,
              direction,
              error,
            ),
          ],
    );
    const { cycles: _, ...worse } = each.reduce((left, right) => (isWorse(right, left) ? right : left));
    return { ...worse, specificRisk: riskOf(each) };
  });
}

type JudgedDirection = JudgedPoint & { cycles: number };

function riskOf(each: readonly JudgedDirection[]): number {
  const [first] = each as readonly [JudgedDirection, ...JudgedDirection[]];
  return riskOfDirections(
    each.map(({ errorDistance: error, budget, sharing, cycles }) => ({
      ...{ error, budget },
      common: Math.hypot(sharing.all, sharing.cycle / Math.sqrt(cycles)),
    })),
    first.tolerance,
  );
}

function judgeDirection(
  { readings: own, basis, loop, rule }: CurveToJudge,
  curvePoint: CurvePoint,
  direction: Direction,
  errorPercentSpan: number,
): JudgedDirection {
  const { point, reference, up, down } = curvePoint;
  const characteristic = loop.characteristics.signal;
  const magnitude = greatestDistanceOf(characteristic);
  const errorDistance = (errorPercentSpan * spanOf(characteristic)) / 100;
  const tolerance = toleranceAt(loop.toleranceTerms, characteristic, reference);
  const cycles = new Set(own.map(({ cycle }) => cycle)).size;
  const { budget, missing, sharing } = pointBudget(basis, {
    reference,
    readings: own.length,
    point,
    cycles,
    isReadBothWays: up !== null && down !== null,
  });
  const { expandedUncertainty, coverageFactor } = budget;
  return {
    curvePoint,
    direction,
    errorDistance,
    errorPercentSpan,
    tolerance,
    budget,
    missing,
    sharing,
    cycles,
    decision: decidePoint({
      ...{ error: errorDistance, limits: tolerance, expandedUncertainty, coverageFactor, rule, magnitude },
    }),
    specificRisk: riskOfDirections([{ error: errorDistance, budget, common: 0 }], tolerance),
    testUncertaintyRatio: testUncertaintyRatio(tolerance, expandedUncertainty),
  };
}

type StatedRisk = Pick<JudgedPoint, "decision" | "specificRisk" | "errorDistance" | "tolerance">;

/**
 * Whether one judged point is worse than another: by its statement, then by its risk, then by how far its error lies
 * beyond the tolerance. Far outside every risk is 1 to the last digit, and only the distance tells the worst.
 *
 * @param left a judged point
 * @param right a judged point
 * @returns true where `left` is the worse
 * Source: own choice.
 * @example isWorse({ decision: { statement: "fail", acceptance: null, guardBand: 1 }, specificRisk: 1, errorDistance: 9,
 *   tolerance: { low: -1, high: 1 } }, { decision: { statement: "fail", acceptance: null, guardBand: 1 },
 *   specificRisk: 1, errorDistance: -5, tolerance: { low: -1, high: 1 } }) // true
 */
export function isWorse(left: StatedRisk, right: StatedRisk): boolean {
  const bySeverity = statementSeverity[left.decision.statement] - statementSeverity[right.decision.statement];
  if (bySeverity !== 0) return bySeverity > 0;
  if (left.specificRisk !== right.specificRisk) return left.specificRisk > right.specificRisk;
  return beyondTolerance(left) > beyondTolerance(right);
}

function beyondTolerance({ errorDistance, tolerance }: StatedRisk): number {
  return Math.max(errorDistance - tolerance.high, tolerance.low - errorDistance);
}
