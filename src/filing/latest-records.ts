import type { IndexEntry } from "./index-entry.ts";

/**
 * The entries that are not superseded, by tag; within a tag by the day of the work, then in the order of filing.
 *
 * A later revision of a calibration takes the place of the earlier ones.
 */
export function currentRecordsByTag(entries: readonly IndexEntry[]): ReadonlyMap<string, readonly IndexEntry[]> {
  const byTag = new Map<string, Map<string, IndexEntry>>();
  for (const entry of entries) {
    const { tag, revision } = entry.summary;
    const calibration = `${entry.filedAs ?? tag}\n${entry.summary.calibration}`;
    const ofTag = byTag.get(tag) ?? new Map<string, IndexEntry>();
    byTag.set(tag, ofTag);
    const known = ofTag.get(calibration);
    if (known === undefined || known.summary.revision < revision) ofTag.set(calibration, entry);
  }
  return new Map([...byTag].map(([tag, ofTag]) => [tag, [...ofTag.values()].sort(byDay)]));
}

/** A record without a day stands before those that have one. */
function byDay(one: IndexEntry, other: IndexEntry): number {
  const [first, second] = [one.summary.performedOn ?? "", other.summary.performedOn ?? ""];
  if (first !== second) return first < second ? -1 : 1;
  return one.number - other.number;
}
