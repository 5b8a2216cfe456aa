import { daysBetween } from "../analysis/years/day-number.ts";
import { clopperPearson } from "../numeric/clopper-pearson.ts";
import type { OpenFinding, Register, RegisterRow, RegisterStandard, YearRate } from "../record/register-form.ts";
import { isFinding } from "./finding.ts";
import type { IndexEntry } from "./index-entry.ts";
import { currentRecordsByTag } from "./latest-records.ts";
import type { FilingIndex } from "./read-index.ts";
import { lateOf, registerRow } from "./register-row.ts";
import { lifeOf } from "./tag-lives.ts";

type Filed = Pick<FilingIndex, "entries" | "decisions" | "disposedSince"> & Partial<Pick<FilingIndex, "tagLines">>;

/** What a folder of records says on a day; `soonDays` is how many days before its date a loop is due soon. */
export function makeRegister(
  { entries, decisions, tagLines = [], disposedSince = 0 }: Filed,
  on: string,
  soonDays: number,
): Register {
  const byTag = currentRecordsByTag(entries);
  const current = [...byTag.values()].flat();
  const loops = [...byTag.values()].map((ofTag) => ({ ofTag, life: lifeOf(ofTag.at(-1) as IndexEntry, tagLines) }));
  const decided = new Set(decisions.map(({ fileSha256 }) => fileSha256));
  return {
    on,
    soonDays,
    rows: loops.map(({ ofTag, life }) => registerRow(ofTag, life, { on, soonDays, decisions })).sort(byTagName),
    standards: standardsOf(
      loops.filter(({ life }) => life.outOfUse === undefined).map(({ ofTag }) => ofTag.at(-1) as IndexEntry),
      on,
    ),
    openFindings: current.flatMap((entry) => openFinding(entry, decided, on)).sort(byAge),
    late: [...byTag.values()].flatMap(lateOf).sort((one, other) => (one.performedOn < other.performedOn ? 1 : -1)),
    years: yearsOf(current),
    records: entries.length,
    disposedSince,
  };
}

function byTagName(one: RegisterRow, other: RegisterRow): number {
  return one.tag < other.tag ? -1 : 1;
}

/** Standards of the last record of each tag, by the certificate that runs longest. */
function standardsOf(last: readonly IndexEntry[], on: string): readonly RegisterStandard[] {
  const found = new Map<string, RegisterStandard>();
  for (const { standards } of last) {
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

/** A decision is about one page: what was decided of a revision does not close the finding of the next one. */
function openFinding(
  { summary, path, fileSha256, impactDecision }: IndexEntry,
  decided: ReadonlySet<string>,
  on: string,
): OpenFinding[] {
  const { tag, calibration, revision, performedOn } = summary;
  const asFound = summary.asFound?.statement;
  if (asFound === undefined || asFound === null || !isFinding(asFound)) return [];
  if (impactDecision !== undefined || decided.has(fileSha256)) return [];
  const days = performedOn === null ? null : daysBetween(performedOn, on);
  return [{ tag, calibration, revision, path, performedOn, asFound, days }];
}

/** One without a day may be as old as any. */
function byAge(one: OpenFinding, other: OpenFinding): number {
  return (other.days ?? Number.MAX_SAFE_INTEGER) - (one.days ?? Number.MAX_SAFE_INTEGER);
}

function yearsOf(records: readonly IndexEntry[]): readonly YearRate[] {
  const byYear = new Map<number, { inTolerance: number; of: number }>();
  for (const { summary } of records) {
    const asFound = summary.asFound?.statement;
    if (summary.performedOn === null || asFound === undefined || asFound === null) continue;
    const year = Number(summary.performedOn.slice(0, 4));
    const { inTolerance, of } = byYear.get(year) ?? { inTolerance: 0, of: 0 };
    byYear.set(year, { inTolerance: inTolerance + (isFinding(asFound) ? 0 : 1), of: of + 1 });
  }
  return [...byYear]
    .map(([year, { inTolerance, of }]) => ({ year, inTolerance, of, interval: clopperPearson(inTolerance, of) }))
    .sort((one, other) => one.year - other.year);
}
