import { type LonePoint, lonePoint } from "../../../analysis/figures/lone-point.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { onceFor } from "./once-for.ts";
import { errorOf, type StageEvidence } from "./stage-evidence.ts";

/** A stage that is off at one test point only. */
export type LoneInStage = { stage: StageEvidence; lone: LonePoint };

/** Beyond an end of the range an output stops by itself, or the controller limits it: that is no point that is off. */
function isBeyondEnds({ input, expected }: LonePoint, mattering: number): boolean {
  return input + expected < -mattering || input + expected > 100 + mattering;
}

/** Readings of the point that something else explains, and that are left out, may not be more than those that are alike. */
function isMostOf({ readings }: CauseEvidence, { point, members }: LonePoint): boolean {
  return 2 * members.length > readings.filter((reading) => reading.point === point).length;
}

/**
 * The stages in which one test point lies off the line of all others, alike in all its readings.
 *
 * @param evidence of a phase
 * @returns stages that follow their input, in the order of the loop, each with its point; none where the line of the
 *   others says that the output should be beyond the ends of its range
 * Source: `lonePoint`.
 * @example lonePoints(evidence) // []
 */
export function lonePoints(evidence: CauseEvidence): readonly LoneInStage[] {
  return allLonePoints(evidence).filter(({ lone }) => !isBeyondEnds(lone, evidence.mattering));
}

/**
 * The same with those at which the output stopped because it should be beyond its range.
 *
 * @param evidence of a phase
 * @returns as `lonePoints`
 * Source: `lonePoint`.
 * @example allLonePoints(evidence) // []
 */
export const allLonePoints = onceFor((evidence): readonly LoneInStage[] =>
  evidence.stages.flatMap((stage) => {
    const { line, readings, resolution, made } = stage;
    if (line === undefined || made !== undefined) return [];
    const placed = readings.map((reading) => errorOf(reading, stage));
    const lone = lonePoint(placed, { mattering: evidence.mattering, leastScatter: resolution / Math.sqrt(12) });
    return lone === undefined || !isMostOf(evidence, lone) ? [] : [{ stage, lone }];
  }),
);
