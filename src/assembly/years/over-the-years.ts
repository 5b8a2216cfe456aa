import { pointAt, worstPoint } from "../../analysis/readings/place-in-range.ts";
import { isAdjusted, leftState } from "../../analysis/years/dated-states.ts";
import { daysPerYear } from "../../analysis/years/day-number.ts";
import type { OverTheYears, RecordOverTheYears } from "../../record/over-the-years-schema.ts";
import type { PhaseSummary } from "../../record/record-summary-schema.ts";
import { type IntervalSettings, usualIntervalSettings } from "../../verdict/intervals/interval-settings.ts";
import { bandOf, leadingPlace, type PlaceFigures, placesOf } from "./places-over-the-years.ts";
import { proposedIntervals } from "./proposed-intervals.ts";
import { type DatedSummary, recordsOfOneLoop, type YearRecord } from "./records-of-one-loop.ts";

export type OverTheYearsOptions = {
  /** Whole months between calibrations, as stated for the loop now. */
  intervalMonths?: number | undefined;
  settings?: IntervalSettings | undefined;
};

/**
 * A loop over its filed records: how its error moved between adjustments, when it is expected to meet a limit, which
 * intervals follow by ILAC-G24, how often it was found in tolerance.
 *
 * @param all records of one tag, the last revision of each; any order, but for those of one day; distances in the unit of
 *   the last one
 * @param options stated interval, other settings for the proposals
 * @returns figures at full precision; undefined where no record has a day
 * Source: ILAC-G24:2022 / OIML D 10; that the test point whose forecast meets a limit first speaks for the loop is own
 *   choice.
 * @example overTheYears([recordSummary(sealed)])?.places[0].notDetermined.drift //
 *   "not enough: one record since the last adjustment"
 */
export function overTheYears(
  all: readonly YearRecord[],
  { intervalMonths, settings = usualIntervalSettings }: OverTheYearsOptions = {},
): OverTheYears | undefined {
  const { records, leftOut } = recordsOfOneLoop(all);
  const last = records.at(-1);
  if (last === undefined) return undefined;
  const places = placesOf(records);
  const leading = leadingPlace(places);
  const place = leading === null ? undefined : places[leading];
  return {
    records: rowsOf(records, place),
    leftOut: [...leftOut],
    leading,
    places: places.map(({ line: _, crossing: __, partNow: ___, ...figures }) => figures),
    band: place?.line === undefined ? [] : bandOf(place.line, place.crossing, last.day),
    ...proposedIntervals(records, place, { intervalMonths, settings }),
    settings,
  };
}

function rowsOf(records: readonly DatedSummary[], place: PlaceFigures | undefined): RecordOverTheYears[] {
  return records.map((record, index) => ({
    calibration: record.calibration,
    revision: record.revision,
    performedOn: record.performedOn,
    adjustment: record.adjustment,
    isAdjusted: isAdjusted(record),
    asFound: stateOf(record, record.asFound, place),
    asLeft: stateOf(record, record.asLeft, place),
    change: changeOf(records[index - 1], record, place),
  }));
}

function stateOf(
  record: DatedSummary,
  phase: PhaseSummary | null,
  place: PlaceFigures | undefined,
): RecordOverTheYears["asFound"] {
  if (phase === null) return null;
  const point = pointOf(record, phase, place);
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

function pointOf({ rangeLower, rangeUpper }: DatedSummary, phase: PhaseSummary | null, place?: PlaceFigures) {
  return phase === null || place === undefined
    ? undefined
    : pointAt(phase.points, place.distance, rangeUpper - rangeLower);
}

/** As found now minus as left before; U of a difference of two results, each with its own. */
function changeOf(
  before: DatedSummary | undefined,
  now: DatedSummary,
  place: PlaceFigures | undefined,
): RecordOverTheYears["change"] {
  const left = before && pointOf(before, leftState(before), place);
  const found = pointOf(now, now.asFound, place);
  if (before === undefined || left === undefined || found === undefined) return null;
  const errorDistance = found.errorDistance - left.errorDistance;
  const years = (now.day - before.day) / daysPerYear;
  return {
    errorDistance,
    expandedUncertainty: Math.hypot(left.expandedUncertainty, found.expandedUncertainty),
    perYear: years > 0 ? errorDistance / years : null,
  };
}
