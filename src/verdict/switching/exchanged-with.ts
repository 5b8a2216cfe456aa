import { exchangedOutputs } from "../../analysis/plausibility/exchanged-outputs.ts";
import { type Range, spanOf } from "../../model/range.ts";
import { gapShare } from "../../model/test-points.ts";
import type { SwitchedState } from "./switched-state.ts";

/**
 * The switched outputs that may be exchanged with another one, by what they trip at.
 *
 * @param switching outputs of one phase
 * @param range of the loop, in the unit of their distances
 * @returns for each such output the name of the other one
 * Source: `exchangedOutputs`; without a tolerance of the set point the width of a test point is allowed (own choice).
 * @example exchangedWith([], { rangeLower: 0, rangeUpper: 100 }).size // 0
 */
export function exchangedWith(switching: readonly SwitchedState[], range: Range): ReadonlyMap<string, string> {
  const placed = switching.flatMap(({ output: { output, setPoint, setPointTolerance }, found }) => {
    const allowed = setPointTolerance ?? gapShare * spanOf(range);
    return found === null || found.setPoint === null
      ? []
      : [{ output, setPoint, at: setPoint + found.setPoint.error, allowed }];
  });
  return new Map(
    exchangedOutputs(placed).flatMap(([one, other]) => [
      [one, other],
      [other, one],
    ]),
  );
}
