import { sentenceCase } from "../../charts/chart-words.ts";
import type { OverTheYears, PlaceOverTheYears, RecordOverTheYears } from "../../record/over-the-years-schema.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { counted } from "../../units/counted.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { decimalsForSignificant, writeFixed, writePlain, writeSigned } from "../../units/write-number.ts";

type Point = NonNullable<NonNullable<RecordOverTheYears["asFound"]>["point"]>;

/** The place that speaks for the loop. */
export function leadingPlaceOf({ leading, places }: OverTheYears): PlaceOverTheYears | undefined {
  return leading === null ? undefined : places[leading];
}

/** "test point 500 mm", "fitted line at 0 mm". */
export function placeWords({ kind, distance }: PlaceOverTheYears, unit: string): string {
  return `${kind === "test point" ? "test point" : "fitted line at"} ${writePlain(distance)} ${unit}`;
}

/** "+0.48, from +0.37 to +0.59": distance a year, all to the digits that the interval supports. */
export function driftWords(drift: NonNullable<PlaceOverTheYears["drift"]>): string {
  const digits = decimalsForSignificant(drift.high - drift.low || drift.perYear, 2);
  const [perYear, low, high] = [drift.perYear, drift.low, drift.high].map((value) => writeSigned(value, digits));
  return `${perYear}, from ${low} to ${high}`;
}

/** When the forecast meets a limit, or why no day can be given. */
export function forecastWords({ meets, drift, isEarly, notDetermined }: PlaceOverTheYears): string {
  const early = isEarly ? "; early, by three records" : "";
  if (drift === null) return notDetermined.drift ?? "not determined";
  if (meets === null) return `${notDetermined.meets ?? "not determined"}${early}`;
  return meets.isAlready
    ? `reaches beyond the ${meets.limit} limit already${early}`
    : `meets the ${meets.limit} limit on ${meets.on}${early}`;
}

/** For the first page, where a day can be given: "meets the upper limit on 2026-07-06, before the next due date". */
export function forecastAnswer({ overTheYears, nextDue }: CalibrationRecord): string | undefined {
  const place = overTheYears && leadingPlaceOf(overTheYears);
  if (place === undefined || place.meets === null) return undefined;
  const isBeforeDue = nextDue !== undefined && place.meets.on < nextDue;
  return `${forecastWords(place)}${isBeforeDue ? ", before the next due date" : ""}`;
}

/** "+2.10 ± 0.40", or that nothing was measured there. */
export function errorWords(point: Pick<Point, "errorDistance" | "expandedUncertainty"> | null | undefined): string {
  if (point === null || point === undefined) return "not measured there";
  const { value, uncertainty } = writeWithUncertainty(point.errorDistance, point.expandedUncertainty);
  return `${point.errorDistance > 0 ? "+" : ""}${value} ± ${uncertainty}`;
}

/** "pass, 69 % of the tolerance"; where another test point was worse: "pass; worst +0.30 at 1050 mm, 5 %". */
export function stateWords(state: NonNullable<RecordOverTheYears["asFound"]>, unit: string): string {
  const { statement, point, worst } = state;
  const said = statement ?? "not determined";
  if (worst === null) return said;
  const part = worst.partOfTolerance === null ? "outside" : `${writeFixed(100 * worst.partOfTolerance, 0)} %`;
  if (worst.errorDistance === point?.errorDistance) return `${said}, ${part} of the tolerance`;
  const error = writeWithUncertainty(worst.errorDistance, worst.expandedUncertainty).value;
  return `${said}; worst ${worst.errorDistance > 0 ? "+" : ""}${error} at ${writePlain(worst.point)} ${unit}, ${part}`;
}

/** What was done, also where nobody said so. */
export function adjustmentWords({ adjustment, isAdjusted }: RecordOverTheYears): string {
  return adjustment ?? (isAdjusted ? "not stated; read again as left" : "not stated");
}

/** "4 of 4 (100 %); the rate behind it lies between 39.8 % and 100 % with 95 % confidence". */
export function reliabilityWords({ reliability, notDetermined }: OverTheYears): string {
  if (reliability === null) return `${notDetermined.reliability ?? "not determined"}.`;
  const { inTolerance, of, rate, low, high } = reliability;
  return (
    `${inTolerance} of ${of} (${percent(rate)}); the rate behind it lies between ${percent(low)} and ${percent(high)} ` +
    "with 95 % confidence (Clopper and Pearson, two-sided)."
  );
}

function percent(part: number): string {
  return `${writePlain(Number((100 * part).toPrecision(3)))} %`;
}

/** How the staircase came to its step, sentence by sentence. */
export function staircaseWorking({ staircase, settings }: OverTheYears): readonly string[] {
  if (staircase === null) return [];
  const { from, isStated, days, asFound, partOfTolerance, factor, months } = staircase;
  const part =
    partOfTolerance === null
      ? ""
      : `; the mean error that took up the most of its tolerance took up ${percent(partOfTolerance)} of it`;
  const caps = `held between ${settings.leastMonths} and ${settings.mostMonths} months`;
  return [
    isStated
      ? `The interval as stated is ${monthsWords(from)}; ${counted(days, "day")} had passed.`
      : `No interval is stated; the ${counted(days, "day")} that had passed ${days === 1 ? "counts" : "count"} as ${monthsWords(from)}.`,
    `As found: ${asFound}${part}.${rowWords(staircase, settings)}`,
    `${reasonWords(staircase.reason, settings)} ${factor === 1 ? `It stays ${monthsWords(months)}.` : `${from} × ${writePlain(factor)} = ${writePlain(from * factor)}: ${monthsWords(months)}, rounded down and ${caps}.`}`,
  ];
}

/** How many results in a row speak for a longer interval, where any does. */
function rowWords(
  { wellInside = 0 }: NonNullable<OverTheYears["staircase"]>,
  { extendAfter = 1 }: OverTheYears["settings"],
): string {
  if (wellInside === 0 || extendAfter === 1) return "";
  const lay = wellInside === 1 ? "1 result in a row lies" : `${wellInside} results in a row lie`;
  return ` ${lay} well inside after a whole interval; a longer one asks for ${extendAfter}.`;
}

function reasonWords(
  reason: NonNullable<OverTheYears["staircase"]>["reason"],
  { extendWithin, fullInterval }: OverTheYears["settings"],
): string {
  const within = `${percent(extendWithin)} of the tolerance`;
  switch (reason) {
    case "well inside":
      return `Every mean error lay within ${within}: the interval may be longer.`;
    case "well inside, not often enough":
      return `Every mean error lay within ${within}, but not often enough in a row.`;
    case "inside, but not well":
      return `In tolerance, but not every mean error lay within ${within}.`;
    case "only just accepted":
      return "Only just accepted: a shorter interval.";
    case "out of tolerance":
      return "Out of tolerance: a shorter interval.";
    case "calibrated early":
      return `Less than ${percent(fullInterval)} of the interval had passed, which does not speak for a longer one.`;
    case "no test point judged":
      return "No test point was judged, so nothing speaks for a longer one.";
  }
}

/** How the control chart came to its interval, sentence by sentence. */
export function controlChartWorking(years: OverTheYears, unit: string): readonly string[] {
  const { controlChart, settings } = years;
  const place = leadingPlaceOf(years);
  if (controlChart === null || place === undefined || place.drift === null) return [];
  const { residualStdDev, degreesOfFreedom: ofPlace, scatter: pooled } = place.drift;
  const { standardDeviation, degreesOfFreedom } = pooled ?? {
    standardDeviation: residualStdDev,
    degreesOfFreedom: ofPlace,
  };
  const digits = decimalsForSignificant((place.toleranceHigh - place.toleranceLow) / 2, 3);
  const scatter = `${writePlain(Number(standardDeviation.toPrecision(2)))} ${unit}`;
  const freedom = writePlain(Number(degreesOfFreedom.toPrecision(2)));
  return [
    `${sentenceCase(placeWords(place, unit))}: drift ${driftWords(place.drift)} ${unit} a year, scatter about the line ${scatter} ` +
      `(${pooled === undefined ? "" : "pooled over the test points, "}${freedom} ${freedom === "1" ? "degree" : "degrees"} of freedom).`,
    ...(place.isEarly ? ["Three records are early for a forecast: they tell little of the scatter."] : []),
    predictedWords(years, unit, digits),
    ...(controlChart.cap === "longest" ? [`${settings.mostMonths} months is the longest that is proposed.`] : []),
  ];
}

function predictedWords({ controlChart, ...years }: OverTheYears, unit: string, digits: number): string {
  const place = leadingPlaceOf({ controlChart, ...years });
  if (controlChart?.predicted == null || place === undefined) {
    return "The band meets a limit before a month has passed: no interval follows from it.";
  }
  const { low, high } = controlChart.predicted;
  const [from, to] = [low, high].map((value) => writeSigned(value, digits));
  const limits = [place.toleranceLow, place.toleranceHigh].map((value) => writeSigned(value, digits)).join(" to ");
  return `On ${controlChart.on} a result between ${from} and ${to} ${unit} is expected; the limits are ${limits} ${unit}.`;
}

export function monthsWords(months: number): string {
  return months === 1 ? "1 month" : `${writeFixed(months, 0)} months`;
}

/** What a method proposes, on one line: "15 months, until 2025-06-04". */
export function proposalWords(proposal: { months: number; on: string | null } | null, why: string | undefined): string {
  if (proposal === null) return why ?? "not determined";
  return proposal.on === null ? "none" : `${monthsWords(proposal.months)}, until ${proposal.on}`;
}
