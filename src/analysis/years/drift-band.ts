import type { ValueInterval } from "../../numeric/prediction-interval.ts";
import { daysPerYear } from "./day-number.ts";
import { type DriftLine, forecastOf } from "./drift-line.ts";
import { horizonYears, type LimitCrossing } from "./limit-crossing.ts";

/** Steps; enough for a curve without corners. */
const bandSteps = 40;
/** A line over a few days is drawn as far ahead as one over so many: own choice. */
const fewestDaysDrawn = 30;

/**
 * The prediction band from the first day of the line to some time after it meets a limit, to draw it.
 *
 * @param line of `driftLine`
 * @param crossing of `limitCrossing`; undefined where the band meets no limit
 * @param lastDay of the last record, as in `dayNumber`
 * @returns 41 days, evenly, with the band there; distance
 * Source: `predictedError`; how far it is drawn is own choice: at least a third of the recorded time, at most 20 years.
 * @example driftBand(driftLine(fourErrors), undefined, 1096).at(-1)?.day // 2192
 */
export function driftBand(
  line: DriftLine,
  crossing: LimitCrossing | undefined,
  lastDay: number,
): readonly (ValueInterval & { day: number })[] {
  const recorded = Math.max(lastDay - line.firstDay, fewestDaysDrawn);
  const end = crossing === undefined ? lastDay + recorded : Math.max(crossing.day, lastDay) + Math.ceil(recorded / 3);
  const stretch = Math.min(end, lastDay + Math.floor(horizonYears * daysPerYear)) - line.firstDay;
  const forecast = forecastOf(line);
  return Array.from({ length: bandSteps + 1 }, (_, step) => {
    const day = line.firstDay + Math.round((stretch * step) / bandSteps);
    return { day, ...forecast(day) };
  });
}
