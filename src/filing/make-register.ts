import { daysBetween } from "../analysis/years/day-number.ts";
import { clopperPearson } from "../numeric/clopper-pearson.ts";
import type { OpenFinding, Register, YearRate } from "../record/register-form.ts";
import { isFinding } from "./finding.ts";
import type { IndexEntry } from "./index-entry.ts";
import { byTagName, loopsOf, standardsOf } from "./make-dues.ts";
import type { FilingIndex } from "./read-index.ts";
import { lateOf, registerRow } from "./register-row.ts";

type Filed = Pick<FilingIndex, "entries" | "decisions" | "disposedSince"> & Partial<Pick<FilingIndex, "tagLines">>;

/** What a folder of records says on a day; `soonDays` is how many days before its date a loop is due soon. */
export function makeRegister(
  { entries, decisions, tagLines = [], disposedSince = 0 }: Filed,
  on: string,
  soonDays: number,
): Register {
  const loops = loopsOf({ entries, tagLines });
  const current = loops.flatMap(({ ofTag }) => ofTag);
  const decided = new Set(decisions.map(({ fileSha256 }) => fileSha256));
  return {
    on,
    soonDays,
    rows: loops.map(({ ofTag, life }) => registerRow(ofTag, life, { on, soonDays, decisions })).sort(byTagName),
    standards: standardsOf(loops, on),
    openFindings: current.flatMap((entry) => openFinding(entry, decided, on)).sort(byAge),
    late: loops
      .flatMap(({ ofTag }) => lateOf(ofTag))
      .sort((one, other) => (one.performedOn < other.performedOn ? 1 : -1)),
    years: yearsOf(current),
    records: entries.length,
    disposedSince,
  };
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
