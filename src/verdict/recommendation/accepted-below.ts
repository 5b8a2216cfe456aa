import type { DecisionRule } from "../decision/decision-rule.ts";
import type { WorstPoint } from "./phase-state.ts";

/**
 * The expanded uncertainty with which a measured error would just be accepted.
 *
 * @param point its error and the lesser side of the tolerance, distance
 * @param rule whose guard band is r·U
 * @returns U = (T − |e|)/r; undefined for an error that is not inside, and for a rule without such a guard band
 * Source: ILAC-G8:09/2019, acceptance limit T − r·U.
 * @example acceptedBelow({ errorDistance: -8, tolerance: 10 }, { name: "guard band", guardFactor: 1 }) // 2
 */
export function acceptedBelow(
  { errorDistance, tolerance }: Pick<WorstPoint, "errorDistance" | "tolerance">,
  { name, guardFactor }: DecisionRule,
): number | undefined {
  const room = tolerance - Math.abs(errorDistance);
  const isByFactor = (name === "guard band" || name === "non-binary guard band") && guardFactor > 0;
  return isByFactor && room > 0 ? room / guardFactor : undefined;
}
