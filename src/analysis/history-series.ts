// How the errors of a loop lie over its calibrations, and where an adjustment breaks their line.

/** The error that was judged at a test point of one calibration; distances. */
export type HistoryPoint = {
  point: number;
  errorDistance: number;
  expandedUncertainty: number;
  toleranceLow: number;
  toleranceHigh: number;
};

/** One calibration of the loop; a phase that was not measured is null. */
export type HistoryState = {
  calibration: string;
  /** ISO 8601 date; null where it is not stated. */
  performedOn: string | null;
  /** What was done between as found and as left breaks the line. */
  isAdjusted: boolean;
  asFound: readonly HistoryPoint[] | null;
  asLeft: readonly HistoryPoint[] | null;
};

/** One result at a test point, with its day. */
export type HistoryResult = HistoryPoint & {
  calibration: string;
  performedOn: string;
  phase: "asFound" | "asLeft";
  /** 0 up to the first adjustment, then counted on. */
  stretch: number;
  /** Belongs to the last stretch and says something that no other result of its record says. */
  isFitted: boolean;
};

export type PointSeries = { point: number; results: readonly HistoryResult[] };

/** Test points so near to one another are one, percent of span. */
const samePointWithin = 2;

/**
 * The results of a loop, test point by test point, in the order of time.
 *
 * An adjustment ends a stretch with what was found and begins the next with what was left. Without one, what was found is
 * also how the loop was left, so that as-left readings taken all the same are shown and not fitted.
 *
 * @param states calibrations of one loop in one unit, oldest first; those without a day are passed over, their breaks hold
 * @param span of the range, distance: test points within 2 % of it are the same
 * @returns a series for each test point of any calibration, by distance, named as the latest one names it
 * Source: own choice; ILAC-G24:2022, method 2, asks for the same points each time, and that an adjustment ends a series.
 * @example historySeries([found("2025-01-01", 50, 0.2), found("2026-01-01", 51, 0.3)], 100).length // 1
 */
export function historySeries(states: readonly HistoryState[], span: number): readonly PointSeries[] {
  const within = (samePointWithin / 100) * span;
  const phases = phasesInOrder(states);
  const lastStretch = states.filter(({ isAdjusted }) => isAdjusted).length;
  return pointsOf(phases, within).map((point) => ({
    point,
    results: phases.flatMap(({ points, isRepeat, ...rest }) => {
      const here = nearest(points, point, within);
      return here === undefined ? [] : [{ ...rest, ...here, isFitted: rest.stretch === lastStretch && !isRepeat }];
    }),
  }));
}

type PhaseInOrder = Pick<HistoryResult, "calibration" | "performedOn" | "phase" | "stretch"> & {
  points: readonly HistoryPoint[];
  isRepeat: boolean;
};

function phasesInOrder(states: readonly HistoryState[]): readonly PhaseInOrder[] {
  let stretch = 0;
  return states.flatMap(({ calibration, performedOn, isAdjusted, asFound, asLeft }) => {
    const before = stretch;
    if (isAdjusted) stretch += 1;
    if (performedOn === null) return [];
    const named = { calibration, performedOn };
    const isRepeat = !isAdjusted && asFound !== null;
    return [
      ...(asFound ? [{ ...named, phase: "asFound" as const, stretch: before, points: asFound, isRepeat: false }] : []),
      ...(asLeft ? [{ ...named, phase: "asLeft" as const, stretch, points: asLeft, isRepeat }] : []),
    ];
  });
}

/** The latest phase names the points; what only earlier ones have is added. */
function pointsOf(phases: readonly PhaseInOrder[], within: number): readonly number[] {
  const found: number[] = [];
  for (const { points } of phases.toReversed()) {
    for (const { point } of points) {
      if (!found.some((known) => Math.abs(known - point) <= within)) found.push(point);
    }
  }
  return found.toSorted((one, other) => one - other);
}

function nearest(points: readonly HistoryPoint[], place: number, within: number): HistoryPoint | undefined {
  const off = ({ point }: HistoryPoint) => Math.abs(point - place);
  const [closest] = points.toSorted((one, other) => off(one) - off(other));
  return closest !== undefined && off(closest) <= within ? closest : undefined;
}
