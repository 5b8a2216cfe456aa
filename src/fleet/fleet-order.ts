import type { IndexEntry } from "../filing/index-entry.ts";
import { currentRecordsByTag } from "../filing/latest-records.ts";
import type { FilingIndex } from "../filing/read-index.ts";
import { lifeOf } from "../filing/tag-lives.ts";
import type { FleetEntry } from "./fleet-row.ts";

/** Stands in the place of a year where a record does not state the day of the work. */
export const noDay = "no-day";

/**
 * The filed records of a folder by the year of the work, by tag within a year; superseded revisions too. Withdrawn and
 * disposed pages are in none.
 */
export function fleetByYear({
  entries,
  tagLines,
}: Pick<FilingIndex, "entries" | "tagLines">): ReadonlyMap<string, readonly FleetEntry[]> {
  const byTag = currentRecordsByTag(entries);
  const current = new Map([...byTag.values()].flatMap((ofTag) => ofTag.map((entry, place) => [entry, place] as const)));
  const byYear = new Map<string, FleetEntry[]>();
  for (const entry of entries) {
    const ofTag = byTag.get(entry.summary.tag) ?? [];
    const place = current.get(entry);
    const isLast = place !== undefined && place === ofTag.length - 1;
    const year = entry.summary.performedOn?.slice(0, 4) ?? noDay;
    const ofYear = byYear.get(year) ?? [];
    byYear.set(year, ofYear);
    ofYear.push({
      entry,
      untilThen: place === undefined ? [entry] : ofTag.slice(0, place + 1),
      isCurrent: place !== undefined,
      isLast,
      life: isLast ? lifeOf(entry, tagLines) : {},
    });
  }
  for (const ofYear of byYear.values()) ofYear.sort((one, other) => byTagThenLine(one.entry, other.entry));
  return new Map([...byYear].sort(([one], [other]) => (one < other ? -1 : 1)));
}

/** Rows of a loop lie together, so that an engine which looks for one skips the others. */
function byTagThenLine(one: IndexEntry, other: IndexEntry): number {
  if (one.summary.tag !== other.summary.tag) return one.summary.tag < other.summary.tag ? -1 : 1;
  return one.number - other.number;
}
