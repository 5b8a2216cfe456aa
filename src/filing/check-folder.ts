import { canonicalText } from "../proof/canonical-text.ts";
import type { Doubt } from "../record/doubt.ts";
import { fileDigest } from "../record/file-digest.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import type { ReadRecord } from "../record/written-record.ts";
import { bytesOrWhy } from "./bytes-or-why.ts";
import { checkAmendment } from "./check-amendment.ts";
import { checkLedger } from "./check-ledger.ts";
import { filedPath } from "./filed-path.ts";
import type { FilingDisk } from "./filing-disk.ts";
import { indexName, readIndexText } from "./filing-index.ts";
import { lockName, withFilingLock } from "./filing-lock.ts";
import { indexEntry } from "./index-entry.ts";
import { ledgerName } from "./ledger.ts";
import type { DecidedLine, FiledLine, LedgerLine } from "./ledger-line.ts";
import { readFiledRecord } from "./read-filed-record.ts";
import { textOf } from "./text-of.ts";
import { whatHappened } from "./what-happened.ts";

/** What lies beside the pages by right: kept by filing, or made from the pages at any time; signers speak for themselves. */
const ownNames: readonly string[] = [ledgerName, indexName, "register.html", "register.csv", "due.ics", "signers.csv"];
/** What a process leaves that was ended while it made a file: no record, and swept by a later filing. */
const unfinished = /(?:^|\/)\.[0-9a-f-]{36}\.tmp$/u;
const lockOrMarker = new RegExp(`^${lockName.replace(".", "\\.")}(?:\\.[0-9a-f]{16})*$`, "u");

type Folder = { disk: FilingDisk; path: string; files: readonly string[]; filed: readonly FiledLine[] };

/**
 * Every doubt about a folder of filed records: its ledger, that each page is the one that was filed and lies where it
 * was put, that there is no other file, that each revision says rightly what it amends, and what the index says.
 *
 * It does not look into a page further than to read its record; that is the business of verifying a record.
 */
export async function checkFolder(disk: FilingDisk, path: string): Promise<readonly Doubt[]> {
  const { files, ledger } = await snapshot(disk, path);
  if (files === undefined) return [{ about: "folder", place: path, says: "there is no such folder" }];
  if (!files.includes(ledgerName)) return [{ about: "ledger", place: ledgerName, says: "there is no ledger" }];
  const { lines, doubts } = checkLedger(ledger);
  const filed = lines.filter((line): line is FiledLine => line.action === "filed");
  const folder = { disk, path, files, filed };
  return [...doubts, ...checkOnce(filed), ...checkDecisions(lines), ...(await checkPages(folder, lines))];
}

/** Files and ledger as they were at one moment; where no lock can be made, as on a disk to read from, nobody files. */
async function snapshot(disk: FilingDisk, path: string) {
  const files = await disk.filesBelow(path);
  if (files === undefined || !files.includes(ledgerName)) return { files, ledger: "" };
  const read = async () => ({
    files: (await disk.filesBelow(path)) ?? [],
    ledger: await textOf(disk, `${path}/${ledgerName}`),
  });
  return withFilingLock(disk, path, read).catch(read);
}

function checkOnce(filed: readonly FiledLine[]): readonly Doubt[] {
  const seen = new Set<string>();
  return filed.flatMap(({ tag, calibration, revision, number, path }) => {
    const keys = [JSON.stringify([tag, calibration, revision]), path];
    const isTwice = keys.some((key) => seen.has(key));
    for (const key of keys) seen.add(key);
    if (!isTwice) return [];
    const says = `line ${number} files revision ${revision} of ${calibration} of ${tag} a second time`;
    return [{ about: "ledger" as const, place: ledgerName, says }];
  });
}

/** A decision names the page whose finding it is about. */
function checkDecisions(lines: readonly LedgerLine[]): readonly Doubt[] {
  const key = ({ path, fileSha256, sealSha256, tag, calibration, revision }: LedgerLine) =>
    JSON.stringify([path, fileSha256, sealSha256, tag, calibration, revision]);
  const filed = new Set<string>();
  return lines.flatMap((line) => {
    if (line.action === "filed") filed.add(key(line));
    else if (!filed.has(key(line))) {
      const says = `line ${line.number} decides about a page that no line before it files`;
      return [{ about: "ledger" as const, place: ledgerName, says }];
    }
    return [];
  });
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
  const index = await indexOf(folder, lines);
  for (const line of filed) {
    const found = await readFiledRecord(disk, path, line);
    if ("record" in found) doubts.push(...(await checkRecord(folder, line, found, index)));
    else doubts.push(await whatHappened({ disk, path, filed, strange }, line, found.says));
  }
  const lost = new Set(filed.filter((line) => !files.includes(line.path)).map(({ fileSha256 }) => fileSha256));
  return [...doubts, ...strangeDoubts(strange, filed, lost)];
}

function oddDoubt(place: string): Doubt {
  const says = "this is a link, a pipe or a device: what it shows lies elsewhere, and may change there";
  return { about: "folder", place, says };
}

async function digests({ disk, path }: Folder, files: readonly string[], doubts: Doubt[]) {
  const found = new Map<string, string>();
  for (const file of files) {
    const bytes = await bytesOrWhy(disk, `${path}/${file}`);
    if (bytes === undefined) continue;
    if ("why" in bytes) {
      const says = `the ledger does not name this file, and it cannot be read: ${bytes.why}`;
      doubts.push({ about: "folder", place: file, says });
    } else found.set(file, fileDigest(bytes).sha256);
  }
  return found as ReadonlyMap<string, string>;
}

/** A file that the ledger does not name; one that was moved is told where it is missing. */
function strangeDoubts(
  strange: ReadonlyMap<string, string>,
  filed: readonly FiledLine[],
  lost: ReadonlySet<string>,
): readonly Doubt[] {
  return [...strange].flatMap(([place, sha256]) => {
    if (lost.has(sha256)) return [];
    const twin = filed.find(({ fileSha256 }) => fileSha256 === sha256);
    const says =
      twin === undefined
        ? "the ledger does not name this file: it was added by hand, or its filing was cut off; then file it again"
        : `the ledger does not name this file: it is a copy of ${twin.path}`;
    return [{ about: "folder" as const, place, says }];
  });
}

function isOwn(file: string): boolean {
  return ownNames.includes(file) || lockOrMarker.test(file) || unfinished.test(file);
}

async function indexOf({ disk, path }: Folder, [first]: readonly LedgerLine[]) {
  const text = await textOf(disk, `${path}/${indexName}`);
  return first === undefined ? new Map<number, never>() : readIndexText(text, first);
}

async function checkRecord(
  { disk, path, filed }: Folder,
  line: FiledLine,
  found: ReadRecord,
  index: Awaited<ReturnType<typeof indexOf>>,
): Promise<readonly Doubt[]> {
  const doubt = (says: string): Doubt => ({ about: "folder", place: line.path, says });
  const { record } = found;
  const doubts: Doubt[] = [];
  if (!isOf(line, record)) doubts.push(doubt(`line ${line.number} of the ledger says of it what its record does not`));
  const entry = index.get(line.number);
  if (entry !== undefined && !isSame(entry, indexEntry(line, record))) {
    doubts.push(doubt(`${indexName} says otherwise than the page; delete ${indexName}, it is made anew`));
  }
  if (line.revision === 1) return doubts;
  const before = filed.find(
    ({ tag, calibration, revision }) =>
      tag === line.tag && calibration === line.calibration && revision === line.revision - 1,
  );
  if (before === undefined) return [...doubts, doubt(`revision ${line.revision - 1} was never filed`)];
  const replaced = await readFiledRecord(disk, path, before);
  return "record" in replaced ? [...doubts, ...checkAmendment(replaced, found, line.path)] : doubts;
}

function isOf(line: FiledLine | DecidedLine, record: SealedRecord): boolean {
  return (
    line.path === filedPath(record) &&
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
