import { signingState } from "../proof/signing-state.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import { recordSummary } from "../record/record-summary.ts";
import type { PhaseSummary } from "../record/record-summary-schema.ts";
import { type IndexRow, rowOf } from "./filing-index.ts";
import type { IndexEntry, LineInShort } from "./index-entry.ts";
import type { PhaseInShort } from "./record-in-short.ts";

/** The row of a page. */
export function indexRow(line: LineInShort, record: SealedRecord): IndexRow {
  const entry = indexEntry(line, record);
  return rowOf(entry, JSON.stringify(entry));
}

/** The entry of a record that was filed by a line. */
export function indexEntry({ number, path, fileSha256, paper }: LineInShort, record: SealedRecord): IndexEntry {
  const { instrument, calibration, standards, recommendation } = record;
  const summary = recordSummary(record);
  return {
    number,
    path,
    fileSha256,
    summary: { ...summary, asFound: inShort(summary.asFound), asLeft: inShort(summary.asLeft) },
    ...stated({
      description: instrument.description,
      location: instrument.location,
      criticality: instrument.criticality,
      intervalMonths: instrument.intervalMonths,
      intervalAgreedBy: instrument.intervalAgreedBy,
      recommendation: (recommendation?.asLeft ?? recommendation?.asFound)?.action,
      impactDecision: calibration.impactDecision,
      procedure: calibration.procedure,
      paper,
    }),
    signedBy: signingState(record).given.map(({ name, meaning }) => `${name} (${meaning})`),
    standards: standards.map(({ standard, certificate, dueOn }) => ({ standard, certificate, dueOn })),
  };
}

function inShort(phase: PhaseSummary | null): PhaseInShort | null {
  if (phase === null) return null;
  const { points, ...rest } = phase;
  return {
    ...rest,
    places: points.map(({ point, errorDistance, toleranceLow, toleranceHigh }) => [
      ...([point, errorDistance, toleranceLow, toleranceHigh] as const),
    ]),
  };
}

type Stated<Fields> = { [Name in keyof Fields]?: NonNullable<Fields[Name]> };

/** The fields that hold anything. */
function stated<Fields extends object>(fields: Fields): Stated<Fields> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Stated<Fields>;
}
