import { type LonePoint, lonePoint } from "../../../analysis/figures/lone-point.ts";
import { onceFor } from "./once-for.ts";
import type { StageEvidence } from "./stage-evidence.ts";

/** A stage that is off at one test point only. */
export type LoneInStage = { stage: StageEvidence; lone: LonePoint };

/**
 * The stages in which one test point lies off the line of all others, alike in all its readings.
 *
 * @param evidence of a phase
 * @returns stages that follow their input, in the order of the loop, each with its point
 * Source: `lonePoint`.
 * @example lonePoints(evidence) // []
 */
export const lonePoints = onceFor(({ stages, mattering }): readonly LoneInStage[] =>
  stages.flatMap((stage) => {
    const { input, output, line, readings, resolution } = stage;
    if (line === undefined) return [];
    const placed = readings.map(({ index, point, percent }) => {
      const given = percent[input] as number;
      return { index, point, input: given, error: (percent[output] as number) - given };
    });
    const lone = lonePoint(placed, { mattering, leastScatter: resolution / Math.sqrt(12) });
    return lone === undefined ? [] : [{ stage, lone }];
  }),
);
