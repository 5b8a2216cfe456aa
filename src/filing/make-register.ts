import { clopperPearson } from "../numeric/clopper-pearson.ts";
import type {
  OpenFinding,
  Register,
  RegisterRow,
  RegisterStandard,
  WorstError,
  YearRate,
} from "../record/register-form.ts";
import { dueState } from "./due-state.ts";
import { isFinding } from "./finding.ts";
import type { IndexEntry, PhaseInShort } from "./index-entry.ts";
import { currentRecordsByTag } from "./latest-records.ts";
import type { FilingIndex } from "./read-index.ts";
import { registerDrift } from "./register-drift.ts";
import { lifeOf, type TagLife } from "./tag-lives.ts";

/** What a folder of records says on a day; `soonDays` is how many days before its date a loop is due soon. */
export function makeRegister(
  {
    entries,
    decisions,
    tagLines = [],
  }: Pick<FilingIndex, "entries" | "decisions"> & { tagLines?: FilingIndex["tagLines"] },
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
    rows: loops.map(({ ofTag, life }) => registerRow(ofTag, life, { on, soonDays })).sort(byTagName),
    standards: standardsOf(
      loops.filter(({ life }) => life.outOfUse === undefined).map(({ ofTag }) => ofTag.at(-1) as IndexEntry),
      on,
    ),
    openFindings: current.flatMap((entry) => openFinding(entry, decided)),
    years: yearsOf(current),
    records: entries.length,
  };
}

function byTagName(one: RegisterRow, other: RegisterRow): number {
  return one.tag < other.tag ? -1 : 1;
}

function registerRow(
  ofTag: readonly IndexEntry[],
  life: TagLife,
  { on, soonDays }: { on: string; soonDays: number },
): RegisterRow {
  const last = ofTag.at(-1) as IndexEntry;
  const { summary } = last;
  return {
    tag: summary.tag,
    description: last.description ?? null,
    location: life.place ?? last.location ?? null,
    criticality: last.criticality ?? null,
    calibration: summary.calibration,
    revision: summary.revision,
    path: last.path,
    performedOn: summary.performedOn,
    unit: summary.distanceUnit,
    asFound: summary.asFound?.statement ?? null,
    asLeft: summary.asLeft?.statement ?? null,
    overall: summary.overall?.word ?? null,
    worstAsFound: worstOf(summary.asFound),
    worstAsLeft: worstOf(summary.asLeft),
    recommendation: last.recommendation ?? null,
    drift: registerDrift(ofTag.map((entry) => entry.summary)),
    due: dueState(last, on, soonDays, life),
    records: ofTag.length,
  };
}

function worstOf(phase: PhaseInShort | null): WorstError | null {
  if (phase === null || phase.worst === null) return null;
  const { errorDistance, errorPercentSpan } = phase.worst;
  return { errorDistance, errorPercentSpan };
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
): OpenFinding[] {
  const { tag, calibration, revision, performedOn } = summary;
  const asFound = summary.asFound?.statement;
  if (asFound === undefined || asFound === null || !isFinding(asFound)) return [];
  if (impactDecision !== undefined || decided.has(fileSha256)) return [];
  return [{ tag, calibration, revision, path, performedOn, asFound }];
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
