import type { Signer } from "../../model/signer.ts";
import { checkSeal } from "../../proof/check-seal.ts";
import { checkSignatures } from "../../proof/check-signatures.ts";
import { compareRecords } from "../../proof/compare-records.ts";
import { differenceDoubts } from "../../proof/difference-doubts.ts";
import type { Doubt } from "../../record/doubt.ts";
import { readSealedRecord } from "../../record/read-sealed-record.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { ReadRecord } from "../../record/written-record.ts";
import { pageDifference } from "../../report/page-difference.ts";
import { rebuildRecord } from "../records/rebuild-record.ts";
import { recordJson, recordPage } from "../records/write-record.ts";

export type VerifyOptions = {
  /** Of the program that verifies. */
  softwareVersion: string;
  /** Rows of the table of signers; nothing where there is none to check signatures by. */
  signers: readonly Signer[] | undefined;
  /** Date and time with offset; nothing where no clock is asked. */
  now?: string | undefined;
};

/** Gives the doubts about the text of one file, one after the other as they are found. */
export type RecordVerifier = (text: string, file: string, options: VerifyOptions) => AsyncGenerator<Doubt>;

const longestLine = 100;

/** What follows from a record alone; made once for its page and for the JSON beside it. */
type Consequences = { json: string; figures: readonly Doubt[]; page?: Promise<string> };

/** Every doubt about a record: the text of a page, or of its JSON alone. Nothing but the text is read. */
export async function verifyRecord(text: string, file: string, options: VerifyOptions): Promise<readonly Doubt[]> {
  const doubts: Doubt[] = [];
  for await (const doubt of recordVerifier()(text, file, options)) doubts.push(doubt);
  return doubts;
}

/**
 * Verifies one text after the other, each in the order file, seal, signatures, figures, page. Figures and page are made
 * once more from the record and compared with what stands there; what was made last is kept, because the text that is
 * verified next often holds the same record.
 */
export function recordVerifier(): RecordVerifier {
  let last: Consequences | undefined;
  return async function* doubtsOf(text, file, options) {
    const read = readSealedRecord(text, file);
    if ("doubts" in read) return yield* read.doubts;
    const { record, written } = read;
    yield* checkSeal(written);
    yield* signatureDoubts(read, options);
    const json = JSON.stringify(written);
    if (last?.json !== json) last = { json, figures: figureDoubts(record) };
    yield* last.figures;
    const texts = await textDoubts(text, record, last);
    yield* texts;
    if (last.figures.length + texts.length > 0) yield* versionDoubts(record, options);
  };
}

/** What the rows of a record do not give so, or not at all. */
export function figureDoubts(record: SealedRecord): readonly Doubt[] {
  try {
    const rebuilt = rebuildRecord(record);
    if ("doubts" in rebuilt) return rebuilt.doubts;
    return differenceDoubts(compareRecords(JSON.parse(JSON.stringify(rebuilt.record)), record));
  } catch (fault) {
    return [cannotBeMade("figures", "inputs.rows", fault)];
  }
}

function signatureDoubts({ record, written }: ReadRecord, { signers, now }: VerifyOptions): readonly Doubt[] {
  if (record.signOff.signatures.length === 0) return [];
  if (signers !== undefined) return checkSignatures(record, signers, now, written);
  const says = "the record is signed, and there is no table of signers to check the signatures by";
  return [{ about: "signatures", place: "signOff", says }];
}

async function textDoubts(text: string, record: SealedRecord, known: Consequences): Promise<readonly Doubt[]> {
  if (text.trimStart().startsWith("{")) return jsonDoubts(text, recordJson(record));
  try {
    known.page ??= recordPage(record);
    const difference = pageDifference(await known.page, text);
    if (difference === undefined) return [];
    const { place, expected, found } = difference;
    return [{ about: "page", place, says: `the record gives "${expected}", the page has "${found}"` }];
  } catch (fault) {
    return [cannotBeMade("page", "the whole", fault)];
  }
}

function jsonDoubts(text: string, expected: string): readonly Doubt[] {
  if (text === expected) return [];
  const [wanted, given] = [expected.split("\n"), text.split("\n")];
  const index = wanted.findIndex((line, number) => line !== given[number]);
  const line = index === -1 ? wanted.length : index;
  const [expects, has] = [wanted[line], given[line]].map(shortened);
  const says = `the record is written as "${expects}", the file has "${has}"`;
  return [{ about: "page", place: `line ${line + 1}`, says }];
}

function shortened(line: string | undefined): string {
  const text = line?.trim() ?? "(end)";
  return text.length > longestLine ? `${text.slice(0, longestLine)}…` : text;
}

/** Only a record that was tampered with, by somebody who sealed it anew, gets here. */
function cannotBeMade(about: Doubt["about"], place: string, fault: unknown): Doubt {
  const why = fault instanceof Error ? fault.message : String(fault);
  return { about, place, says: `they cannot be made from this record: ${why}` };
}

/** Another version may compute or write otherwise: then that one has to be asked. */
function versionDoubts({ software: { version } }: SealedRecord, options: VerifyOptions): readonly Doubt[] {
  if (version === options.softwareVersion) return [];
  const says = `spanwright ${version} wrote this record and this is ${options.softwareVersion}, which may compute or write otherwise: verify it with spanwright ${version}`;
  return [{ about: "file", place: "software.version", says }];
}
