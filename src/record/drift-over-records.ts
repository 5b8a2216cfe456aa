import { dayNumber, isoDay } from "../analysis/day-number.ts";
import { isDetermined } from "../analysis/figure.ts";
import { type HistoryState, historySeries, type PointSeries } from "../analysis/history-series.ts";
import { type DatedError, driftForecast, type PointDrift, pointDrift } from "../analysis/point-drift.ts";
import { clopperPearson } from "../numeric/clopper-pearson.ts";
import type { DriftPointRecord, DriftRecord, DriftResult } from "./drift-schema.ts";
import type { RecordSummary } from "./record-summary-schema.ts";

/** As much of a record as its drift needs. */
export type DriftingRecord = Omit<RecordSummary, "sha256">;

/**
 * How a loop drifted over its records: results at each test point, drift and forecast since the last adjustment, and how
 * often it was found in tolerance.
 *
 * The error of a test point is the one that was judged, of the worse direction. A record of another range or unit is
 * another loop: it and all before it are left out.
 *
 * @param records of one tag, oldest first, the latest revision of each, at least one
 * @returns the answer is the test point whose forecast meets a limit first; where none does, the one that drifts most;
 *   where nothing is fitted, the one that used up most of its tolerance last
 * @throws RangeError where there is no record
 * Source: `historySeries`, `pointDrift`, `clopperPearson`; which point answers is own choice.
 * @example driftOverRecords([summary]).points[0].notDetermined.drift // "not enough: one record"
 */
export function driftOverRecords(records: readonly DriftingRecord[]): DriftRecord {
  const last = records.at(-1);
  if (last === undefined) throw new RangeError("driftOverRecords: requires a record");
  const begin = records.findLastIndex((record) => !isSameLoop(record, last)) + 1;
  const loop = records.slice(begin);
  const points = historySeries(loop.map(stateOf), last.rangeUpper - last.rangeLower)
    .filter(({ results }) => results.length > 0)
    .map((series) => driftPoint(series, loop));
  const answer = answerOf(points);
  return {
    points,
    answer: answer === -1 ? null : answer,
    forecast: [...forecastOf(points[answer])],
    worst: worstResults(points),
    breaks: loop
      .filter(isBreak)
      .map(({ calibration, performedOn, adjustment }) => ({ calibration, performedOn, adjustment })),
    reliability: reliabilityOf(loop),
    anotherLoop: begin,
    withoutDay: loop.filter(({ performedOn }) => performedOn === null).length,
  };
}

function isSameLoop(one: DriftingRecord, other: DriftingRecord): boolean {
  return (["distanceUnit", "rangeLower", "rangeUpper"] as const).every((name) => one[name] === other[name]);
}

function stateOf(record: DriftingRecord): HistoryState {
  const { calibration, performedOn, asFound, asLeft } = record;
  return {
    calibration,
    performedOn,
    isAdjusted: isBreak(record),
    asFound: asFound?.points ?? null,
    asLeft: asLeft?.points ?? null,
  };
}

/** Whoever measured what was left, and did not say that nothing was adjusted, adjusted something. */
function isBreak({ adjustment, asFound, asLeft }: DriftingRecord): boolean {
  return adjustment === null ? asFound !== null && asLeft !== null : adjustment !== "none";
}

function driftPoint({ point, results }: PointSeries, loop: readonly DriftingRecord[]): DriftPointRecord {
  const { toleranceLow, toleranceHigh } = results.at(-1) as DriftResult;
  const fitted = results.filter(({ isFitted }) => isFitted);
  const fit = pointDrift(fitted, { low: toleranceLow, high: toleranceHigh });
  const isKnown = isDetermined(fit);
  return {
    point,
    toleranceLow,
    toleranceHigh,
    results: results.map((result) => ({
      calibration: result.calibration,
      performedOn: result.performedOn,
      phase: result.phase,
      stretch: result.stretch,
      isFitted: result.isFitted,
      point: result.point,
      errorDistance: result.errorDistance,
      expandedUncertainty: result.expandedUncertainty,
      toleranceLow: result.toleranceLow,
      toleranceHigh: result.toleranceHigh,
    })),
    fit: isKnown ? fit : null,
    notDetermined: isKnown ? {} : { drift: whyNot(fit.notDetermined, fitted, loop) },
  };
}

const counts = ["no record", "one record", "two records"];

/** A result a record since the last adjustment: the reader knows records. */
function whyNot(reason: string, fitted: readonly DatedError[], loop: readonly DriftingRecord[]): string {
  const count = counts[fitted.length];
  if (count === undefined) return reason;
  return `not enough: ${count}${loop.some(isBreak) ? " since the last adjustment" : ""}`;
}

function answerOf(points: readonly DriftPointRecord[]): number {
  const indices = [...points.keys()];
  const met = indices.filter((index) => points[index]?.fit?.meets);
  const dayAt = (index: number) => dayNumber(points[index]?.fit?.meets?.on ?? "");
  if (met.length > 0) return least(met, dayAt);
  const fitted = indices.filter((index) => points[index]?.fit);
  if (fitted.length > 0) return least(fitted, (index) => -Math.abs((points[index]?.fit as PointDrift).perYear));
  return least(indices, (index) => -(partOfTolerance(points[index]?.results.at(-1) as DriftResult) ?? 0));
}

/** The first of those that are least; −1 of none. */
function least(indices: readonly number[], sizeOf: (index: number) => number): number {
  return indices.toSorted((one, other) => sizeOf(one) - sizeOf(other))[0] ?? -1;
}

const forecastSteps = 24;

/** From the first fitted result as far ahead as its results reach back, or to the meeting where that is not far beyond. */
function forecastOf(point: DriftPointRecord | undefined): ReturnType<typeof driftForecast> {
  if (point === undefined || point.fit === null) return [];
  const { from, until, meets } = point.fit;
  const [first, last] = [dayNumber(from), dayNumber(until)];
  const reach = last - first;
  const meeting = meets === null ? undefined : dayNumber(meets.on);
  const isNear = meeting !== undefined && meeting <= last + 3 * reach;
  const end = Math.max(last + Math.ceil(reach / 2), isNear ? meeting + Math.ceil(reach / 4) : last + reach);
  const days = Array.from({ length: forecastSteps + 1 }, (_, step) =>
    Math.round(first + ((end - first) * step) / forecastSteps),
  );
  const all = new Set([...days, ...(isNear ? [meeting] : [])].toSorted((one, other) => one - other));
  return driftForecast(
    point.results.filter(({ isFitted }) => isFitted),
    [...all].map(isoDay),
  );
}

function worstResults(points: readonly DriftPointRecord[]): DriftRecord["worst"] {
  const worst = new Map<string, DriftRecord["worst"][number]>();
  for (const { results } of points) {
    for (const result of results) {
      const key = JSON.stringify([result.calibration, result.phase]);
      const part = partOfTolerance(result);
      const known = worst.get(key);
      if (known === undefined || (part ?? 0) > (known.partOfTolerance ?? 0))
        worst.set(key, { ...result, partOfTolerance: part });
    }
  }
  return [...worst.values()].sort((one, other) => orderOf(one) - orderOf(other));
}

/** By day; what was found before what was left. */
function orderOf({ performedOn, phase }: DriftResult): number {
  return dayNumber(performedOn) + (phase === "asLeft" ? 0.5 : 0);
}

function partOfTolerance({ errorDistance, toleranceLow, toleranceHigh }: DriftResult): number | null {
  const limit = errorDistance < 0 ? toleranceLow : toleranceHigh;
  return limit === 0 ? null : errorDistance / limit;
}

/** What cannot be decided was not found in tolerance. */
function reliabilityOf(loop: readonly DriftingRecord[]): DriftRecord["reliability"] {
  const statements = loop.flatMap(({ asFound }) => asFound?.statement ?? []);
  if (statements.length === 0) return null;
  const inTolerance = statements.filter((one) => one === "pass" || one === "conditional pass").length;
  return { inTolerance, of: statements.length, ...clopperPearson(inTolerance, statements.length) };
}
