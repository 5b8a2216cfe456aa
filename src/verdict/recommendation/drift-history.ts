import { pointAt } from "../../analysis/readings/place-in-range.ts";
import { type DatedRecord, leftState } from "../../analysis/years/dated-states.ts";
import { yearsBetween } from "../../analysis/years/day-number.ts";

// How a loop drifted from record to record: from what one left to what the next found, at the same test point.

/** A judged test point, as much of it as a drift needs; distance. */
export type DriftPoint = { point: number; errorDistance: number; expandedUncertainty: number };

/** One calibration of the loop; a phase that was not measured is null. */
export type DriftState = Omit<DatedRecord<readonly DriftPoint[]>, "day"> & {
  calibration: string;
  performedOn: string | null;
};

/** The drift between two calibrations at one test point, later minus earlier; years null where a day is missing. */
export type DriftInterval = {
  from: string;
  to: string;
  /** What was done at the start of it. */
  adjustment: string | null;
  point: number;
  drift: number;
  uncertainty: number;
  years: number | null;
};

/** What the history says for or against teaching once more. */
export type DriftFindings = {
  /** How many earlier records there are; null where no history was given. */
  earlier: number | null;
  /** The last two intervals at most, older first. */
  intervals: readonly DriftInterval[];
  /** Taught anew before each of the last two intervals, and drifted the same way in both, beyond what U explains. */
  isTaughtTwice: boolean;
  /** How many times as fast the drift of the last interval is; null where two do not show it. */
  growth: number | null;
  /** The errors are those of what the controller showed, not of the sensor alone. */
  isOfWholeLoop: boolean;
};

/**
 * The drift of a loop over its last two intervals, at the test point that moved most since the last calibration.
 *
 * What an interval starts from is what its calibration left (`leftState`): a loop that was adjusted and not read again
 * starts none. A drift counts where it is beyond the root sum of squares of both U.
 *
 * @param earlier calibrations, oldest first; undefined where no history was given
 * @param current the calibration at hand; its as-found readings end the last interval
 * @param span of the range, distance: where test points are the same, `pointAt`
 * @param isOfWholeLoop whether the errors are those of what the controller showed
 * @returns intervals, and what they say of teaching once more
 * Source: own choice; as-found minus as-left of the record before, as ILAC-G24:2022 takes drift.
 * @example driftHistory(undefined, { calibration: "C-1", performedOn: null, asFound: [], asLeft: null, adjustment: null
 *   }, 1000, false).earlier // null
 */
export function driftHistory(
  earlier: readonly DriftState[] | undefined,
  current: DriftState,
  span: number,
  isOfWholeLoop: boolean,
): DriftFindings {
  if (earlier === undefined) {
    return { earlier: null, intervals: [], isTaughtTwice: false, growth: null, isOfWholeLoop };
  }
  const states = [...earlier.slice(-2), current];
  const point = pointThatMoved(states, span);
  const intervals =
    point === undefined
      ? []
      : states.slice(1).flatMap((to, index) => intervalOf(states[index] as DriftState, to, point, span));
  return { earlier: earlier.length, intervals, ...twoIntervals(intervals), isOfWholeLoop };
}

/** Among the points that every calibration left, as far as that is known: the one that moved most in the last interval. */
function pointThatMoved(states: readonly DriftState[], span: number): number | undefined {
  const left = states.slice(0, -1).map((state) => leftState(state) ?? []);
  const [start, found] = [left.at(-1) ?? [], states.at(-1)?.asFound ?? []];
  const isEverywhere = (point: number) =>
    left.every((points) => points.length === 0 || pointAt(points, point, span) !== undefined);
  const moved = found.flatMap(({ point, errorDistance }) => {
    const before = pointAt(start, point, span);
    if (before === undefined || !isEverywhere(point)) return [];
    return [{ point, by: Math.abs(errorDistance - before.errorDistance) }];
  });
  return moved.toSorted((one, other) => other.by - one.by)[0]?.point;
}

function intervalOf(from: DriftState, to: DriftState, point: number, span: number): DriftInterval[] {
  const start = pointAt(leftState(from) ?? [], point, span);
  const end = pointAt(to.asFound ?? [], point, span);
  if (start === undefined || end === undefined) return [];
  return [
    {
      from: from.calibration,
      to: to.calibration,
      adjustment: from.adjustment,
      point,
      drift: end.errorDistance - start.errorDistance,
      uncertainty: Math.hypot(start.expandedUncertainty, end.expandedUncertainty),
      years: yearsOf(from.performedOn, to.performedOn),
    },
  ];
}

/** Two records of one day give no rate. */
function yearsOf(from: string | null, to: string | null): number | null {
  const years = from === null || to === null ? 0 : yearsBetween(from, to);
  return years > 0 ? years : null;
}

function twoIntervals(intervals: readonly DriftInterval[]): Pick<DriftFindings, "isTaughtTwice" | "growth"> {
  const [before, last] = intervals;
  const isSameWay =
    before !== undefined && last !== undefined && counts(before) && counts(last) && before.drift * last.drift > 0;
  if (!isSameWay) return { isTaughtTwice: false, growth: null };
  const isTaughtTwice = before.adjustment === "re-teach" && last.adjustment === "re-teach";
  const growth =
    before.years === null || last.years === null ? null : last.drift / last.years / (before.drift / before.years);
  return { isTaughtTwice, growth };
}

function counts({ drift, uncertainty }: DriftInterval): boolean {
  return Math.abs(drift) > uncertainty;
}
