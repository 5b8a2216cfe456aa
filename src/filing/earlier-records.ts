import { isFinding } from "./finding.ts";
import type { IndexEntry } from "./index-entry.ts";

/** A calibration that is about to be recorded. */
export type CalibrationAtHand = { tag: string; calibration: string; performedOn?: string | undefined };

/** As-found results of a folder: how many were in tolerance. */
export type FiledRate = { inTolerance: number; of: number };

/**
 * What a folder held before a calibration: the current records of its tag, oldest first, and how the loops of all tags
 * were found. A record of the same day or without a day is not known to be earlier; before a calibration without a day
 * is every other record that has one.
 *
 * @param byTag current records, as `currentRecordsByTag` gives them
 */
export function earlierRecords(
  byTag: ReadonlyMap<string, readonly IndexEntry[]>,
  atHand: CalibrationAtHand,
): { ofTag: readonly IndexEntry[]; rate: FiledRate } {
  const isBefore = (entry: IndexEntry) => isEarlier(entry, atHand);
  return {
    ofTag: (byTag.get(atHand.tag) ?? []).filter(isBefore),
    rate: rateOf([...byTag.values()].flat().filter(isBefore)),
  };
}

function isEarlier({ summary }: IndexEntry, { tag, calibration, performedOn }: CalibrationAtHand): boolean {
  if (summary.performedOn === null || (summary.tag === tag && summary.calibration === calibration)) return false;
  return performedOn === undefined || summary.performedOn < performedOn;
}

/** What cannot be decided was not found in tolerance, as in the register. */
function rateOf(entries: readonly IndexEntry[]): FiledRate {
  const found = entries.flatMap(({ summary }) => summary.asFound?.statement ?? []);
  return { inTolerance: found.filter((statement) => !isFinding(statement)).length, of: found.length };
}
