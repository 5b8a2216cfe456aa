import { isDetermined } from "../../analysis/figures/figure.ts";
import { hasTolerance, partOfTolerance, pointAt, toleranceNear } from "../../analysis/readings/place-in-range.ts";
import { type DatedState, isAdjusted, statesSinceAdjustment } from "../../analysis/years/dated-states.ts";
import { dateOf, daysPerYear } from "../../analysis/years/day-number.ts";
import { type DriftLine, driftLine, predictedError } from "../../analysis/years/drift-line.ts";
import { horizonYears, type LimitCrossing, limitCrossing } from "../../analysis/years/limit-crossing.ts";
import type { OverTheYears, PlaceOverTheYears } from "../../record/over-the-years-schema.ts";
import type { PhaseSummary } from "../../record/record-summary-schema.ts";
import type { DatedSummary } from "./records-of-one-loop.ts";

/** One place of the range, with what its figures rest on. */
export type PlaceFigures = PlaceOverTheYears & {
  line: DriftLine | undefined;
  crossing: LimitCrossing | undefined;
  /** Part of the tolerance that its last error takes up. */
  partNow: number;
};

/** A place, and how its error and its tolerance are read off a phase. */
type Place = {
  kind: PlaceOverTheYears["kind"];
  distance: number;
  errorIn: (phase: PhaseSummary) => number | undefined;
  limits: { low: number; high: number };
};

/**
 * The drift at each place of the range: every test point of the last state, and both ends of the fitted line.
 *
 * @param records of one loop, at least one, oldest first
 * @returns places by distance, test points first; a drift that the records do not allow is null, with its reason
 * Source: `driftLine`, `limitCrossing`.
 * @example placesOf([{ ...recordSummary(sealed), day: 20000 }]).at(-1)?.kind // "line at the upper end"
 */
export function placesOf(records: readonly DatedSummary[]): readonly PlaceFigures[] {
  const states = statesSinceAdjustment(records);
  const last = records.at(-1);
  const newest = states.findLast(({ phase }) => phase.points.length > 0)?.phase ?? last?.asFound ?? last?.asLeft;
  if (last === undefined || newest === undefined || newest === null || newest.points.length === 0) return [];
  const isSinceAdjustment = records.some(isAdjusted);
  return placesToFollow(newest, last).map((place) => figuresAt(place, { states, last, isSinceAdjustment }));
}

function placesToFollow(
  { points }: PhaseSummary,
  { rangeLower, rangeUpper, pointsOf }: DatedSummary,
): readonly Place[] {
  const span = rangeUpper - rangeLower;
  const testPoints = points.map(
    ({ point, toleranceLow, toleranceHigh }): Place => ({
      kind: "test point",
      distance: point,
      errorIn: (phase) => pointAt(phase.points, point, span)?.errorDistance,
      limits: { low: toleranceLow, high: toleranceHigh },
    }),
  );
  const lineEnd = (
    kind: Place["kind"],
    distance: number,
    percentAt: (phase: PhaseSummary) => number | null,
  ): Place => ({
    kind,
    distance,
    errorIn: (phase) => {
      const percent = percentAt(phase);
      return percent === null ? undefined : (percent / 100) * span;
    },
    limits: toleranceNear(points, distance),
  });
  testPoints.sort((one, other) => one.distance - other.distance);
  // The fitted line is the sensor's, which says nothing of what the controller shows.
  if (pointsOf === "controller") return testPoints;
  return [
    ...testPoints,
    lineEnd("line at the lower end", rangeLower, ({ zeroError }) => zeroError),
    lineEnd("line at the upper end", rangeUpper, ({ zeroError, spanError }) =>
      zeroError === null || spanError === null ? null : zeroError + spanError,
    ),
  ];
}

type Since = { states: readonly DatedState<PhaseSummary>[]; last: DatedSummary; isSinceAdjustment: boolean };

function figuresAt(place: Place, { states, last, isSinceAdjustment }: Since): PlaceFigures {
  const { kind, distance, limits } = place;
  const errors = states.flatMap(({ day, phase }) => {
    const error = place.errorIn(phase);
    return error === undefined ? [] : [{ day, error }];
  });
  const line = driftLine(errors);
  const described = { kind, distance, toleranceLow: limits.low, toleranceHigh: limits.high, records: errors.length };
  const partNow = partOfTolerance(errors.at(-1)?.error ?? 0, limits.low, limits.high);
  if (!isDetermined(line)) {
    const notDetermined = { drift: `${line.notDetermined}${isSinceAdjustment ? " since the last adjustment" : ""}` };
    return { ...described, drift: null, meets: null, notDetermined, line: undefined, crossing: undefined, partNow };
  }
  if (!hasTolerance(described)) {
    const notDetermined = { meets: "there is no tolerance there" };
    return { ...described, ...driftAt(line), meets: null, notDetermined, line, crossing: undefined, partNow };
  }
  const crossing = limitCrossing(line, limits, last.day);
  return { ...described, ...driftAt(line), ...meetsAt(crossing), line, crossing, partNow };
}

function driftAt({ perYear, fit }: DriftLine): Pick<PlaceOverTheYears, "drift"> {
  const { value, low, high } = perYear;
  const { degreesOfFreedom, residualStdDev } = fit;
  if (residualStdDev === null) throw new RangeError("driftAt: two points leave no scatter");
  return { drift: { perYear: value, low, high, residualStdDev, degreesOfFreedom } };
}

function meetsAt(crossing: LimitCrossing | undefined): Pick<PlaceOverTheYears, "meets" | "notDetermined"> {
  if (crossing === undefined) return { meets: null, notDetermined: { meets: `not within ${horizonYears} years` } };
  const { day, limit, isAlready } = crossing;
  return { meets: { on: dateOf(day), limit, isAlready }, notDetermined: {} };
}

/**
 * The place that speaks for the loop: the test point whose forecast meets a limit first.
 *
 * @param places of `placesOf`
 * @returns its place in the list; where no forecast meets a limit, or none is determined, that of the test point that
 *   takes up the most of its tolerance now; null where there is no test point with a tolerance
 * Source: own choice: a loop is as good as its worst test point.
 * @example leadingPlace([]) // null
 */
export function leadingPlace(places: readonly PlaceFigures[]): number | null {
  const ranked = places
    .map((place, index) => ({ index, ...place }))
    .filter((place) => place.kind === "test point" && hasTolerance(place))
    .sort(
      (one, other) =>
        dayOf(one) - dayOf(other) ||
        Number(other.line !== undefined) - Number(one.line !== undefined) ||
        other.partNow - one.partNow,
    );
  return ranked[0]?.index ?? null;
}

/** No forecast comes after every day; a large number, for the difference of two infinities is none. */
function dayOf({ crossing }: PlaceFigures): number {
  return crossing?.day ?? Number.MAX_SAFE_INTEGER;
}

/** Steps; enough for a curve without corners. */
const bandSteps = 40;
/** A line over a few days is drawn as far ahead as one over so many: own choice. */
const fewestDaysDrawn = 30;

/**
 * The prediction band from the first day of the line to some time after it meets a limit, to draw it.
 *
 * @param line of `driftLine`
 * @param crossing of `limitCrossing`
 * @param lastDay of the last record
 * @returns 41 days, evenly; distance
 * Source: `predictedError`; how far it is drawn is own choice: at least a third of the recorded time, at most 20 years.
 * @example bandOf(driftLine([{ day: 0, error: 1 }, { day: 365.25, error: 3 }, { day: 730.5, error: 4 }, { day: 1095.75,
 *   error: 8 }]), undefined, 1096)[0]?.on // "1970-01-01"
 */
export function bandOf(line: DriftLine, crossing: LimitCrossing | undefined, lastDay: number): OverTheYears["band"] {
  const recorded = Math.max(lastDay - line.firstDay, fewestDaysDrawn);
  const end = crossing === undefined ? lastDay + recorded : Math.max(crossing.day, lastDay) + Math.ceil(recorded / 3);
  const stretch = Math.min(end, lastDay + Math.floor(horizonYears * daysPerYear)) - line.firstDay;
  return Array.from({ length: bandSteps + 1 }, (_, step) => {
    const day = line.firstDay + Math.round((stretch * step) / bandSteps);
    return { on: dateOf(day), ...predictedError(line, day) };
  });
}
