import type { RegisterRow, RegisterStandard } from "../record/register-form.ts";
import { dueState } from "./due-state.ts";
import type { IndexEntry } from "./index-entry.ts";
import { currentRecordsByTag } from "./latest-records.ts";
import type { FilingIndex } from "./read-index.ts";
import { lifeOf, type TagLife } from "./tag-lives.ts";

/** What a folder says of when a loop is due. */
export type DueRow = Pick<
  RegisterRow,
  "tag" | "description" | "location" | "calibration" | "revision" | "path" | "due"
>;

/** Loops and standards of a folder on a day, as far as it matters when they are due. */
export type Dues = { on: string; rows: readonly DueRow[]; standards: readonly RegisterStandard[] };

/** A loop by its current records, by the day of the work, and by what the ledger says since. */
export type FiledLoop = { ofTag: readonly IndexEntry[]; life: TagLife };

type Filed = Pick<FilingIndex, "entries"> & Partial<Pick<FilingIndex, "tagLines">>;

/** What is due in a folder on a day: the register without its drifts and rates, which take longer to load than this. */
export function makeDues(filed: Filed, on: string, soonDays: number): Dues {
  const loops = loopsOf(filed);
  return {
    on,
    rows: loops.map(({ ofTag, life }) => dueRow(ofTag, life, { on, soonDays })).sort(byTagName),
    standards: standardsOf(loops, on),
  };
}

/** The loops of a folder, each by its current records. */
export function loopsOf({ entries, tagLines = [] }: Filed): readonly FiledLoop[] {
  const byTag = currentRecordsByTag(entries);
  return [...byTag.values()].map((ofTag) => ({ ofTag, life: lifeOf(ofTag.at(-1) as IndexEntry, tagLines) }));
}

/** When a loop is due, by its last record and by what the ledger says since. */
export function dueRow(
  ofTag: FiledLoop["ofTag"],
  life: TagLife,
  { on, soonDays }: { on: string; soonDays: number },
): DueRow {
  const last = ofTag.at(-1) as IndexEntry;
  const { tag, calibration, revision } = last.summary;
  const location = life.place ?? last.location ?? null;
  return {
    ...{ tag, description: last.description ?? null, location, calibration, revision, path: last.path },
    due: dueState(last, on, soonDays, life),
  };
}

export function byTagName(one: Pick<RegisterRow, "tag">, other: Pick<RegisterRow, "tag">): number {
  return one.tag < other.tag ? -1 : 1;
}

/** Standards of the last record of each loop in use, by the certificate that runs longest. */
export function standardsOf(loops: readonly FiledLoop[], on: string): readonly RegisterStandard[] {
  const inUse = loops.filter(({ life }) => life.outOfUse === undefined);
  const found = new Map<string, RegisterStandard>();
  for (const { standards } of inUse.map(({ ofTag }) => ofTag.at(-1) as IndexEntry)) {
    for (const { standard, certificate, dueOn } of standards) {
      const known = found.get(standard);
      const newer = known === undefined || dueOn > known.dueOn ? { certificate, dueOn } : known;
      found.set(standard, {
        standard,
        certificate: newer.certificate,
        dueOn: newer.dueOn,
        isOverdue: newer.dueOn < on,
        tags: (known?.tags ?? 0) + 1,
      });
    }
  }
  return [...found.values()].sort((one, other) => (one.dueOn < other.dueOn ? -1 : 1));
}
