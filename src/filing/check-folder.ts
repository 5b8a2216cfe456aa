import { canonicalText } from "../proof/canonical-text.ts";
import { signingState } from "../proof/signing-state.ts";
import type { Doubt } from "../record/doubt.ts";
import { fileDigest } from "../record/file-digest.ts";
import { looksLikeRecord } from "../record/looks-like-record.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import type { ReadRecord } from "../record/written-record.ts";
import { bytesOrWhy } from "./bytes-or-why.ts";
import { checkAmendment } from "./check-amendment.ts";
import { checkLedger } from "./check-ledger.ts";
import { checkLines, clocksApart } from "./check-lines.ts";
import { type FiledPages, pagesOf } from "./filed-lines.ts";
import { filedPath } from "./filed-path.ts";
import type { FilingDisk, Unread } from "./filing-disk.ts";
import { type IndexRow, indexName, readIndexText } from "./filing-index.ts";
import { lockName, withFilingLock } from "./filing-lock.ts";
import { ledgerName } from "./ledger.ts";
import type { DisposedLine, FiledLine, LedgerLine } from "./ledger-line.ts";
import { indexEntry } from "./make-index-entry.ts";
import { readFiledRecord } from "./read-filed-record.ts";
import { signersName } from "./signers-changed.ts";
import { textOf } from "./text-of.ts";
import { whatHappened } from "./what-happened.ts";

/** What lies beside the pages by right: kept by filing, or made from the pages at any time; signers speak for themselves. */
const ownNames: readonly string[] = [ledgerName, indexName, "register.html", "register.csv", "due.ics", signersName];
/** Parts of a long register. */
const ownPart = /^register(?:-of-\d{4}-\d\d-\d\d)?-parts\/(?:loops|due|open|late)-\d{3,}\.html$/u;
/** What a process leaves that was ended while it made a file: no record, and swept by a later filing. */
const unfinished = /(?:^|\/)\.[0-9a-f-]{36}\.tmp$/u;
const lockOrMarker = new RegExp(`^${lockName.replace(".", "\\.")}(?:\\.[0-9a-f]{16})*$`, "u");

const mayBeRecord = /\.(?:html?|json)$/iu;
const placeOfPage = /^[^/]+\/[^/]+_r\d+(?:_again\d+)?\.html$/u;

/** A file that the ledger does not name, and whether it is a record or lies where one would. */
type StrangeFile = { sha256: string; isRecord: boolean };

function isLikeRecord(file: string, bytes: Uint8Array): boolean {
  if (placeOfPage.test(file)) return true;
  return mayBeRecord.test(file) && looksLikeRecord(new TextDecoder("latin1").decode(bytes));
}

type Folder = { disk: FilingDisk; path: string; files: readonly string[]; filed: readonly FiledLine[] };

/**
 * Every doubt about a folder of filed records: its ledger, that each page is the one that was filed and lies where it
 * was put, that there is no other file, that each revision says rightly what it amends, and what the index says.
 *
 * It does not look into a page further than to read its record; that is the business of verifying a record.
 */
export async function checkFolder(disk: FilingDisk, path: string): Promise<readonly Doubt[]> {
  const { files, unread, ledger } = await snapshot(disk, path);
  if (files === undefined) return [{ about: "folder", place: path, says: "there is no such folder" }];
  if (!files.includes(ledgerName)) return [{ about: "ledger", place: ledgerName, says: "there is no ledger" }];
  const { lines, doubts } = checkLedger(ledger);
  const filed = lines.filter((line): line is FiledLine => line.action === "filed");
  const folder = { disk, path, files, filed };
  return [...doubts, ...checkLines(lines), ...unread.map(cannotBeRead), ...(await checkPages(folder, lines))];
}

function cannotBeRead({ path, why }: Unread): Doubt {
  return { about: "folder", place: path, says: `the folder cannot be read: ${why}` };
}

/** Files and ledger as they were at one moment; where no lock can be made, as on a disk to read from, nobody files. */
async function snapshot(disk: FilingDisk, path: string) {
  const names = await disk.namesIn(path);
  if (names?.includes(ledgerName) !== true) return { files: names, unread: [], ledger: "" };
  const read = async () => {
    const unread: Unread[] = [];
    const files = (await disk.filesBelow(path, (one) => unread.push(one))) ?? [];
    return { files, unread, ledger: await textOf(disk, `${path}/${ledgerName}`) };
  };
  return withFilingLock(disk, path, read).catch(read);
}

async function checkPages(folder: Folder, lines: readonly LedgerLine[]): Promise<readonly Doubt[]> {
  const { disk, path, files, filed } = folder;
  const known = new Set(filed.map((line) => line.path));
  const odd = await disk.notFilesBelow(path);
  const doubts = odd.map(oddDoubt);
  const strange = await digests(
    folder,
    files.filter((file) => !known.has(file) && !isOwn(file) && !odd.includes(file)),
    doubts,
  );
  const index = await indexOf(folder);
  const { standing, disposed } = pagesOf(lines);
  const disposedBy = new Map(disposed.map((line) => [line.path, line.number]));
  for (const line of filed) {
    const by = disposedBy.get(line.path);
    if (by !== undefined) {
      if (files.includes(line.path)) doubts.push(leftOver(line, by));
      continue;
    }
    const found = await readFiledRecord(disk, path, line);
    if ("record" in found && !standing.includes(line)) doubts.push(...checkWithdrawn(line, found));
    else if ("record" in found)
      doubts.push(...(await checkRecord({ ...folder, standing, disposed }, line, found, index)));
    else doubts.push(await whatHappened({ disk, path, filed, strange }, line, found.says));
  }
  const isLost = ({ path: page }: FiledLine) => !files.includes(page) && !disposedBy.has(page);
  const lost = new Set(filed.filter(isLost).map(({ fileSha256 }) => fileSha256));
  return [...doubts, ...strangeDoubts(strange, filed, lost)];
}

function leftOver({ path }: FiledLine, by: number): Doubt {
  const says = `line ${by} disposed of it, and it is still there: the disposal was cut off, or the page was put back; run spanwright dispose again`;
  return { about: "folder", place: path, says };
}

function oddDoubt(place: string): Doubt {
  const says = "this is a link, a pipe or a device: what it shows lies elsewhere, and may change there";
  return { about: "folder", place, says };
}

async function digests({ disk, path }: Folder, files: readonly string[], doubts: Doubt[]) {
  const found = new Map<string, StrangeFile>();
  for (const file of files) {
    const bytes = await bytesOrWhy(disk, `${path}/${file}`);
    if (bytes === undefined) continue;
    if ("why" in bytes) {
      const says = `the ledger does not name this file, and it cannot be read: ${bytes.why}`;
      if (mayBeRecord.test(file)) doubts.push({ about: "folder", place: file, says });
    } else found.set(file, { sha256: fileDigest(bytes).sha256, isRecord: isLikeRecord(file, bytes) });
  }
  return found as ReadonlyMap<string, StrangeFile>;
}

/**
 * A file that the ledger does not name; one that was moved is told where it is missing. What is neither a record nor in
 * the place of one is passed over: systems and people leave files beside others.
 */
function strangeDoubts(
  strange: ReadonlyMap<string, StrangeFile>,
  filed: readonly FiledLine[],
  lost: ReadonlySet<string>,
): readonly Doubt[] {
  return [...strange].flatMap(([place, { sha256, isRecord }]) => {
    if (lost.has(sha256)) return [];
    const twin = filed.find(({ fileSha256 }) => fileSha256 === sha256);
    if (twin === undefined && !isRecord) return [];
    const says =
      twin === undefined
        ? "the ledger does not name this file: it was added by hand, or its filing was cut off; then file it again"
        : `the ledger does not name this file: it is a copy of ${twin.path}`;
    return [{ about: "folder" as const, place, says }];
  });
}

function isOwn(file: string): boolean {
  return ownNames.includes(file) || ownPart.test(file) || lockOrMarker.test(file) || unfinished.test(file);
}

async function indexOf({ disk, path, filed: [first] }: Folder) {
  const text = await textOf(disk, `${path}/${indexName}`);
  return first === undefined ? new Map<number, IndexRow>() : readIndexText(text, first);
}

async function checkRecord(
  { disk, path, standing, disposed }: Folder & Pick<FiledPages, "standing" | "disposed">,
  line: FiledLine,
  found: ReadRecord,
  index: Awaited<ReturnType<typeof indexOf>>,
): Promise<readonly Doubt[]> {
  const doubt = (says: string): Doubt => ({ about: "folder", place: line.path, says });
  const { record } = found;
  const doubts: Doubt[] = [];
  if (!isOf(line, record)) doubts.push(doubt(otherThanRecord(line)));
  doubts.push(...checkSigned(line, record).map(doubt));
  const row = index.get(line.number);
  if (row !== undefined && !isSame(row.entry, indexEntry(line, record))) {
    doubts.push(doubt(`${indexName} says otherwise than the page; delete ${indexName}, it is made anew`));
  }
  if (line.revision === 1) return doubts;
  const isBefore = ({ tag, calibration, revision }: FiledLine | DisposedLine) =>
    tag === line.tag && calibration === line.calibration && revision === line.revision - 1;
  const before = standing.find(isBefore);
  if (before === undefined && disposed.some(isBefore)) return doubts;
  if (before === undefined) return [...doubts, doubt(`revision ${line.revision - 1} was never filed`)];
  const replaced = await readFiledRecord(disk, path, before);
  return "record" in replaced ? [...doubts, ...checkAmendment(replaced, found, line.path)] : doubts;
}

const otherThanRecord = ({ number }: FiledLine) => `line ${number} of the ledger says of it what its record does not`;

/** A page that was withdrawn is kept as it was filed; what else is doubtful about it is why it was withdrawn. */
function checkWithdrawn(line: FiledLine, { record }: ReadRecord): readonly Doubt[] {
  return isOf(line, record) ? [] : [{ about: "folder", place: line.path, says: otherThanRecord(line) }];
}

/** Somebody answers for each page: by signatures given before it was filed, or on a paper that the ledger names. */
function checkSigned({ number, at, paper }: FiledLine, record: SealedRecord): readonly string[] {
  const { isIssued, missing, given } = signingState(record);
  const late = given.filter(({ signedAt }) => Date.parse(signedAt) - Date.parse(at) > clocksApart);
  const sayings = late.map(
    ({ name, signedAt }) => `${name} signed it at ${signedAt}, after line ${number} filed it at ${at}`,
  );
  if (isIssued || paper !== undefined) return sayings;
  return [
    ...sayings,
    `nobody answers for it: it is not signed as ${missing.join(" and ")}, and line ${number} names no paper with the signatures`,
  ];
}

/** Where it lies by right: under its own name, or under that of a page that takes the place of withdrawn ones. */
function isPathOf(path: string, record: SealedRecord): boolean {
  const [, time] = /_again(\d{1,4})\.html$/u.exec(path) ?? [];
  return path === filedPath(record) || (time !== undefined && path === filedPath(record, Number(time)));
}

function isOf(line: FiledLine, record: SealedRecord): boolean {
  return (
    isPathOf(line.path, record) &&
    line.tag === record.instrument.tag &&
    line.calibration === record.calibration.calibration &&
    line.revision === record.revision &&
    line.sealSha256 === record.seal.sha256
  );
}

/** What was read from a file may be what JSON cannot hold in canonical form: half of a character, a bottomless list. */
function isSame(found: unknown, made: unknown): boolean {
  try {
    return canonicalText(found) === canonicalText(made);
  } catch {
    return false;
  }
}
