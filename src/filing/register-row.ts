import { daysBetween } from "../analysis/years/day-number.ts";
import { fingerprintOf } from "../proof/fingerprint-words.ts";
import type { LateCalibration, RegisterRow, WorstError } from "../record/register-form.ts";
import type { IndexEntry } from "./index-entry.ts";
import type { DecidedLine } from "./ledger-line.ts";
import { dueRow } from "./make-dues.ts";
import type { PhaseInShort } from "./record-in-short.ts";
import { registerDrift } from "./register-drift.ts";
import type { TagLife } from "./tag-lives.ts";

/** What a register says of a loop: by its last record, and by what the ledger says since. */
export function registerRow(
  ofTag: readonly IndexEntry[],
  life: TagLife,
  { on, soonDays, decisions }: { on: string; soonDays: number; decisions: readonly DecidedLine[] },
): RegisterRow {
  const last = ofTag.at(-1) as IndexEntry;
  const { summary } = last;
  const { tag, description, location, calibration, revision, path, due } = dueRow(ofTag, life, { on, soonDays });
  return {
    tag,
    description,
    location,
    criticality: last.criticality ?? null,
    calibration,
    revision,
    path,
    performedOn: summary.performedOn,
    unit: summary.distanceUnit,
    asFound: summary.asFound?.statement ?? null,
    asLeft: summary.asLeft?.statement ?? null,
    overall: summary.overall?.word ?? null,
    worstAsFound: worstOf(summary.asFound),
    worstAsLeft: worstOf(summary.asLeft),
    recommendation: last.recommendation ?? null,
    ...registerDrift(ofTag.map((entry) => entry.summary)),
    missing: summary.overall?.missing ?? [],
    serial: summary.serial,
    procedure: last.procedure ?? null,
    signedBy: [...(last.signedBy ?? []), ...(last.paper === undefined ? [] : [`on paper: ${last.paper}`])],
    fingerprint: fingerprintOf(summary.sha256),
    standards: last.standards.map(({ standard, certificate }) => `${standard} (${certificate})`),
    decided: decidedOf(last, decisions),
    daysLate: lateOf(ofTag).find(({ path }) => path === last.path)?.days ?? null,
    due,
    records: ofTag.length,
  };
}

function worstOf(phase: PhaseInShort | null): WorstError | null {
  if (phase === null || phase.worst === null) return null;
  const { errorDistance, errorPercentSpan } = phase.worst;
  return { errorDistance, errorPercentSpan };
}

/** By the ledger, the last time; else as the record itself says it. */
export function decidedOf(
  { fileSha256, impactDecision }: IndexEntry,
  decisions: readonly DecidedLine[],
): RegisterRow["decided"] {
  const line = decisions.findLast((one) => one.fileSha256 === fileSha256);
  if (line !== undefined) return { by: line.by, decision: line.decision };
  return impactDecision === undefined ? null : { by: null, decision: impactDecision };
}

/**
 * The calibrations of a loop that were done after the day on which the one before said that they were due.
 *
 * @param ofTag current records, by the day of the work
 */
export function lateOf(ofTag: readonly IndexEntry[]): readonly LateCalibration[] {
  return ofTag.flatMap(({ summary: { tag, calibration, performedOn }, path }, index) => {
    const dueOn = ofTag[index - 1]?.summary.nextDue ?? null;
    if (dueOn === null || performedOn === null || performedOn <= dueOn) return [];
    return [{ tag, calibration, path, dueOn, performedOn, days: daysBetween(dueOn, performedOn) }];
  });
}
