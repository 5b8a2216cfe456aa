import { fitLine, type LineFit, lineWithScatter } from "../../numeric/fit-line.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { lineValue } from "../../numeric/line-value.ts";
import type { PooledStandardDeviation } from "../../numeric/pooled-standard-deviation.ts";
import {
  intervalFactor,
  predictionBand,
  slopeInterval,
  type ValueInterval,
} from "../../numeric/prediction-interval.ts";
import { type Figure, isDetermined, notDetermined } from "../figures/figure.ts";
import { daysPerYear } from "./day-number.ts";

/** An error that was found on a day, counted as in `dayNumber`; distance. */
export type DatedError = { day: number; error: number };

/** The error of a loop as a straight line in time, between two adjustments; its scatter is that of its own errors. */
export type FittedDrift = {
  /** Abscissa: years since the first day. */
  fit: LineFit;
  /** What the line leaves of each error, in the order given; distance. */
  residuals: readonly number[];
  firstDay: number;
  lastDay: number;
  /** Of its own errors alone, n − 2 degrees of freedom. */
  own: PooledStandardDeviation;
  /** Under four records a forecast is early. */
  isEarly: boolean;
};

/** The same with what follows from a scatter: its own, or one pooled over several lines. */
export type DriftLine = FittedDrift & {
  scatter: PooledStandardDeviation;
  /** Student's t for two-sided 95 %. */
  factor: number;
  /** Distance a year, with its two-sided 95 % confidence interval. */
  perYear: ValueInterval;
};

/** Two points lie on a line whatever they are. */
export const fewestRecords = 3;
/** Under so many records a forecast is said to be early: own choice. */
const recordsOfForecast = 4;

/** Over fewer days a drift a year says more about the noise than about the loop. */
const fewestDays = 30;

const counts = ["no record", "one record", "two records"] as const;

/**
 * The straight line of the error in time: least squares.
 *
 * @param errors of one place of the range, since the last adjustment, one for each record; distance
 * @returns line and residuals; or why there is none
 * Source: ILAC-G24:2022 / OIML D 10, 6.3 (drift and dispersion); least squares JCGM 100:2008, H.3; that three and
 *   30 days are the fewest is own choice: two leave no scatter to judge by, days are no years.
 * @example fitDrift([{ day: 0, error: 1 }]).notDetermined // "not enough: one record"
 */
export function fitDrift(errors: readonly DatedError[]): Figure<FittedDrift> {
  if (errors.length < fewestRecords) return notDetermined(`not enough: ${counts[errors.length]}`);
  const days = errors.map(({ day }) => day);
  const [firstDay, lastDay] = [leastOf(days), greatestOf(days)];
  if (lastDay - firstDay < fewestDays) {
    return notDetermined(`not enough: all records lie within less than ${fewestDays} days`);
  }
  const years = days.map((day) => (day - firstDay) / daysPerYear);
  const fit = fitLine(
    years,
    errors.map(({ error }) => error),
  );
  return {
    ...{ fit, firstDay, lastDay },
    residuals: errors.map(({ error }, index) => error - lineValue(fit, years[index] as number)),
    own: { standardDeviation: fit.residualStdDev ?? 0, degreesOfFreedom: fit.degreesOfFreedom },
    isEarly: errors.length < recordsOfForecast,
  };
}

/**
 * What a line of drift says with a scatter: drift a year with its interval, and what its forecast rests on.
 *
 * @param fitted of `fitDrift`
 * @param scatter of `pooledScatter`, where more is known of it than its own errors tell
 * @returns the line; its confidence interval and its prediction rest on that scatter
 * Source: `lineWithScatter`.
 * @example driftWithScatter(fitDrift(fourErrors), { standardDeviation: 0, degreesOfFreedom: 9 }).perYear
 *   // value 2.2, low 2.2, high 2.2
 */
export function driftWithScatter(fitted: FittedDrift, scatter: PooledStandardDeviation): DriftLine {
  const fit = lineWithScatter(fitted.fit, scatter);
  const factor = intervalFactor(fit);
  return { ...fitted, fit, scatter, factor, perYear: slopeInterval(fit, factor) };
}

/**
 * How the error moved from year to year, by the scatter of its own errors.
 *
 * @param errors as in `fitDrift`
 * @returns line, drift per year with its 95 % confidence interval (Student's t, n − 2); or why there is none
 * Source: `fitDrift`.
 * @example driftLine([{ day: 0, error: 1 }, { day: 365.25, error: 3 }, { day: 730.5, error: 4 }, { day: 1095.75, error:
 *   8 }]).perYear // value 2.2, low 0.3745, high 4.0255
 */
export function driftLine(errors: readonly DatedError[]): Figure<DriftLine> {
  const fitted = fitDrift(errors);
  return isDetermined(fitted) ? driftWithScatter(fitted, fitted.own) : fitted;
}

/**
 * The error that a line of drift expects of a further calibration on a day, with its 95 % prediction interval.
 *
 * @param line of `driftLine`
 * @param day as in `dayNumber`
 * @returns error and both ends of the band, distance
 * Source: `predictionInterval`.
 * @example predictedError(driftLine(fourErrors), 1461) // value 9.5, low 3.0460, high 15.9540
 */
export function predictedError(line: DriftLine, day: number): ValueInterval {
  return forecastOf(line)(day);
}

/**
 * The same for many days.
 *
 * @param line of `driftLine`
 * @returns what `predictedError` gives, for any day
 * Source: `predictionBand`.
 * @example forecastOf(driftLine(fourErrors))(1461) // value 9.5, low 3.0460, high 15.9540
 */
export function forecastOf({ fit, factor, firstDay }: DriftLine): (day: number) => ValueInterval {
  const band = predictionBand(fit, factor);
  return (day) => band((day - firstDay) / daysPerYear);
}
