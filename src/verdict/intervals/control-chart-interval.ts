import type { LimitCrossing } from "../../analysis/years/limit-crossing.ts";
import type { IntervalSettings } from "./interval-settings.ts";

/** The longest interval that drift and dispersion allow. */
export type ControlChartInterval = {
  /** Whole months from the last calibration; 0 where the band lies beyond a limit already. */
  months: number;
  /** Which cap was put in the place of what the band allows. */
  cap: "longest" | null;
};

/**
 * The next interval by method 2, control chart: the longest one after which the 95 % prediction of drift and dispersion
 * still lies inside the tolerance.
 *
 * @param crossing first day on which the band meets a limit; undefined where it does not come
 * @param dayAfter the day so many months after the last calibration, as in `dayNumber`
 * @param settings of which the longest interval is used
 * @returns whole months, rounded down: on that very day the band lies inside; 0 also under one month
 * Source: ILAC-G24:2022 / OIML D 10, 6.3 (method 2); the prediction band as the measure of dispersion is own choice.
 * @example controlChartInterval({ day: 100, limit: "upper", isAlready: false }, (months) => 30 * months,
 *   usualIntervalSettings) // { months: 3, cap: null }
 */
export function controlChartInterval(
  crossing: LimitCrossing | undefined,
  dayAfter: (months: number) => number,
  { mostMonths }: IntervalSettings,
): ControlChartInterval {
  const end = crossing?.day ?? Number.POSITIVE_INFINITY;
  let months = 0;
  while (months < mostMonths && dayAfter(months + 1) < end) months += 1;
  return { months, cap: months === mostMonths && dayAfter(months + 1) < end ? "longest" : null };
}
