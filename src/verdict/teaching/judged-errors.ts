import { groupedBy } from "../../model/grouped-by.ts";
import { mean } from "../../numeric/mean.ts";
import type { DecisionRule } from "../decision/decision-rule.ts";
import type { JudgedError } from "./reteach.ts";

/** An error of one reading, with the limits of that reading. */
export type ReadingError = Omit<JudgedError, "expandedUncertainty" | "coverageFactor">;

/** What is judged at a test point: its limits, and the uncertainty of a mean error there. */
export type PointLimits = Pick<JudgedError, "point" | "tolerance" | "expandedUncertainty" | "coverageFactor">;

/**
 * The errors that a decision rule judges: every reading under simple acceptance, otherwise the mean of each direction at
 * each test point.
 *
 * @param readings errors of the readings in the figures
 * @param points limits and uncertainty of each test point; readings at a point that is not among them are left out
 * @param rule decision rule
 * @returns the errors with their limits and uncertainties, by test point
 * Source: as `decidePhase`.
 * @example judgedErrors([judgedError(50, 0.4), judgedError(50, 0.6)], [judgedError(50, 0)], { name: "guard band",
 *   guardFactor: 1 }).length // 1
 */
export function judgedErrors(
  readings: readonly ReadingError[],
  points: readonly PointLimits[],
  rule: DecisionRule,
): readonly JudgedError[] {
  const byPoint = groupedBy(readings, ({ point }) => point);
  return points.flatMap(({ point, tolerance, ...uncertainty }) => {
    const here = byPoint.get(point) ?? [];
    if (rule.name === "simple acceptance") return here.map((reading) => ({ ...reading, ...uncertainty }));
    return (["rising", "falling"] as const).flatMap((direction) => {
      const group = here.filter((reading) => reading.direction === direction);
      if (group.length === 0) return [];
      const reference = mean(group.map((reading) => reading.reference));
      const indicated = mean(group.map((reading) => reading.indicated));
      return [{ point, direction, reference, indicated, tolerance, ...uncertainty }];
    });
  });
}
