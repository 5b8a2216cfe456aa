import { type Figure, isDetermined, notDetermined } from "../../analysis/figures/figure.ts";
import { pointAt } from "../../analysis/readings/place-in-range.ts";
import { type Change, type ComparedPoint, changeBetween } from "../../analysis/years/change-between.ts";
import { type DatedRecord, isAdjusted, leftState } from "../../analysis/years/dated-states.ts";
import { loopDrift } from "../../analysis/years/loop-drift.ts";
import type { DriftPoint } from "../../analysis/years/place-drift.ts";
import { type Range, spanOf } from "../../model/range.ts";
import type { ValueInterval } from "../../numeric/prediction-interval.ts";

// What the history of a loop says for or against teaching it once more: its drift, which is the one that history and
// register tell, and how it changed from visit to visit, from what one left to what the next found.

/** One calibration of the loop; a phase that was not measured is null. */
export type DriftRecord = DatedRecord<{ points: readonly (ComparedPoint & DriftPoint)[] }> & { calibration: string };

/** The drift at the test point that speaks for the loop; distance. */
export type SpokenDrift = {
  point: number;
  perYear: ValueInterval;
  records: number;
  isEarly: boolean;
  /** Whether the loop was adjusted in the history, so that the drift is the one since then. */
  isSinceAdjustment: boolean;
};

/** The change between two calibrations at one test point, later minus earlier. */
export type DriftChange = Change & {
  from: string;
  to: string;
  /** What was done at the start of it. */
  adjustment: string | null;
  point: number;
};

/** What the history says for or against teaching once more. */
export type DriftFindings = {
  /** How many earlier records there are; null where no history was given. */
  earlier: number | null;
  drift: Figure<SpokenDrift>;
  /** The last two at most, older first. */
  changes: readonly DriftChange[];
  /** Taught anew before each of the last two changes, and moved the same way in both, beyond what U explains. */
  isTaughtTwice: boolean;
  /** How many times as fast the last change is, and by what U leaves of it at least; null where two do not show it. */
  growth: { factor: number; atLeast: number } | null;
  /** The errors are those of what the controller showed, not of the sensor alone. */
  isOfWholeLoop: boolean;
};

/**
 * The drift of a loop, and its changes over the last two intervals at the test point that moved most in the last one.
 *
 * What an interval starts from is what its calibration left (`leftState`): a loop that was adjusted and not read again
 * starts none. A change counts where it is beyond its U.
 *
 * @param records of one loop, oldest first, the calibration at hand last; undefined where no history was given
 * @param range of the instrument
 * @param isOfWholeLoop whether the errors are those of what the controller showed
 * @returns drift and changes, and what they say of teaching once more
 * Source: `loopDrift`, `changeBetween`; own choice of what speaks against teaching once more.
 * @example driftHistory(undefined, { rangeLower: 0, rangeUpper: 1000 }, false).earlier // null
 */
export function driftHistory(
  records: readonly DriftRecord[] | undefined,
  range: Range,
  isOfWholeLoop: boolean,
): DriftFindings {
  const none = { drift: notDetermined("no filed history was given"), changes: [], isTaughtTwice: false, growth: null };
  if (records === undefined) return { earlier: null, ...none, isOfWholeLoop };
  const changes = lastChanges(records.slice(-3), spanOf(range));
  return {
    earlier: Math.max(0, records.length - 1),
    drift: spokenDrift(records, range),
    changes,
    ...twoChanges(changes),
    isOfWholeLoop,
  };
}

function spokenDrift(records: readonly DriftRecord[], range: Range): DriftFindings["drift"] {
  const { points, leading } = loopDrift(records, range);
  if (!isDetermined(leading)) return leading;
  const place = points[leading.index];
  if (place === undefined) return notDetermined("no test point was judged");
  const { line, distance, errors } = place;
  if (!isDetermined(line)) return line;
  const isSinceAdjustment = records.slice(0, -1).some(isAdjusted);
  const { perYear, isEarly } = line;
  return { point: distance, perYear, records: errors.length, isEarly, isSinceAdjustment };
}

function lastChanges(records: readonly DriftRecord[], span: number): readonly DriftChange[] {
  const point = pointThatMoved(records, span);
  if (point === undefined) return [];
  return records.slice(1).flatMap((now, index) => {
    const before = records[index] as DriftRecord;
    const change = changeBetween(before, now, point, span);
    if (change === undefined) return [];
    return [{ ...change, from: before.calibration, to: now.calibration, adjustment: before.adjustment, point }];
  });
}

/** Among the points that every calibration left, as far as that is known: the one that moved most in the last interval. */
function pointThatMoved(records: readonly DriftRecord[], span: number): number | undefined {
  const left = records.slice(0, -1).map((record) => leftState(record)?.points ?? []);
  const [start, found] = [left.at(-1) ?? [], records.at(-1)?.asFound?.points ?? []];
  const isEverywhere = (point: number) =>
    left.every((points) => points.length === 0 || pointAt(points, point, span) !== undefined);
  const moved = found.flatMap(({ point, errorDistance }) => {
    const before = pointAt(start, point, span);
    if (before === undefined || !isEverywhere(point)) return [];
    return [{ point, by: Math.abs(errorDistance - before.errorDistance) }];
  });
  return moved.toSorted((one, other) => other.by - one.by)[0]?.point;
}

function twoChanges(changes: readonly DriftChange[]): Pick<DriftFindings, "isTaughtTwice" | "growth"> {
  const [before, last] = changes;
  const isSameWay =
    before !== undefined &&
    last !== undefined &&
    counts(before) &&
    counts(last) &&
    before.errorDistance * last.errorDistance > 0;
  if (!isSameWay) return { isTaughtTwice: false, growth: null };
  const isTaughtTwice = before.adjustment === "re-teach" && last.adjustment === "re-teach";
  return { isTaughtTwice, growth: growthOf(before, last) };
}

/** At least: the last change less its U, over the one before with its U. */
function growthOf(before: DriftChange, last: DriftChange): DriftFindings["growth"] {
  if (before.perYear === null || last.perYear === null) return null;
  const factor = last.perYear / before.perYear;
  const part = ({ errorDistance, expandedUncertainty }: DriftChange, way: 1 | -1) =>
    1 + (way * expandedUncertainty) / Math.abs(errorDistance);
  return { factor, atLeast: (factor * part(last, -1)) / part(before, 1) };
}

function counts({ errorDistance, expandedUncertainty }: DriftChange): boolean {
  return Math.abs(errorDistance) > expandedUncertainty;
}
