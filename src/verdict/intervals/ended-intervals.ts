import { worstPoint } from "../../analysis/readings/place-in-range.ts";
import { type DatedRecord, leftState } from "../../analysis/years/dated-states.ts";
import type { DriftPhase } from "../../analysis/years/place-drift.ts";
import { isInTolerance, type Statement } from "../../model/statement.ts";

/** A phase with what was said of it. */
export type StatedPhase = DriftPhase & { statement: Statement | null };

/** How a loop was found at the end of an interval that had begun in tolerance. */
export type EndedInterval = {
  asFound: Statement;
  /** The mean error that takes up the most of its tolerance, as a part of it; null where no test point was judged. */
  partOfTolerance: number | null;
  days: number;
};

/**
 * The intervals that began in tolerance and whose end says how the loop was found.
 *
 * @param records of one loop, oldest first
 * @returns for each record but the first, oldest first: the interval that it ended, or undefined where none did
 * Source: ILAC-G24:2022 / OIML D 10, 6.6; what counts as in tolerance is own choice, `isInTolerance`.
 * @example endedIntervals([]) // []
 */
export function endedIntervals(records: readonly DatedRecord<StatedPhase>[]): readonly (EndedInterval | undefined)[] {
  return records.slice(1).map((now, index) => intervalBetween(records[index] as DatedRecord<StatedPhase>, now));
}

function intervalBetween(before: DatedRecord<StatedPhase>, now: DatedRecord<StatedPhase>): EndedInterval | undefined {
  const asFound = now.asFound?.statement ?? null;
  if (!isLeftInTolerance(before) || asFound === null || now.day <= before.day) return undefined;
  return { asFound, partOfTolerance: greatestPart(now.asFound), days: now.day - before.day };
}

/** Infinity, where one side of the tolerance allows nothing, is no part to speak of. */
function greatestPart(phase: StatedPhase | null): number | null {
  const part = worstPoint(phase?.points ?? [])?.part ?? null;
  return part !== null && Number.isFinite(part) ? part : null;
}

/**
 * Whether a calibration left its loop in tolerance.
 *
 * @param record with its phases
 * @returns true for a pass and a conditional pass of the state that it left
 * Source: `leftState`, `isInTolerance`.
 * @example isLeftInTolerance({ adjustment: "none", asFound: { statement: "pass", points: [] }, asLeft: null }) // true
 */
export function isLeftInTolerance(record: Omit<DatedRecord<StatedPhase>, "day">): boolean {
  return isInTolerance(leftState(record)?.statement ?? null);
}
