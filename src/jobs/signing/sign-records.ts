import { type SignatureMeaning, signatureMeanings } from "../../model/signature-meanings.ts";
import type { Signer } from "../../model/signer.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { checkSeal } from "../../proof/check-seal.ts";
import { checkSignatures } from "../../proof/check-signatures.ts";
import { signRecord } from "../../proof/sign-record.ts";
import type { SigningKey } from "../../proof/signing-key.ts";
import { otherThanStated, refusalsOf, signerOf } from "../../proof/signing-refusals.ts";
import { signingState } from "../../proof/signing-state.ts";
import type { Doubt } from "../../record/doubt.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { Disk } from "../disk.ts";
import { type RecordFile, readRecordFiles } from "../records/read-record-files.ts";
import { recordFiles, writeRecord } from "../records/write-record.ts";
import { figureDoubts } from "./figure-doubts.ts";
import { findSigners } from "./find-signers.ts";
import { type AskPassphrase, type OpenTo, openKey } from "./open-key.ts";

export type SignOptions = {
  /** What the signature means, as it was typed. */
  as: string;
  /** Path of the key file, and of the table of signers where it does not lie beside the record or above it. */
  key: string;
  signers?: string | undefined;
  /** Date and time with offset. */
  now: string;
  /** Of the program that signs: it draws the page again, and draws those of its own version alone as they were. */
  softwareVersion: string;
  ask: AskPassphrase;
  /** Rights of the key file, where others may read it. */
  openTo?: OpenTo | undefined;
  /** What else keeps a record from being whole; left out, its figures are made once more from its rows. */
  doubtsOf?: (record: SealedRecord) => readonly Doubt[];
};

/** A record that was signed, by whom, and where its page is. */
export type SignedRecord = { record: SealedRecord; page: string; signedBy: string; signedAs: SignatureMeaning };

type Signing = {
  key: SigningKey;
  meaning: SignatureMeaning;
  options: SignOptions;
  problems: ProblemList;
  signersOf: (record: string) => Promise<readonly Signer[] | undefined>;
};

const ending = /\.(?:html|json)$/u;

/** Signs records that are whole, each on its own; page and JSON are written together again. */
export async function signRecords(
  disk: Disk,
  paths: readonly string[],
  options: SignOptions,
): Promise<{ signed: readonly SignedRecord[]; problems: ProblemList }> {
  const problems = new ProblemList();
  const meaning = signatureMeanings.find((one) => one === options.as);
  if (meaning === undefined) {
    const values = { option: "--as", accepted: signatureMeanings.join(", ") };
    problems.add("options/not-understood", { file: "command line" }, { read: options.as, values });
    return { signed: [], problems };
  }
  const files = await readRecordFiles(disk, onePathEach(paths), problems);
  const key = files.length === 0 ? undefined : await openKey(disk, options.key, options, problems);
  if (key === undefined) return { signed: [], problems };
  const signing = { key, meaning, options, problems, signersOf: signersReader(disk, options.signers, problems) };
  const signed: SignedRecord[] = [];
  for (const file of files) {
    const one = await signOne(disk, file, signing);
    if (one !== undefined) signed.push(one);
  }
  return { signed, problems };
}

/** Page and JSON of one record are one record. */
function onePathEach(paths: readonly string[]): readonly string[] {
  return [...new Map(paths.toReversed().map((path) => [path.replace(ending, ""), path])).values()].toReversed();
}

/** Reads each table of signers once; by one in which something is wrong, nobody signs until it is mended. */
function signersReader(disk: Disk, given: string | undefined, problems: ProblemList): Signing["signersOf"] {
  const byFolder = new Map<string, readonly Signer[] | undefined>();
  return async (record) => {
    const folder = given ?? record.replace(/[^\\/]*$/u, "");
    if (!byFolder.has(folder)) {
      const before = problems.all.length;
      const table = await findSigners(disk, record, given, problems);
      const isSound = problems.all.slice(before).every(({ severity }) => severity !== "stop");
      byFolder.set(folder, isSound ? table?.signers : undefined);
    }
    return byFolder.get(folder);
  };
}

async function signOne(disk: Disk, file: RecordFile, signing: Signing): Promise<SignedRecord | undefined> {
  const { key, meaning, options, problems } = signing;
  const { record, path } = file;
  if (!ending.test(path)) problems.add("options/not-a-record", { file: path });
  const signers = ending.test(path) ? await signing.signersOf(path) : undefined;
  if (signers === undefined) return undefined;
  const doubts = await doubtsBefore(disk, file, signers, options);
  for (const { says } of doubts) problems.add("signing/record-doubtful", { file: path }, { values: { says } });
  if (doubts.length > 0) return undefined;
  const { now: signedAt } = options;
  const found = signerOf(signers, key.keyId, signedAt);
  const refusals =
    "code" in found
      ? [found]
      : refusalsOf(record, signingState(record).given, { keyId: key.keyId, meaning, signedAt }, found.signer);
  for (const { code, values } of refusals) problems.add(code, { file: path }, { values });
  if ("code" in found || refusals.length > 0) return undefined;
  const { name, role } = found.signer;
  const stated = otherThanStated(record, { meaning, name });
  if (stated !== undefined) problems.add("signing/other-than-stated", { file: path }, { values: { stated, name } });
  const next = signRecord(record, key, { name, role, meaning, signedAt });
  const place = path.replace(ending, "");
  const page = await writeRecord(disk, await recordFiles(next, place), place, problems);
  return page === undefined ? undefined : { record: next, page, signedBy: name, signedAs: meaning };
}

/** Nobody signs what is not whole: seal, earlier signatures, both files as the record gives them, and the figures. */
async function doubtsBefore(
  disk: Pick<Disk, "read">,
  { record, written, path }: RecordFile,
  signers: readonly Signer[],
  { doubtsOf = (of) => figureDoubts(of).doubts, softwareVersion }: SignOptions,
): Promise<readonly Doubt[]> {
  const { version } = record.software;
  if (version !== softwareVersion) return [ofOtherVersion(version, softwareVersion)];
  const seal = checkSeal(written);
  if (seal.length > 0) return seal;
  const signatures = checkSignatures(record, signers, undefined, written);
  if (signatures.length > 0) return signatures;
  return [...(await otherFiles(disk, record, path.replace(ending, ""))), ...doubtsOf(record)];
}

function ofOtherVersion(version: string, softwareVersion: string): Doubt {
  const says = `spanwright ${version} wrote it and this is ${softwareVersion}, which draws its page otherwise; make it anew from its tables, or sign it with spanwright ${version}`;
  return { about: "page", place: "software.version", says };
}

/** What was signed has to be what was read on the page. */
async function otherFiles(disk: Pick<Disk, "read">, record: SealedRecord, place: string): Promise<readonly Doubt[]> {
  const doubts: Doubt[] = [];
  for (const { path, text } of await recordFiles(record, place)) {
    const [file] = (await disk.read(path))?.files ?? [];
    const found = file && new TextDecoder("utf-8", { ignoreBOM: true }).decode(file.bytes);
    if (found === undefined || found === text || (await isOfEarlierSignature(record, place, { path, text: found })))
      continue;
    const says = `${path} is not what this record gives: it was changed`;
    doubts.push({ about: "page", place: path, says });
  }
  return doubts;
}

/** Whether a file is the one that lay there before the last signatures: their signing was ended between its two files. */
async function isOfEarlierSignature(
  record: SealedRecord,
  place: string,
  { path, text }: { path: string; text: string },
) {
  const { signatures } = record.signOff;
  for (let count = signatures.length - 1; count >= 0; count -= 1) {
    const earlier = { ...record, signOff: { signatures: signatures.slice(0, count) } };
    const files = await recordFiles(earlier, place);
    if (files.some((one) => one.path === path && one.text === text)) return true;
  }
  return false;
}
