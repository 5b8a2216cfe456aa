import { checkFolder } from "../../filing/check-folder.ts";
import { placeInFolder } from "../../filing/filed-lines.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { ledgerName } from "../../filing/ledger.ts";
import { checkLedgerHead, ledgerHead, lineOfHead } from "../../filing/ledger-head.ts";
import type { WithdrawnLine } from "../../filing/ledger-line.ts";
import { signersChanged } from "../../filing/signers-changed.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import type { Doubt } from "../../record/doubt.ts";
import { fileDigest } from "../../record/file-digest.ts";
import { looksLikeRecord } from "../../record/looks-like-record.ts";
import { type Reading, sealedRecordReader } from "../../record/read-sealed-record.ts";
import { counted } from "../../units/counted.ts";
import type { Disk } from "../disk.ts";
import type { Target } from "../records/find-targets.ts";
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

/** By what is verified: plain data, so that another thread can do it. */
export type Verification = {
  softwareVersion: string;
  /** Date and time with offset. */
  now?: string | undefined;
  /** Path of the table of signers, where it does not lie beside the records or in the folder above. */
  signers?: string | undefined;
  /** Head of the ledger as somebody noted it elsewhere. */
  notedHead?: string | undefined;
  /** Head of the ledger when all of it was verified last: what it had filed by then is not made again. */
  since?: string | undefined;
};

/** What came of a target, and the table of signers by which its signatures were checked. */
export type VerifiedTarget = { verified: Verified; table?: SignersTable | undefined };

/** Verifies targets one by one or several at a time, and gives what came of them in their order. */
export type TargetVerifier = (
  groups: Iterable<readonly Target[]>,
  verification: Verification,
) => AsyncIterable<readonly VerifiedTarget[]>;

/** What a command needs of the disk to verify: folders are listed and ledgers read as filing does. */
export type VerifyDisks = { disk: Pick<Disk, "read">; filing: FilingDisk };

type Work = Verification & {
  disks: VerifyDisks;
  read: (text: string, file: string) => Reading;
  verify: RecordVerifier;
  findSigners: FindSigners;
  filedAs: ReturnType<typeof ledgerReader>;
  /** The last line of a folder's ledger that was verified before. */
  knownUntil: (folder: string) => Promise<number>;
};

/** Verifies the targets of a group, such as a page and the JSON beside it, which hold the same record. */
export function verifierOf(
  disks: VerifyDisks,
  verification: Verification,
): (group: readonly Target[]) => Promise<readonly VerifiedTarget[]> {
  const signers = signersFor(disks.disk, verification.signers, new ProblemList());
  const read = sealedRecordReader();
  const verify = recordVerifier();
  const filedAs = ledgerReader(disks.filing);
  const knownUntil = knownLines(disks.filing, verification.since);
  return async (group) => {
    const work: Work = { ...verification, disks, read, verify, filedAs, knownUntil, findSigners: await signers };
    const found: VerifiedTarget[] = [];
    for (const target of group) found.push(await verifyTarget(target, work));
    return found;
  };
}

/** Each ledger is searched once for the head that was noted. */
function knownLines(disk: Pick<FilingDisk, "read">, since: string | undefined): Work["knownUntil"] {
  const byFolder = new Map<string, Promise<number>>();
  return async (folder) => {
    if (since === undefined) return 0;
    const known = byFolder.get(folder) ?? lineOfHead(disk, folder, since).then((line = 0) => line);
    byFolder.set(folder, known);
    return known;
  };
}

/** One after the other. */
export function verifyOneByOne(disks: VerifyDisks): TargetVerifier {
  return async function* (groups, verification) {
    const verify = verifierOf(disks, verification);
    for (const group of groups) yield await verify(group);
  };
}

async function verifyTarget(target: Target, work: Work): Promise<VerifiedTarget> {
  if (target.kind === "ledger") return { verified: await verifyLedger(target.path, work) };
  const { path } = target;
  const doubtful = (what: string, says: string) => ({ verified: inDoubt(path, what, says) });
  if (target.kind === "unread") return doubtful("unread", `the folder cannot be read: ${target.why}`);
  const bytes = await bytesOf(path, work.disks.disk);
  if ("why" in bytes) return doubtful("unread", `it cannot be read: ${bytes.why}`);
  const text = textOf(bytes.bytes);
  if (target.kind === "found" && !looksLikeRecord(text ?? latin(bytes.bytes))) {
    return { verified: { path, outcome: "passed over", what: "no record in it", doubts: [] } };
  }
  if (text === undefined) return doubtful("damaged", "its bytes are no UTF-8 text");
  return verifyText({ text, bytes: bytes.bytes }, path, work);
}

type FileText = { text: string; bytes: Uint8Array };

async function verifyText({ text, bytes }: FileText, path: string, work: Work): Promise<VerifiedTarget> {
  const read = work.read(text, path);
  const isSigned = "record" in read && read.record.signOff.signatures.length > 0;
  const table = isSigned ? await work.findSigners(path) : undefined;
  const signers = table?.signers;
  const { softwareVersion, now } = work;
  const ofPage = await work.filedAs(path);
  const line = ofPage?.line;
  const isFiled = line?.fileSha256 === fileDigest(bytes).sha256;
  if (line?.action === "withdrawn" && isFiled) return { verified: withdrawn(path, line), table };
  const isKnown = isFiled && (line?.number ?? 0) <= (await work.knownUntil(placeInFolder(path).folder));
  const filed = isFiled ? { filedBy: line?.number, filedAt: line?.at } : {};
  const options = { softwareVersion, signers, now, isKnown, read, ...filed };
  const { doubts, note } = await everyDoubt(work.verify(text, path, options));
  if (table?.unusable !== undefined) doubts.push({ about: "signatures", place: table.path, says: table.unusable });
  if (line !== undefined && !isFiled) doubts.push(notFiled(line.number));
  const what =
    "record" in read ? verifiedWords(read.record, isFiled ? ofPage : undefined) : "no record that can be read";
  return { verified: { path, outcome: doubts.length === 0 ? "ok" : "doubt", what, doubts, note }, table };
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
async function verifyLedger(folder: string, { disks, notedHead, since }: Work): Promise<Verified> {
  const doubts = [...(await checkFolder(disks.filing, folder))];
  for (const noted of [notedHead, since]) {
    if (noted !== undefined) doubts.push(...(await checkLedgerHead(disks.filing, folder, noted)));
  }
  const { lines, fingerprint } = await ledgerHead(disks.filing, folder);
  const note = await signersChanged(disks.filing, folder);
  const what = `ledger of ${counted(lines, "line")}, head ${fingerprint}`;
  return { path: `${folder}/${ledgerName}`, outcome: doubts.length === 0 ? "ok" : "doubt", what, doubts, note };
}

function inDoubt(path: string, what: string, says: string): Verified {
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
