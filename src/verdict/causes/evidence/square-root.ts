import type { StageEnds } from "../../../analysis/stages/stage-lines.ts";
import type { StagedReading } from "../../../analysis/stages/staged-readings.ts";
import { greatestOf, leastOf } from "../../../numeric/least-and-greatest.ts";

/** What a function of the controller makes of a part of the span. */
export type MadeFunction = "square root" | "square";

const functions: readonly { name: MadeFunction; of: (part: number) => number }[] = [
  { name: "square root", of: (part) => Math.sqrt(Math.max(0, part)) },
  { name: "square", of: (part) => part ** 2 },
];
/** Own choice: readings inside the range at which the function and a straight line lie far apart. */
const fewest = 3;
const apart = 5;
/** Percent of span: common practice, a root is cut off near its zero, where it is steep. */
const cutOff = 10;

/**
 * The function that a stage behind the sensor makes of its input, where a straight line is meant.
 *
 * A flow that is measured by a pressure drop needs a square root, a distance none: a block copied from such a loop takes
 * it all the same. Told where every reading inside the range lies on the function, and three or more lie far from the line.
 *
 * @param readings of a phase
 * @param ends of the stage and one step of what was displayed, percent of span: from the signal or the counts on, or from the reference to counts or value where no
 *   signal was read
 * @param mattering smallest error that matters, percent of span
 * @returns the function; undefined where a reading lies off it
 * Source: arithmetic of the parts of span; own choice of how near.
 * @example madeFunction(evidence.readings, stage, evidence.mattering) // undefined
 */
export function madeFunction(
  readings: readonly StagedReading[],
  { input, output, resolution }: Pick<StageEnds, "input" | "output"> & { resolution: number },
  mattering: number,
): MadeFunction | undefined {
  if (input === "reference" && output !== "value" && output !== "counts") return undefined;
  const parts = readings.flatMap(({ percent }) => {
    const [given, made] = [percent[input], percent[output]];
    return given === undefined || made === undefined || given < 0 || given > 100 ? [] : [{ given, made }];
  });
  const bent = parts.filter(({ given, made }) => Math.abs(made - given) > Math.max(apart, 2 * resolution));
  if (bent.length < fewest) return undefined;
  const within = Math.max(mattering, 2 * resolution);
  return functions.find(({ of }) =>
    parts.every(({ given, made }) => {
      if (given <= cutOff && Math.abs(made) <= within) return true;
      // A step of the input moves a root at 0 by far more than a step.
      const ends = [given - resolution, given + resolution].map((one) => 100 * of(Math.max(0, one) / 100));
      return made >= leastOf(ends) - within && made <= greatestOf(ends) + within;
    }),
  )?.name;
}
