import { fitLineThrough } from "../../numeric/fit-line-through.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { deviationsFromRepeats, type StageReading } from "../readings/repeated-readings.ts";

/** How the error of a stage moved while the readings were taken. */
export type DriftInTime = {
  /** Percent of span for each unit of `elapsed`. */
  rate: number;
  /** Rate times the time from the first reading to the last, percent of span. */
  total: number;
  totalStandardUncertainty: number;
  degreesOfFreedom: number;
};

/**
 * How much the error moved with time alone, whatever the distance and the direction do to it.
 *
 * Each reading is compared with those that repeat it (same point, same direction) in the other cycles; the line of these
 * differences on the differences in time goes through zero.
 *
 * @param readings of one stage, at least two cycles
 * @returns drift over the phase; undefined where nothing was repeated at another time
 * Source: least squares through the origin after the group means are taken off, JCGM 100:2008 H.3 for the uncertainty,
 *   degrees of freedom less one for each group.
 * @example driftInTime(outAndBack([0, 50, 100], 2, ({ elapsed }) => elapsed / 10))?.total // 1.1
 */
export function driftInTime(readings: readonly StageReading[]): DriftInTime | undefined {
  const deviations = deviationsFromRepeats(readings);
  const groups = new Set(deviations.map(({ reading }) => `${reading.point} ${reading.direction}`)).size;
  const degreesOfFreedom = deviations.length - groups - 1;
  if (degreesOfFreedom < 1 || deviations.every(({ elapsed }) => elapsed === 0)) return undefined;
  const fit = fitLineThrough(
    deviations.map(({ elapsed }) => elapsed),
    deviations.map(({ error }) => error),
  );
  const times = readings.map(({ elapsed }) => elapsed);
  const duration = greatestOf(times) - leastOf(times);
  const widened = (fit.slopeStdError ?? 0) * Math.sqrt(fit.degreesOfFreedom / degreesOfFreedom);
  return {
    rate: fit.slope,
    total: fit.slope * duration,
    totalStandardUncertainty: widened * duration,
    degreesOfFreedom,
  };
}

/**
 * The readings without the drift: each error as it would have been in the middle of the phase.
 *
 * @param readings of one stage
 * @param drift of `driftInTime`
 * @returns the same readings with other errors
 * Source: own choice.
 * @example withoutDrift(outAndBack([0, 100], 1, ({ elapsed }) => elapsed), { rate: 1 }).map(({ error }) => error) //
 *   [1.5, 1.5, 1.5, 1.5]
 */
export function withoutDrift(readings: readonly StageReading[], { rate }: DriftInTime): readonly StageReading[] {
  const times = readings.map(({ elapsed }) => elapsed);
  const middle = (greatestOf(times) + leastOf(times)) / 2;
  return readings.map((reading) => ({ ...reading, error: reading.error - rate * (reading.elapsed - middle) }));
}
