import type { PooledStandardDeviation } from "../../numeric/pooled-standard-deviation.ts";
import { type Figure, isDetermined, notDetermined } from "../figures/figure.ts";
import { hasTolerance, type PlacePoint, partOfTolerance } from "../readings/place-in-range.ts";
import { type DatedRecord, type DatedState, isAdjusted, statesSinceAdjustment } from "./dated-states.ts";
import { type DatedError, type DriftLine, driftWithScatter, type FittedDrift, fitDrift } from "./drift-line.ts";
import { horizonYears, type LimitCrossing, limitCrossing } from "./limit-crossing.ts";

/** A test point of one phase, as much of it as a drift needs; distance. */
export type DriftPoint = Pick<PlacePoint, "point" | "errorDistance" | "toleranceLow" | "toleranceHigh">;
export type DriftPhase = { points: readonly DriftPoint[] };

/** A place, and how its error is read off a phase. */
export type PlaceToFollow<Phase> = {
  distance: number;
  limits: { low: number; high: number };
  errorIn: (phase: Phase) => number | undefined;
};

/** The drift at one place of the range, distance. */
export type PlaceDrift = {
  distance: number;
  limits: { low: number; high: number };
  /** Since the last adjustment, oldest first; one for each record that was read there. */
  errors: readonly DatedError[];
  line: Figure<DriftLine>;
  /** When the 95 % prediction band meets a limit. */
  meets: Figure<LimitCrossing>;
  /** Part of the tolerance that the last error takes up. */
  partNow: number;
};

/** The stretch of a loop's history in which its errors lie on one line. */
export type Since<Phase> = {
  states: readonly DatedState<Phase>[];
  /** The phase whose test points are followed: the last one that has any, or the last of all. */
  newest: Phase | undefined;
  lastDay: number;
  wasAdjusted: boolean;
};

/**
 * The states since the last adjustment: what it left, then as found each time.
 *
 * @param records of one loop, oldest first
 * @returns states, the phase whose test points are followed, and the day of the last record
 * Source: `statesSinceAdjustment`.
 * @example sinceAdjustment([]).states // []
 */
export function sinceAdjustment<Phase extends DriftPhase>(records: readonly DatedRecord<Phase>[]): Since<Phase> {
  const states = statesSinceAdjustment(records);
  const last = records.at(-1);
  return {
    states,
    newest:
      states.findLast(({ phase }) => phase.points.length > 0)?.phase ?? last?.asFound ?? last?.asLeft ?? undefined,
    lastDay: last?.day ?? 0,
    wasAdjusted: records.some(isAdjusted),
  };
}

/** What was found at one place since the last adjustment, and the line through it. */
export type PlaceErrors = Pick<PlaceDrift, "distance" | "limits" | "errors"> & { fitted: Figure<FittedDrift> };

/**
 * The errors at one place of the range, and their line.
 *
 * @param place and how its error is read off a phase
 * @param since states since the last adjustment
 * @returns errors and line, or why there is none
 * Source: `fitDrift`.
 * @example placeErrors({ distance: 5, limits: { low: -1, high: 1 }, errorIn: () => 0 }, sinceAdjustment([])).fitted.notDetermined
 *   // "not enough: no record"
 */
export function placeErrors<Phase>(
  { distance, limits, errorIn }: PlaceToFollow<Phase>,
  { states, wasAdjusted }: Since<Phase>,
): PlaceErrors {
  const errors = states.flatMap(({ day, phase }) => {
    const error = errorIn(phase);
    return error === undefined ? [] : [{ day, error }];
  });
  const found = fitDrift(errors);
  const fitted = isDetermined(found)
    ? found
    : notDetermined(`${found.notDetermined}${wasAdjusted ? " since the last adjustment" : ""}`);
  return { distance, limits, errors, fitted };
}

/**
 * The drift at one place of the range, and when its forecast meets a limit.
 *
 * @param place of `placeErrors`
 * @param lastDay of the last record, from which the band is followed
 * @param scatter of `pooledScatter`; that of the place's own errors where left out
 * @returns line and forecast, or why there is none
 * Source: `driftWithScatter`, `limitCrossing`.
 * @example placeDrift({ distance: 5, limits: { low: -10, high: 10 }, errors: fourErrors, fitted: fitDrift(fourErrors) },
 *   1096).meets // { day: 1096, limit: "upper", isAlready: true }
 */
export function placeDrift(
  { fitted, ...place }: PlaceErrors,
  lastDay: number,
  scatter?: PooledStandardDeviation,
): PlaceDrift {
  const { limits, errors } = place;
  const line = isDetermined(fitted) ? driftWithScatter(fitted, scatter ?? fitted.own) : fitted;
  const partNow = partOfTolerance(errors.at(-1)?.error ?? 0, limits.low, limits.high);
  return { ...place, line, meets: meetsOf(line, limits, lastDay), partNow };
}

function meetsOf(line: Figure<DriftLine>, limits: PlaceDrift["limits"], lastDay: number): PlaceDrift["meets"] {
  if (!isDetermined(line)) return line;
  if (!hasTolerance({ toleranceLow: limits.low, toleranceHigh: limits.high })) {
    return notDetermined("there is no tolerance there");
  }
  return limitCrossing(line, limits, lastDay) ?? notDetermined(`not within ${horizonYears} years`);
}
