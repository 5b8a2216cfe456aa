import { isDetermined } from "../../analysis/figures/figure.ts";
import { loopOf } from "../../analysis/readings/loop.ts";
import { pointAt, worstPoint } from "../../analysis/readings/place-in-range.ts";
import { toleranceAt } from "../../analysis/readings/tolerance.ts";
import { changeBetween } from "../../analysis/years/change-between.ts";
import { isAdjusted } from "../../analysis/years/dated-states.ts";
import { dateOf } from "../../analysis/years/day-number.ts";
import { driftBand } from "../../analysis/years/drift-band.ts";
import type { DriftLine } from "../../analysis/years/drift-line.ts";
import { lineEndDrifts } from "../../analysis/years/line-end-drift.ts";
import { loopDrift } from "../../analysis/years/loop-drift.ts";
import { type PlaceDrift, sinceAdjustment } from "../../analysis/years/place-drift.ts";
import { type Dated, recordsOfOneLoop } from "../../analysis/years/records-of-one-loop.ts";
import type { Instrument } from "../../model/instrument.ts";
import { spanOf } from "../../model/range.ts";
import type { OverTheYears, PlaceOverTheYears, RecordOverTheYears } from "../../record/over-the-years-schema.ts";
import type { PhaseSummary, RecordSummary } from "../../record/record-summary-schema.ts";
import { type IntervalSettings, usualIntervalSettings } from "../../verdict/intervals/interval-settings.ts";
import { proposedIntervals } from "../../verdict/intervals/proposed-intervals.ts";
import { orNull, type Reasons } from "../phase/assemble-figures.ts";

/** What is known of one filed record of the tag. */
export type YearRecord = Omit<RecordSummary, "tag" | "sha256" | "nextDue">;
type DatedSummary = Dated<YearRecord>;

export type OverTheYearsOptions = {
  /** Whole months between calibrations, as stated for the loop now. */
  intervalMonths?: number | undefined;
  /** The row of the last record: what is allowed at the ends of the range; without it nothing is said of the ends. */
  instrument?: Instrument | undefined;
  settings?: IntervalSettings | undefined;
};

/**
 * A loop over its filed records: how its error moved between adjustments, when it is expected to meet a limit, which
 * intervals follow by ILAC-G24, how often it was found in tolerance.
 *
 * @param all records of one tag, the last revision of each; any order, but for those of one day; distances in the unit of
 *   the last one
 * @param options stated interval, the instrument's row, other settings for the proposals
 * @returns figures at full precision; undefined where no record has a day
 * Source: ILAC-G24:2022 / OIML D 10; `loopDrift`, `changeBetween`, `proposedIntervals`.
 * @example overTheYears([recordSummary(sealed)])?.places[0].notDetermined.drift //
 *   "not enough: one record since the last adjustment"
 */
export function overTheYears(
  all: readonly YearRecord[],
  { intervalMonths, instrument, settings = usualIntervalSettings }: OverTheYearsOptions = {},
): OverTheYears | undefined {
  const { records, leftOut } = recordsOfOneLoop(all);
  const last = records.at(-1);
  if (last === undefined) return undefined;
  const { points, leading } = loopDrift(records, last);
  const place = isDetermined(leading) ? points[leading.index] : undefined;
  const { reliability, staircase, controlChart } = proposedIntervals(records, place, { intervalMonths, settings });
  const reasons: Reasons = {};
  return {
    records: records.map((record, index) => rowOf(records[index - 1], record, place?.distance)),
    leftOut: [...leftOut],
    leading: isDetermined(leading) ? leading.index : null,
    places: [...points.map((point) => placeOf("test point", point)), ...lineEndsOf(records, last, instrument)],
    band: bandOf(place, last.day),
    reliability: orNull("reliability", reliability, reasons),
    staircase: orNull("staircase", staircase, reasons),
    controlChart: orNull("controlChart", controlChart, reasons),
    notDetermined: reasons,
    settings,
  };
}

/** The fitted line is the sensor's, which says nothing of what the controller shows. */
function lineEndsOf(
  records: readonly DatedSummary[],
  last: DatedSummary,
  instrument: Instrument | undefined,
): PlaceOverTheYears[] {
  if (last.pointsOf === "controller" || instrument === undefined) return [];
  const kinds = ["line at the lower end", "line at the upper end"] as const;
  const { toleranceTerms, characteristics } = loopOf(instrument);
  const limitsAt = (distance: number) => toleranceAt(toleranceTerms, characteristics.signal, distance);
  return lineEndDrifts(sinceAdjustment(records), last, limitsAt).map((end, index) =>
    placeOf(kinds[index] ?? kinds[1], end),
  );
}

function placeOf(kind: PlaceOverTheYears["kind"], place: PlaceDrift): PlaceOverTheYears {
  const { distance, limits, errors, line, meets } = place;
  const reasons: Reasons = {};
  const drift = orNull("drift", line, reasons);
  const crossing = drift && orNull("meets", meets, reasons);
  return {
    ...{ kind, distance, toleranceLow: limits.low, toleranceHigh: limits.high, records: errors.length },
    drift: drift && driftRecord(drift),
    meets: crossing && { on: dateOf(crossing.day), limit: crossing.limit, isAlready: crossing.isAlready },
    ...(drift?.isEarly && { isEarly: true }),
    notDetermined: reasons,
  };
}

function driftRecord({ perYear, own, scatter }: DriftLine): NonNullable<PlaceOverTheYears["drift"]> {
  const { value, low, high } = perYear;
  return {
    ...{ perYear: value, low, high },
    ...{ residualStdDev: own.standardDeviation, degreesOfFreedom: own.degreesOfFreedom },
    scatter: { ...scatter },
  };
}

function bandOf(place: PlaceDrift | undefined, lastDay: number): OverTheYears["band"] {
  if (place === undefined || !isDetermined(place.line)) return [];
  const crossing = isDetermined(place.meets) ? place.meets : undefined;
  return driftBand(place.line, crossing, lastDay).map(({ day, ...band }) => ({ on: dateOf(day), ...band }));
}

function rowOf(
  before: DatedSummary | undefined,
  record: DatedSummary,
  distance: number | undefined,
): RecordOverTheYears {
  return {
    calibration: record.calibration,
    revision: record.revision,
    performedOn: record.performedOn,
    adjustment: record.adjustment,
    isAdjusted: isAdjusted(record),
    asFound: stateOf(record, record.asFound, distance),
    asLeft: stateOf(record, record.asLeft, distance),
    change: before === undefined || distance === undefined ? null : changeOf(before, record, distance),
  };
}

function stateOf(
  record: DatedSummary,
  phase: PhaseSummary | null,
  distance: number | undefined,
): RecordOverTheYears["asFound"] {
  if (phase === null) return null;
  const point = distance === undefined ? undefined : pointAt(phase.points, distance, spanOf(record));
  return {
    statement: phase.statement,
    point: point === undefined ? null : figuresOf(point),
    worst: worstOf(phase),
  };
}

type State = NonNullable<RecordOverTheYears["asFound"]>;

function figuresOf(point: NonNullable<State["point"]>): NonNullable<State["point"]> {
  const { errorDistance, expandedUncertainty, toleranceLow, toleranceHigh } = point;
  return { errorDistance, expandedUncertainty, toleranceLow, toleranceHigh };
}

/** Infinity, where a side of the tolerance allows nothing, cannot be written. */
function worstOf({ points }: PhaseSummary): State["worst"] {
  const worst = worstPoint(points);
  if (worst === undefined) return null;
  const { point, part } = worst;
  return { point: point.point, ...figuresOf(point), partOfTolerance: Number.isFinite(part) ? part : null };
}

function changeOf(before: DatedSummary, record: DatedSummary, distance: number): RecordOverTheYears["change"] {
  const change = changeBetween(before, record, distance, spanOf(record));
  if (change === undefined) return null;
  const { errorDistance, expandedUncertainty, sameStandards, perYear } = change;
  return { errorDistance, expandedUncertainty, sameStandards: [...sameStandards], perYear };
}
