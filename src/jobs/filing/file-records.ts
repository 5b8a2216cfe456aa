import { CannotFile } from "../../filing/cannot-file.ts";
import { type FiledWith, filePage } from "../../filing/file-page.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { type FilingFolder, filingFolder } from "../../filing/filing-folder.ts";
import { headOf, type LedgerHead } from "../../filing/ledger-head.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { checkSeal } from "../../proof/check-seal.ts";
import { signingState } from "../../proof/signing-state.ts";
import type { Doubt } from "../../record/doubt.ts";
import { type Reading, readSealedRecord } from "../../record/read-sealed-record.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { counted } from "../../units/counted.ts";
import { findSigners, type SignersTable } from "../signing/find-signers.ts";
import type { RecordVerifier } from "../signing/verify-record.ts";

export type { FilingDisk, Unread } from "../../filing/filing-disk.ts";

export type FilingOptions = Omit<FiledWith, "signersSha256"> & {
  into: string;
  /** How a page is verified before it is taken: what nobody doubts at that time stands behind every later doubt. */
  verify: RecordVerifier;
  /** Of the program that verifies. */
  softwareVersion: string;
  /** Path of the table of signers, where it lies neither in the folder nor beside the page or in the folder above. */
  signers?: string | undefined;
  /** Called after each page, for whoever shows progress. */
  onFiled?: (done: number, all: number) => void;
};

/** A row a page: what happened to it, and where it lies now. */
export type FiledRow = {
  tag: string;
  calibration: string;
  revision: number;
  outcome: "filed" | "filed already" | "put back";
  path: string;
};

export type Filing = {
  rows: readonly FiledRow[];
  problems: ProblemList;
  /** Head of the ledger after the last of them, to be noted elsewhere; nothing where nothing was filed. */
  head?: LedgerHead;
};

type Page = { path: string; bytes: Uint8Array; record: SealedRecord; signersSha256?: string | undefined };

/** Files pages of issued records into a folder; first revisions first, for a later one rests on the one before it. */
export async function fileRecords(disk: FilingDisk, pages: readonly string[], options: FilingOptions): Promise<Filing> {
  const problems = new ProblemList();
  const { paper, by, into } = options;
  for (const [option, text] of [["--signed-on-paper", paper] as const, ["--by", by] as const]) {
    if (text?.trim() === "") problems.add("filing/words-missing", commandLine, wordsAfter(option));
  }
  if (problems.hasStop) return { rows: [], problems };
  const table = await signersOf(disk, options, problems);
  if (problems.hasStop) return { rows: [], problems };
  const folder = filingFolder(disk, into);
  const rows: FiledRow[] = [];
  const later: { path: string; revision: number }[] = [];
  const file = async (page: Page) => {
    const row = await fileOne(folder, page, options, problems);
    if (row !== undefined) rows.push(row);
    options.onFiled?.(rows.length + problems.all.length, pages.length);
  };
  for (const path of pages) {
    const page = await readPage({ disk, table }, path, options, problems);
    if (page === undefined) continue;
    if (page.record.revision === 1) await file(page);
    else later.push({ path, revision: page.record.revision });
  }
  for (const { path } of later.toSorted((one, other) => one.revision - other.revision)) {
    const page = await readPage({ disk, table }, path, options, problems);
    if (page !== undefined) await file(page);
  }
  return rows.length === 0 ? { rows, problems } : { rows, problems, head: headOf(folder.ledger) };
}

const commandLine = { file: "command line" };

function wordsAfter(option: string) {
  const accepted = option === "--by" ? "a name" : "where the signed paper lies";
  return { values: { option, accepted } };
}

/** The table that was given, or that of the folder into which the pages go; nothing where the page's own is to be asked. */
async function signersOf(
  disk: FilingDisk,
  { into, signers }: FilingOptions,
  problems: ProblemList,
): Promise<SignersTable | undefined> {
  const isMissing = signers === undefined ? new ProblemList() : problems;
  return findSigners(plainDisk(disk), into, signers ?? `${into}/signers.csv`, isMissing);
}

function plainDisk(disk: FilingDisk): Parameters<typeof findSigners>[0] {
  return {
    read: async (path) => {
      const bytes = await disk.read(path);
      return bytes === undefined ? undefined : { isFolder: false, files: [{ name: path, path, bytes }] };
    },
  };
}

type Known = { disk: FilingDisk; table: SignersTable | undefined };

async function readPage(
  known: Known,
  path: string,
  options: FilingOptions,
  problems: ProblemList,
): Promise<Page | undefined> {
  const place = { file: path };
  const bytes = await known.disk.read(path);
  if (bytes === undefined) return void problems.add("options/no-such-record", place);
  const text = new TextDecoder().decode(bytes);
  if (text.trimStart().startsWith("{")) return void problems.add("filing/data-alone", place);
  const found = readSealedRecord(text, path);
  if ("doubts" in found) {
    const says = found.doubts.map((doubt) => doubt.says).join("; ");
    return void problems.add("filing/no-record", place, { values: { says } });
  }
  const { record, written } = found;
  if (checkSeal(written).length > 0) return void problems.add("filing/seal-broken", place);
  const { isIssued, missing } = signingState(record);
  if (!isIssued && options.paper === undefined) {
    const values = { missing: `it is not yet signed as ${missing.join(" and ")}` };
    return void problems.add("filing/not-issued", place, { values });
  }
  const isSigned = record.signOff.signatures.length > 0;
  const table = isSigned ? await tableFor(known, path, problems) : undefined;
  if (isSigned && table === undefined) return undefined;
  if (await isDoubted({ path, text, read: found }, table, known, options, problems)) return undefined;
  return { path, bytes, record, signersSha256: table?.sha256 };
}

/** Signatures that nobody can check are none; the table beside the page serves where the folder has none. */
async function tableFor(
  { disk, table }: Known,
  path: string,
  problems: ProblemList,
): Promise<SignersTable | undefined> {
  return table ?? findSigners(plainDisk(disk), path, undefined, problems);
}

/** Whether anything about a page is doubtful; the first doubt is told, and how many there are. */
async function isDoubted(
  { path, text, read }: { path: string; text: string; read: Reading },
  table: SignersTable | undefined,
  { disk }: Known,
  { verify, softwareVersion }: FilingOptions,
  problems: ProblemList,
): Promise<boolean> {
  const doubts: Doubt[] = [];
  for await (const doubt of verify(text, path, { softwareVersion, signers: table?.signers, now: disk.now(), read })) {
    doubts.push(doubt);
  }
  const [first, ...others] = doubts;
  if (first === undefined) return false;
  const isOfSignature = first.about === "signatures";
  const what = isOfSignature ? first.says : `${first.place}: ${first.says}`;
  const says = others.length === 0 ? what : `${what}; and ${counted(others.length, "further doubt")}`;
  const code = isOfSignature ? "filing/signature-doubtful" : "filing/page-doubtful";
  problems.add(code, { file: path }, { values: { says } });
  return true;
}

async function fileOne(
  folder: FilingFolder,
  page: Page,
  { by, paper }: FilingOptions,
  problems: ProblemList,
): Promise<FiledRow | undefined> {
  try {
    const { outcome, line } = await filePage(folder, page, { by, paper, signersSha256: page.signersSha256 });
    const { tag, calibration, revision, path } = line;
    return { tag, calibration, revision, outcome, path: `${folder.path}/${path}` };
  } catch (fault) {
    if (fault instanceof CannotFile) problems.add(fault.code, { file: page.path }, { values: fault.values });
    else throw fault;
    return undefined;
  }
}
