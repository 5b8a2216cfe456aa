import { signingState } from "../proof/signing-state.ts";
import type { PhaseName } from "../record/phase-name.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import { recordSummary } from "../record/record-summary.ts";
import { type PhaseSummary, type RecordSummary, recordInShortSchema } from "../record/record-summary-schema.ts";
import type { FiledLine } from "./ledger-line.ts";

/** A phase in short: of its test points what a drift needs. */
export type PhaseInShort = Omit<PhaseSummary, "points"> & { places: PlaceInShort[] };
/** Distance, error, lower and upper limit of a test point: a list, for a folder has a hundred thousand of them. */
type PlaceInShort = [point: number, errorDistance: number, toleranceLow: number, toleranceHigh: number];
export type RecordInShort = Omit<RecordSummary, PhaseName> & {
  asFound: PhaseInShort | null;
  asLeft: PhaseInShort | null;
};

/** What a register needs of one filed record; what the record does not state is left out. */
export type IndexEntry = {
  /** Number of the line by which it was filed, and what that line says of the page. */
  number: number;
  path: string;
  fileSha256: string;
  summary: RecordInShort;
  description?: string;
  location?: string;
  criticality?: string;
  intervalMonths?: number;
  intervalAgreedBy?: string;
  /** What the record recommends for the loop as it was left. */
  recommendation?: string;
  /** What the record itself says was decided about a loop found out of tolerance. */
  impactDecision?: string;
  procedure?: string;
  /** Who signed, and what for: "Ada Specimen (authorised)"; by the signatures as they read. */
  signedBy?: readonly string[];
  /** Where the paper with the signatures lies, where the ledger names one. */
  paper?: string;
  standards: readonly StandardInShort[];
  /** The tag on the page, where the loop is called otherwise now; never in an index, for names go on changing. */
  filedAs?: string;
};

export type StandardInShort = { standard: string; certificate: string; dueOn: string };

/** What an entry takes from the line that filed its page. */
export type LineInShort = Pick<FiledLine, "number" | "path" | "fileSha256"> & { paper?: string | undefined };

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

const certain = { number: Number.isInteger, path: isText, fileSha256: isText, standards: isListOfStandards } as const;
const stateable = {
  ...{ description: isText, location: isText, criticality: isText, intervalAgreedBy: isText },
  ...{ recommendation: isText, impactDecision: isText, intervalMonths: Number.isFinite },
  ...{ procedure: isText, paper: isText, signedBy: isListOfTexts },
} as const;
const certainChecks = Object.entries(certain);
const checks: ReadonlyMap<string, (value: unknown) => boolean> = new Map([
  ...certainChecks,
  ...Object.entries(stateable),
  ["summary", (value: unknown) => recordInShortSchema.safeParse(value).success],
]);

/** Whether what was read from an index has the form of an entry; whether it says what the page says, `verify` tells. */
export function isIndexEntry(found: unknown): found is IndexEntry {
  if (!isObject(found) || !Object.hasOwn(found, "summary")) return false;
  if (!certainChecks.every(([name]) => Object.hasOwn(found, name))) return false;
  return Object.entries(found).every(([name, value]) => checks.get(name)?.(value) === true);
}

function isListOfTexts(value: unknown): boolean {
  return Array.isArray(value) && value.every(isText);
}

function isListOfStandards(value: unknown): boolean {
  const names = ["standard", "certificate", "dueOn"];
  return Array.isArray(value) && value.every((one) => isObject(one) && names.every((name) => isText(one[name])));
}

function isText(value: unknown): boolean {
  return typeof value === "string";
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
