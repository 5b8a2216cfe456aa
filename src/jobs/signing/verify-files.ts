import { checkFolder } from "../../filing/check-folder.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { ledgerName } from "../../filing/ledger.ts";
import { checkLedgerHead, ledgerHead } from "../../filing/ledger-head.ts";
import type { WithdrawnLine } from "../../filing/ledger-line.ts";
import { signersChanged } from "../../filing/signers-changed.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import type { Doubt } from "../../record/doubt.ts";
import { fileDigest } from "../../record/file-digest.ts";
import { looksLikeRecord } from "../../record/looks-like-record.ts";
import { readSealedRecord } from "../../record/read-sealed-record.ts";
import { counted } from "../../units/counted.ts";
import type { Disk } from "../disk.ts";
import { findTargets, type Target } from "../records/find-targets.ts";
import type { SignersTable } from "./find-signers.ts";
import { ledgerReader } from "./ledger-reader.ts";
import { type FindSigners, signersFor } from "./signers-for.ts";
import { verifiedWords } from "./verified-words.ts";
import { type RecordVerifier, recordVerifier } from "./verify-record.ts";

/** What was verified: a record, or the ledger of a folder; or a file that was passed over because it is neither. */
export type Verified = {
  path: string;
  outcome: "ok" | "doubt" | "passed over";
  /** What it is, in a few words. */
  what: string;
  doubts: readonly Doubt[];
  /** What is to be known beside it, in one sentence: how far a record of another version could be verified. */
  note?: string | undefined;
};

export type VerifyFilesOptions = {
  softwareVersion: string;
  /** Date and time with offset. */
  now?: string | undefined;
  /** Path of the table of signers, where it does not lie beside the records or in the folder above. */
  signers?: string | undefined;
  /** Head of the ledger as somebody noted it elsewhere. */
  notedHead?: string | undefined;
  /** Called for each file and ledger as soon as it is verified. */
  onVerified: (verified: Verified, done: number, all: number) => void;
};

/** Problems of the command line, and the tables of signers by which signatures were checked. */
export type VerifiedFiles = { problems: ProblemList; tables: readonly SignersTable[] };

/** What a command needs of the disk to verify: folders are listed and ledgers read as filing does. */
export type VerifyDisks = { disk: Pick<Disk, "read">; filing: FilingDisk };

type Work = {
  disks: VerifyDisks;
  verify: RecordVerifier;
  findSigners: FindSigners;
  tables: Map<string, SignersTable>;
  filedAs: ReturnType<typeof ledgerReader>;
  softwareVersion: string;
  now: string | undefined;
  notedHead: string | undefined;
};

/**
 * Verifies records, one after the other; a folder stands for every page and every record's JSON below it, and for the
 * ledgers in it. Problems are of the command line and of the table of signers that it names: where there is one, nothing
 * was verified.
 */
export async function verifyFiles(
  disks: VerifyDisks,
  paths: readonly string[],
  options: VerifyFilesOptions,
): Promise<VerifiedFiles> {
  const problems = new ProblemList();
  const targets = await findTargets(disks, paths, problems);
  const findSigners = await signersFor(disks.disk, options.signers, problems);
  const { softwareVersion, now, notedHead } = options;
  if (notedHead !== undefined && targets.filter(({ kind }) => kind === "ledger").length !== 1) {
    problems.add("options/one-ledger", { file: "command line" }, { values: { option: "--ledger-head" } });
  }
  const tables = new Map<string, SignersTable>();
  if (problems.hasStop) return { problems, tables: [] };
  const work = {
    disks,
    verify: recordVerifier(),
    findSigners,
    tables,
    filedAs: ledgerReader(disks.filing),
    softwareVersion,
    now,
    notedHead,
  };
  let isAllPassedOver = true;
  for (const [index, target] of targets.entries()) {
    const verified = await verifyTarget(target, work);
    if (verified.outcome !== "passed over") isAllPassedOver = false;
    options.onVerified(verified, index + 1, targets.length);
  }
  if (isAllPassedOver) for (const path of paths) problems.add("options/no-records", { file: path });
  return { problems, tables: [...tables.values()] };
}

async function verifyTarget(target: Target, work: Work): Promise<Verified> {
  if (target.kind === "ledger") return verifyLedger(target.path, work);
  const { path } = target;
  if (target.kind === "unread") return doubtful(path, "unread", `the folder cannot be read: ${target.why}`);
  const bytes = await bytesOf(path, work.disks.disk);
  if ("why" in bytes) return doubtful(path, "unread", `it cannot be read: ${bytes.why}`);
  const text = textOf(bytes.bytes);
  if (target.kind === "found" && !looksLikeRecord(text ?? latin(bytes.bytes))) {
    return { path, outcome: "passed over", what: "no record in it", doubts: [] };
  }
  if (text === undefined) return doubtful(path, "damaged", "its bytes are no UTF-8 text");
  return verifyText({ text, bytes: bytes.bytes }, path, work);
}

type FileText = { text: string; bytes: Uint8Array };

async function verifyText({ text, bytes }: FileText, path: string, work: Work): Promise<Verified> {
  const read = readSealedRecord(text, path);
  const isSigned = "record" in read && read.record.signOff.signatures.length > 0;
  const table = isSigned ? await work.findSigners(path) : undefined;
  if (table !== undefined) work.tables.set(table.path, table);
  const signers = table?.signers;
  const { softwareVersion, now } = work;
  const ofPage = await work.filedAs(path);
  const line = ofPage?.line;
  const isFiled = line?.fileSha256 === fileDigest(bytes).sha256;
  if (line?.action === "withdrawn" && isFiled) return withdrawn(path, line);
  const filed = isFiled ? { filedBy: line?.number, filedAt: line?.at } : {};
  const options = { softwareVersion, signers, now, ...filed };
  const { doubts, note } = await everyDoubt(work.verify(text, path, options));
  if (table?.unusable !== undefined) doubts.push({ about: "signatures", place: table.path, says: table.unusable });
  if (line !== undefined && !isFiled) doubts.push(notFiled(line.number));
  const what =
    "record" in read ? verifiedWords(read.record, isFiled ? ofPage : undefined) : "no record that can be read";
  return { path, outcome: doubts.length === 0 ? "ok" : "doubt", what, doubts, note };
}

/** What was doubtful about it is why it was withdrawn; that it is kept as it was filed is all that is asked of it. */
function withdrawn(path: string, { tag, calibration, revision, number, at, by, reason }: WithdrawnLine): Verified {
  const what = `${tag}, ${calibration}, revision ${revision}, withdrawn`;
  const note = `line ${number} of the ledger: withdrawn by ${by} at ${at}, ${reason}; nothing else of it was verified`;
  return { path, outcome: "ok", what, doubts: [], note };
}

async function everyDoubt(
  verifying: ReturnType<RecordVerifier>,
): Promise<{ doubts: Doubt[]; note?: string | undefined }> {
  const doubts: Doubt[] = [];
  for (;;) {
    const { done, value } = await verifying.next();
    if (done) return { doubts, note: value };
    doubts.push(value);
  }
}

function notFiled(line: number): Doubt {
  const says = `line ${line} of the ledger filed another file under this name, by its SHA-256`;
  return { about: "ledger", place: ledgerName, says };
}

/** Its pages are verified as files of their own; here it is about the ledger, and that it and the files belong together. */
async function verifyLedger(folder: string, { disks, notedHead }: Work): Promise<Verified> {
  const doubts = [...(await checkFolder(disks.filing, folder))];
  if (notedHead !== undefined) doubts.push(...(await checkLedgerHead(disks.filing, folder, notedHead)));
  const { lines, fingerprint } = await ledgerHead(disks.filing, folder);
  const note = await signersChanged(disks.filing, folder);
  const what = `ledger of ${counted(lines, "line")}, head ${fingerprint}`;
  return { path: `${folder}/${ledgerName}`, outcome: doubts.length === 0 ? "ok" : "doubt", what, doubts, note };
}

function doubtful(path: string, what: string, says: string): Verified {
  return { path, outcome: "doubt", what, doubts: [{ about: "file", place: path, says }] };
}

/** A file that one may not read, or that went away in the meantime, keeps nobody from verifying the others. */
async function bytesOf(path: string, disk: Pick<Disk, "read">): Promise<{ bytes: Uint8Array } | { why: string }> {
  try {
    const found = await disk.read(path);
    const [file] = found?.isFolder === false ? found.files : [];
    return file === undefined ? { why: "it is not there any more" } : file;
  } catch (fault) {
    return { why: fault instanceof Error ? fault.message : String(fault) };
  }
}

/** Exactly one text a sequence of bytes, and the other way round, so that texts may be compared instead of bytes. */
function textOf(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function latin(bytes: Uint8Array): string {
  return new TextDecoder("latin1").decode(bytes);
}
