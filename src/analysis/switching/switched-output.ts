import type { TripDirection } from "../../model/calibration-words.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { mean } from "../../numeric/mean.ts";
import { sampleStandardDeviation } from "../../numeric/sample-standard-deviation.ts";
import { type Figure, isDetermined, notDetermined } from "../figures/figure.ts";

/** One change of state; distances in the instrument's unit. */
export type OutputTrip = { direction: TripDirection; cycle?: number | undefined; reference: number };

/** The distances of one direction over the cycles. */
export type TripMean = {
  mean: number;
  least: number;
  greatest: number;
  count: number;
  standardDeviation: Figure<number>;
};

/** A length along the axis, and what part of the operating distance it is. */
export type TravelFigure = { distance: number; percent: number };

/** A run, out or back, in which the output changed more than once. */
export type ChatteringRun = { direction: TripDirection; cycle: number; transitions: number };

export type SwitchedOutput = {
  /** For each trip, in the order given: whether it is in the means. */
  isCounted: readonly boolean[];
  operating: Figure<TripMean>;
  release: Figure<TripMean>;
  differential: Figure<TravelFigure & { greatestOfOneCycle: Figure<{ distance: number; cycle: number }> }>;
  repeat: Figure<TravelFigure>;
  chatter: Figure<readonly ChatteringRun[]>;
};

/**
 * What one switched output did in one phase: where it operates and releases, how far these lie apart, how they repeat.
 *
 * Operating distance = mean on approach; release distance = mean on recede; differential travel = |release − operating|;
 * repeat accuracy = greatest − least operating distance over the cycles; both also in percent of the operating
 * distance. Of a run with more than one transition the first counts in the means (own choice), and all are chatter.
 *
 * @param trips of one output and phase in the order in which they were taken, distances in one unit
 * @returns distances in that unit, percent of the operating distance, all of them 0 or above but the means; or the reason
 *   why there is none
 * Source: IEC 60947-5-2 (differential travel, repeat accuracy; there over eight hours, here over the cycles, from memory).
 * @example switchedOutput([{ direction: "approach", cycle: 1, reference: 100 },
 *   { direction: "recede", cycle: 1, reference: 104 }, { direction: "approach", cycle: 2, reference: 101 },
 *   { direction: "recede", cycle: 2, reference: 107 }]).differential.distance // 5
 */
export function switchedOutput(trips: readonly OutputTrip[]): SwitchedOutput {
  const isCounted = trips.map((trip, index) => isFirstOfRun(trips, trip, index));
  const counted = trips.filter((_, index) => isCounted[index]);
  const operating = tripMean(counted, "approach");
  const release = tripMean(counted, "recede");
  return {
    isCounted,
    operating,
    release,
    differential: differential(counted, operating, release),
    repeat: repeat(operating),
    chatter: chatter(trips),
  };
}

function isSameRun(one: OutputTrip, other: OutputTrip): boolean {
  return one.cycle !== undefined && one.cycle === other.cycle && one.direction === other.direction;
}

/** A trip without a cycle is a run of its own. */
function isFirstOfRun(trips: readonly OutputTrip[], trip: OutputTrip, index: number): boolean {
  return !trips.slice(0, index).some((earlier) => isSameRun(earlier, trip));
}

function tripMean(counted: readonly OutputTrip[], direction: TripDirection): Figure<TripMean> {
  const distances = counted.filter((trip) => trip.direction === direction).map(({ reference }) => reference);
  if (distances.length === 0) return notDetermined(`no trip on ${direction} was recorded`);
  return {
    mean: mean(distances),
    least: leastOf(distances),
    greatest: greatestOf(distances),
    count: distances.length,
    standardDeviation:
      distances.length < 2 ? notDetermined(`one trip on ${direction} only`) : sampleStandardDeviation(distances),
  };
}

function differential(
  counted: readonly OutputTrip[],
  operating: Figure<TripMean>,
  release: Figure<TripMean>,
): SwitchedOutput["differential"] {
  if (!isDetermined(operating)) return operating;
  if (!isDetermined(release)) return release;
  const travel = travelFigure(Math.abs(release.mean - operating.mean), operating.mean);
  return isDetermined(travel) ? { ...travel, greatestOfOneCycle: greatestOfOneCycle(counted) } : travel;
}

function greatestOfOneCycle(counted: readonly OutputTrip[]): Figure<{ distance: number; cycle: number }> {
  const pairs = counted.flatMap(({ direction, cycle, reference }) => {
    if (direction !== "approach" || cycle === undefined) return [];
    const back = counted.find((trip) => trip.direction === "recede" && trip.cycle === cycle);
    return back === undefined ? [] : [{ distance: Math.abs(back.reference - reference), cycle }];
  });
  const [first, ...others] = pairs;
  if (first === undefined) return notDetermined("no cycle holds an approach and a recede");
  return others.reduce((worst, pair) => (pair.distance > worst.distance ? pair : worst), first);
}

function repeat(operating: Figure<TripMean>): Figure<TravelFigure> {
  if (!isDetermined(operating)) return operating;
  if (operating.count < 2) return notDetermined("one approach only");
  return travelFigure(operating.greatest - operating.least, operating.mean);
}

function travelFigure(distance: number, operatingDistance: number): Figure<TravelFigure> {
  if (operatingDistance === 0)
    return notDetermined("the operating distance is zero, and nothing is a percentage of it");
  return { distance, percent: (100 * distance) / Math.abs(operatingDistance) };
}

function chatter(trips: readonly OutputTrip[]): SwitchedOutput["chatter"] {
  if (trips.length === 0) return notDetermined("no trip was recorded");
  if (trips.some(({ cycle }) => cycle === undefined)) return notDetermined("not every trip names its cycle");
  return trips
    .filter((trip, index) => isFirstOfRun(trips, trip, index))
    .map(({ direction, cycle = 0 }) => ({
      direction,
      cycle,
      transitions: trips.filter((trip) => trip.direction === direction && trip.cycle === cycle).length,
    }))
    .filter(({ transitions }) => transitions > 1);
}
