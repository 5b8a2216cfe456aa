import { type Range, spanOf } from "../../model/range.ts";
import type { PooledStandardDeviation } from "../../numeric/pooled-standard-deviation.ts";
import { type Figure, isDetermined, notDetermined } from "../figures/figure.ts";
import { hasTolerance, pointAt } from "../readings/place-in-range.ts";
import type { DatedRecord } from "./dated-states.ts";
import {
  type DriftPhase,
  type PlaceDrift,
  type PlaceErrors,
  type PlaceToFollow,
  placeDrift,
  placeErrors,
  type Since,
  sinceAdjustment,
} from "./place-drift.ts";
import { pooledScatter } from "./pooled-scatter.ts";

// The one drift of a loop: what register, history and recommendation say of it is read from here.

/** The drift at every test point, by distance; which of them speaks for the loop, or why none does. */
export type LoopDrift = { points: readonly PlaceDrift[]; leading: Figure<{ index: number }> };

/**
 * The drift of a loop: at each test point the least-squares line of the error on time since the last adjustment, from
 * what that left on and as found each time, with a scatter pooled over the test points that were read in the same
 * records; and the test point whose forecast meets a limit first, which speaks for the loop.
 *
 * Where no forecast meets a limit, or there is none, the test point that takes up the most of its tolerance now leads.
 *
 * @param records of one loop, oldest first
 * @param range of the instrument
 * @returns a place for each test point of the last state; nothing leads where no test point has a tolerance
 * Source: ILAC-G24:2022 / OIML D 10, 6.3; `driftLine`, `pooledScatter`, `limitCrossing`; that the test point whose
 *   forecast meets a limit first speaks for the loop is own choice: a loop is as good as its worst test point.
 * @example loopDrift([], { rangeLower: 0, rangeUpper: 100 }).leading.notDetermined // "no test point was judged"
 */
export function loopDrift<Phase extends DriftPhase>(records: readonly DatedRecord<Phase>[], range: Range): LoopDrift {
  const since = sinceAdjustment(records);
  const found = pointsToFollow(since, range).map((place) => placeErrors(place, since));
  const scatters = scattersOf(found);
  const points = found.map((place) => placeDrift(place, since.lastDay, scatters.get(place)));
  return { points, leading: leadingPoint(points) };
}

function pointsToFollow<Phase extends DriftPhase>(
  { newest }: Since<Phase>,
  range: Range,
): readonly PlaceToFollow<Phase>[] {
  return (newest?.points ?? [])
    .map(({ point, toleranceLow, toleranceHigh }) => ({
      distance: point,
      limits: { low: toleranceLow, high: toleranceHigh },
      errorIn: (phase: Phase) => pointAt(phase.points, point, spanOf(range))?.errorDistance,
    }))
    .sort((one, other) => one.distance - other.distance);
}

/** Test points that were read in the same records share what is known of their scatter. */
function scattersOf(places: readonly PlaceErrors[]): ReadonlyMap<PlaceErrors, PooledStandardDeviation> {
  const scatters = new Map<PlaceErrors, PooledStandardDeviation>();
  for (const days of new Set(places.map(daysOf))) {
    const fellows = places.flatMap((place) => {
      const { distance, fitted } = place;
      return isDetermined(fitted) && daysOf(place) === days ? [{ place, distance, residuals: fitted.residuals }] : [];
    });
    if (fellows.length === 0) continue;
    for (const [index, scatter] of pooledScatter(fellows).entries()) {
      scatters.set((fellows[index] as (typeof fellows)[number]).place, scatter);
    }
  }
  return scatters;
}

function daysOf({ errors }: PlaceErrors): string {
  return errors.map(({ day }) => day).join(" ");
}

function leadingPoint(points: readonly PlaceDrift[]): LoopDrift["leading"] {
  const ranked = points
    .map((place, index) => ({ index, place }))
    .filter(({ place: { limits } }) => hasTolerance({ toleranceLow: limits.low, toleranceHigh: limits.high }))
    .sort(
      ({ place: one }, { place: other }) =>
        dayOf(one) - dayOf(other) ||
        Number(isDetermined(other.line)) - Number(isDetermined(one.line)) ||
        other.partNow - one.partNow,
    );
  const [first] = ranked;
  return first === undefined ? notDetermined("no test point was judged") : { index: first.index };
}

/** No forecast comes after every day; a large number, for the difference of two infinities is none. */
function dayOf({ meets }: PlaceDrift): number {
  return isDetermined(meets) ? meets.day : Number.MAX_SAFE_INTEGER;
}
