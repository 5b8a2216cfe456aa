import { fitLine, type LineFit } from "../numeric/fit-line.ts";
import { lineValue } from "../numeric/line-value.ts";
import { predictionHalfWidth } from "../numeric/prediction-half-width.ts";
import { studentTQuantile } from "../numeric/student-t-quantile.ts";
import { dayNumber, isoDay } from "./day-number.ts";
import { type Figure, notDetermined } from "./figure.ts";

/** What was measured on one day; distance. */
export type DatedError = { performedOn: string; errorDistance: number };

/** Limits of the error at a test point, distance. */
export type ErrorLimits = { low: number; high: number };

/** The first day on which the prediction band lies on a limit or beyond it. */
export type LimitMeeting = { limit: "upper" | "lower"; on: string };

/** How the error at one test point moves with time, and when its forecast meets a limit. */
export type PointDrift = {
  count: number;
  from: string;
  until: string;
  /** Distance a year, with its two-sided 95 % confidence interval. */
  perYear: number;
  perYearLow: number;
  perYearHigh: number;
  residualStdDev: number;
  /** Null where the band stays inside both limits for 20 years. */
  meets: LimitMeeting | null;
};

/** The forecast on one day: line and 95 % prediction band, distance. */
export type Forecast = { on: string; value: number; low: number; high: number };

export const daysPerYear = 365.25;
/** Beyond that a date says nothing: own choice. */
export const horizonYears = 20;
const leastResults = 3;
const confidence = 0.95;

/**
 * How the error at a test point drifts, and the day on which its 95 % prediction band meets a limit.
 *
 * The band is convex above and concave below, so that after the last result each limit is met once or never, and
 * halving the days finds the first one exactly. It knows the scatter of the results and nothing of an error that all of
 * them share, such as that of one standard.
 *
 * @param errors results since the last adjustment, in any order, distance
 * @param limits of the error, distance
 * @returns distance a year, and the meeting from the day of the last result on; that day itself where the band is
 *   beyond a limit by then. Not determined under three results or two days
 * Source: least squares as JCGM 100:2008 (GUM), H.3; prediction interval: NIST/SEMATECH e-Handbook, 4.5.1.2.
 * @example pointDrift([at("2023-01-01", 0), at("2024-01-01", 1.2), at("2025-01-01", 1.9)], { low: -5, high: 5 })
 *   // { perYear: 0.94961, perYearLow: -0.88525, perYearHigh: 2.78447, meets: { limit: "upper", on: "2025-06-13" }, … }
 */
export function pointDrift(errors: readonly DatedError[], limits: ErrorLimits): Figure<PointDrift> {
  const fitted = driftLine(errors);
  if ("notDetermined" in fitted) return fitted;
  const { fit, from, until } = fitted;
  const reach = studentTQuantile((1 + confidence) / 2, fit.degreesOfFreedom) * (fit.slopeStdError ?? 0);
  return {
    count: fit.n,
    from,
    until,
    perYear: fit.slope,
    perYearLow: fit.slope - reach,
    perYearHigh: fit.slope + reach,
    residualStdDev: fit.residualStdDev ?? 0,
    meets: meetingOf(fitted, limits),
  };
}

/**
 * The line of the error and its 95 % prediction band on chosen days.
 *
 * @param errors as for `pointDrift`
 * @param days ISO 8601 dates
 * @returns one row a day, distance; none where `pointDrift` is not determined
 * Source: as `pointDrift`.
 * @example driftForecast([at("2023-01-01", 0), at("2024-01-01", 1.2), at("2025-01-01", 1.9)], ["2025-06-13"])[0].high // 5.0002
 */
export function driftForecast(errors: readonly DatedError[], days: readonly string[]): readonly Forecast[] {
  const fitted = driftLine(errors);
  return "notDetermined" in fitted ? [] : days.map((on) => ({ on, ...bandAt(fitted, dayNumber(on)) }));
}

type DriftLine = { fit: LineFit; from: string; until: string; firstDay: number };

function driftLine(errors: readonly DatedError[]): Figure<DriftLine> {
  const inOrder = errors.toSorted((one, other) => dayNumber(one.performedOn) - dayNumber(other.performedOn));
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  if (first === undefined || last === undefined || inOrder.length < leastResults) return tooFew(inOrder.length);
  if (first.performedOn === last.performedOn) return notDetermined("not enough: all results are of one day");
  const firstDay = dayNumber(first.performedOn);
  const years = inOrder.map(({ performedOn }) => (dayNumber(performedOn) - firstDay) / daysPerYear);
  const fit = fitLine(
    years,
    inOrder.map(({ errorDistance }) => errorDistance),
  );
  return { fit, from: first.performedOn, until: last.performedOn, firstDay };
}

function tooFew(count: number): Figure<never> {
  return notDetermined(`not enough: ${["no result", "one result", "two results"][count]}`);
}

function bandAt({ fit, firstDay }: DriftLine, day: number): Omit<Forecast, "on"> {
  const years = (day - firstDay) / daysPerYear;
  const value = lineValue(fit, years);
  const halfWidth = predictionHalfWidth(fit, years, confidence);
  return { value, low: value - halfWidth, high: value + halfWidth };
}

/** Of the two limits the one that is met first; of both on one day the one that the line goes towards. */
function meetingOf(line: DriftLine, { low, high }: ErrorLimits): LimitMeeting | null {
  const start = dayNumber(line.until);
  const upper = firstDayWith(start, (day) => bandAt(line, day).high >= high);
  const lower = firstDayWith(start, (day) => bandAt(line, day).low <= low);
  const both = upper !== null && upper === lower;
  const isUpper = both ? bandAt(line, upper).value > (low + high) / 2 : (upper ?? Infinity) < (lower ?? Infinity);
  const day = isUpper ? upper : lower;
  return day === null ? null : { limit: isUpper ? "upper" : "lower", on: isoDay(day) };
}

function firstDayWith(start: number, isBeyond: (day: number) => boolean): number | null {
  let [inside, beyond] = [start - 1, start + Math.floor(horizonYears * daysPerYear)];
  if (!isBeyond(beyond)) return null;
  while (beyond - inside > 1) {
    const middle = Math.floor((inside + beyond) / 2);
    if (middle >= start && isBeyond(middle)) beyond = middle;
    else inside = middle;
  }
  return beyond;
}
