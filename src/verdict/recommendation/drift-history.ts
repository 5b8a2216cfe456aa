// How a loop drifted from record to record: from what one left to what the next found, at the same test point.

/** A judged test point, as much of it as a drift needs; distance. */
export type DriftPoint = { point: number; errorDistance: number; expandedUncertainty: number };

/** One calibration of the loop; a phase that was not measured is null. */
export type DriftState = {
  calibration: string;
  performedOn: string | null;
  adjustment: string | null;
  asFound: readonly DriftPoint[] | null;
  asLeft: readonly DriftPoint[] | null;
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

const daysInYear = 365.25;

/** Readings so near to one another are one test point, percent of span: as within one phase. */
const samePointWithin = 2;

/**
 * The drift of a loop over its last two intervals, at the test point that moved most since the last calibration.
 *
 * What an interval starts from is what its calibration left: the as-left readings, or the as-found ones where nothing was
 * adjusted. A drift counts where it is beyond the root sum of squares of both U.
 *
 * @param earlier calibrations, oldest first; undefined where no history was given
 * @param current the calibration at hand; its as-found readings end the last interval
 * @param span of the range, distance: test points within 2 % of it are the same
 * @param isOfWholeLoop whether the errors are those of what the controller showed
 * @returns intervals, and what they say of teaching once more
 * Source: own choice; as-found minus as-left of the record before, as ILAC-G24:2022 takes drift.
 * @example driftHistory(undefined, current, 1000, false).earlier // null
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
  const [first, middle] = earlier.slice(-2);
  const last = earlier.at(-1);
  const within = (samePointWithin / 100) * span;
  const point = last && pointThatMoved([first, middle], last, current, within);
  const intervals =
    point === undefined
      ? []
      : pairs([...earlier.slice(-2), current]).flatMap(([from, to]) => intervalOf(from, to, point, within));
  return { earlier: earlier.length, intervals, ...twoIntervals(intervals), isOfWholeLoop };
}

function pairs(states: readonly DriftState[]): (readonly [DriftState, DriftState])[] {
  return states.slice(1).map((to, index) => [states[index] as DriftState, to] as const);
}

function startOf({ asLeft, asFound }: DriftState): readonly DriftPoint[] {
  return asLeft ?? asFound ?? [];
}

/** Among the points that every state has: the one that moved most in the last interval. */
function pointThatMoved(
  before: readonly (DriftState | undefined)[],
  last: DriftState,
  current: DriftState,
  within: number,
): number | undefined {
  const isEverywhere = (point: number) =>
    before.every((state) => state === undefined || pointAt(startOf(state), point, within) !== undefined);
  const moved = (current.asFound ?? []).flatMap(({ point, errorDistance }) => {
    const start = pointAt(startOf(last), point, within);
    return start === undefined || !isEverywhere(point)
      ? []
      : [{ point, by: Math.abs(errorDistance - start.errorDistance) }];
  });
  return moved.toSorted((one, other) => other.by - one.by)[0]?.point;
}

/** The nearest test point, where there is one at that place. */
function pointAt(points: readonly DriftPoint[], place: number, within: number): DriftPoint | undefined {
  const off = ({ point }: DriftPoint) => Math.abs(point - place);
  const [nearest] = points.toSorted((one, other) => off(one) - off(other));
  return nearest !== undefined && off(nearest) <= within ? nearest : undefined;
}

function intervalOf(from: DriftState, to: DriftState, point: number, within: number): DriftInterval[] {
  const start = pointAt(startOf(from), point, within);
  const end = pointAt(to.asFound ?? [], point, within);
  if (start === undefined || end === undefined) return [];
  return [
    {
      from: from.calibration,
      to: to.calibration,
      adjustment: from.adjustment,
      point,
      drift: end.errorDistance - start.errorDistance,
      uncertainty: Math.hypot(start.expandedUncertainty, end.expandedUncertainty),
      years: yearsBetween(from.performedOn, to.performedOn),
    },
  ];
}

function yearsBetween(from: string | null, to: string | null): number | null {
  if (from === null || to === null) return null;
  const days = (Date.parse(to) - Date.parse(from)) / 86_400_000;
  return days > 0 ? days / daysInYear : null;
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
