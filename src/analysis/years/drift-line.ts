import { fitLine, type LineFit } from "../../numeric/fit-line.ts";
import { predictionInterval, slopeInterval, type ValueInterval } from "../../numeric/prediction-interval.ts";
import { type Figure, notDetermined } from "../figures/figure.ts";
import { daysPerYear } from "./day-number.ts";

/** An error that was found on a day, counted as in `dayNumber`; distance. */
export type DatedError = { day: number; error: number };

/** The error of a loop as a straight line in time, between two adjustments. */
export type DriftLine = {
  /** Abscissa: years since the first day. */
  fit: LineFit;
  firstDay: number;
  lastDay: number;
  /** Distance a year, with its two-sided 95 % confidence interval. */
  perYear: ValueInterval;
};

/** Two points lie on a line whatever they are. */
export const fewestRecords = 3;

/** Over fewer days a drift a year says more about the noise than about the loop. */
const fewestDays = 30;

const counts = ["no record", "one record", "two records"] as const;

/**
 * How the error moved from year to year: least squares of error on time.
 *
 * @param errors of one place of the range, since the last adjustment, one for each record; distance
 * @returns line, drift per year with its 95 % confidence interval (Student's t, n − 2); or why there is none
 * Source: ILAC-G24:2022 / OIML D 10, 6.3 (drift and dispersion); least squares JCGM 100:2008, H.3; that three and
 *   30 days are the fewest is own choice: two leave no scatter to judge by, days are no years.
 * @example driftLine([{ day: 0, error: 1 }, { day: 365.25, error: 3 }, { day: 730.5, error: 4 }, { day: 1095.75, error:
 *   8 }]).perYear // value 2.2, low 0.3745, high 4.0255
 */
export function driftLine(errors: readonly DatedError[]): Figure<DriftLine> {
  if (errors.length < fewestRecords) return notDetermined(`not enough: ${counts[errors.length]}`);
  const days = errors.map(({ day }) => day);
  const [firstDay, lastDay] = [Math.min(...days), Math.max(...days)];
  if (lastDay - firstDay < fewestDays) {
    return notDetermined(`not enough: all records lie within less than ${fewestDays} days`);
  }
  const fit = fitLine(
    days.map((day) => (day - firstDay) / daysPerYear),
    errors.map(({ error }) => error),
  );
  return { fit, firstDay, lastDay, perYear: slopeInterval(fit) };
}

/**
 * The error that a line of drift expects of a further calibration on a day, with its 95 % prediction interval.
 *
 * @param line of `driftLine`
 * @param day as in `dayNumber`
 * @returns error and both ends of the band, distance
 * Source: `predictionInterval`.
 * @example predictedError(driftLine([{ day: 0, error: 1 }, { day: 365.25, error: 3 }, { day: 730.5, error: 4 }, { day:
 *   1095.75, error: 8 }]), 1461) // value 9.5, low 3.0460, high 15.9540
 */
export function predictedError({ fit, firstDay }: DriftLine, day: number): ValueInterval {
  return predictionInterval(fit, (day - firstDay) / daysPerYear);
}
