import { daysPerYear } from "./day-number.ts";
import { type DriftLine, forecastOf } from "./drift-line.ts";

/** The first day on which the prediction band meets a limit. */
export type LimitCrossing = {
  day: number;
  limit: "upper" | "lower";
  /** The band lies beyond the limit already on the day from which it is followed. */
  isAlready: boolean;
};

export type ErrorLimits = { low: number; high: number };

/** Nobody plans farther ahead, and no straight line holds so long: own choice. */
export const horizonYears = 20;

/**
 * When a further calibration would no longer surely be found in tolerance: the first day on which the 95 % prediction
 * band meets the upper or the lower limit.
 *
 * The band is convex upwards and concave downwards, so that it crosses each limit once at most: halving the stretch of
 * days finds the very day.
 *
 * @param line of `driftLine`
 * @param limits of the error, distance, low < high
 * @param fromDay day of the last record, as in `dayNumber`
 * @returns the day and which limit; undefined where it does not come within 20 years
 * Source: own choice of the band's edge as the criterion; the band `predictionInterval`.
 * @example limitCrossing(driftLine([0, 1, 2].map((year) => ({ day: 365.25 * year, error: year }))), { low: -10, high:
 *   10 }, 0) // { day: 3653, limit: "upper", isAlready: false }
 */
export function limitCrossing(line: DriftLine, { low, high }: ErrorLimits, fromDay: number): LimitCrossing | undefined {
  const forecast = forecastOf(line);
  const limitAt = (day: number): LimitCrossing["limit"] | undefined => {
    const band = forecast(day);
    if (band.high >= high) return "upper";
    return band.low <= low ? "lower" : undefined;
  };
  const now = limitAt(fromDay);
  if (now !== undefined) return { day: fromDay, limit: now, isAlready: true };
  let [inside, beyond] = [fromDay, fromDay + Math.floor(horizonYears * daysPerYear)];
  if (limitAt(beyond) === undefined) return undefined;
  while (beyond - inside > 1) {
    const middle = Math.floor((inside + beyond) / 2);
    if (limitAt(middle) === undefined) inside = middle;
    else beyond = middle;
  }
  return { day: beyond, limit: limitAt(beyond) as LimitCrossing["limit"], isAlready: false };
}
