import type { Budget } from "../../analysis/uncertainty/budget.ts";
import { monteCarloBudget } from "../../analysis/uncertainty/monte-carlo-budget.ts";
import type { JudgedPointRecord } from "../../record/record-schema.ts";
import type { JudgedPoint } from "../../verdict/decision/judge-points.ts";

/** How budgets are checked by drawing: how many draws, and the digest that they start from. */
export type DrawnBy = { draws: number; seed: Uint8Array };

/** Streams of random numbers that one curve may use; the next curve begins behind them. */
const streamsPerCurve = 10_000;

/**
 * The judged points of one curve as the record carries them.
 *
 * @param points judged test points of one curve
 * @param drawnBy where the budgets are to be checked by drawing
 * @param curveNumber 0, 1 …: each curve draws from streams of its own
 * @returns points, distances and percent of span at full precision; unlimited degrees of freedom are null
 * Source: `judge-points.ts`; JCGM 101:2008 for the drawing.
 * @example assemblePoints([], undefined, 0) // []
 */
export function assemblePoints(
  points: readonly JudgedPoint[],
  drawnBy: DrawnBy | undefined,
  curveNumber: number,
): JudgedPointRecord[] {
  return points.map((judged, index) => ({
    ...judged.curvePoint,
    direction: judged.direction,
    errorDistance: judged.errorDistance,
    errorPercentSpan: judged.errorPercentSpan,
    toleranceLow: judged.tolerance.low,
    toleranceHigh: judged.tolerance.high,
    budget: { ...budgetRecord(judged.budget), sharing: { ...judged.sharing }, missing: [...judged.missing] },
    expandedUncertainty: judged.budget.expandedUncertainty,
    coverageFactor: judged.budget.coverageFactor,
    guardBand: judged.decision.guardBand,
    ...(judged.decision.whyNotManaged && { whyNotManaged: judged.decision.whyNotManaged }),
    acceptanceLow: judged.decision.acceptance?.low ?? null,
    acceptanceHigh: judged.decision.acceptance?.high ?? null,
    specificRisk: judged.specificRisk,
    testUncertaintyRatio: judged.testUncertaintyRatio,
    statement: judged.decision.statement,
    ...(drawnBy && { monteCarlo: drawn(judged.budget, drawnBy, curveNumber * streamsPerCurve + index) }),
  }));
}

/**
 * A budget as the record carries it, but for what it could not take in.
 *
 * @param budget combined, distance
 * @returns its lines and sums at full precision; unlimited degrees of freedom are null
 * Source: own choice: JSON has no infinity.
 * @example budgetRecord(combineBudget([contribution({ source: "standard", value: 0.2, unit: "mm", distribution:
 *   "normal", divisor: 2 })])).effectiveDegreesOfFreedom // null: every contribution has unlimited ones
 */
export function budgetRecord(budget: Budget) {
  return {
    lines: budget.lines.map((line) => ({ ...line, degreesOfFreedom: orUnlimited(line.degreesOfFreedom) })),
    combinedUncertainty: budget.combinedUncertainty,
    effectiveDegreesOfFreedom: orUnlimited(budget.effectiveDegreesOfFreedom),
    coverageProbability: budget.coverageProbability,
    coverageBasis: budget.coverageBasis,
  };
}

function orUnlimited(degreesOfFreedom: number): number | null {
  return Number.isFinite(degreesOfFreedom) ? degreesOfFreedom : null;
}

function drawn(budget: Budget, { draws, seed }: DrawnBy, stream: number) {
  const { standardUncertainty, halfWidth, low, high, agrees, reason } = monteCarloBudget(budget, draws, seed, stream);
  return { draws, standardUncertainty, halfWidth, low, high, agrees, reason };
}
