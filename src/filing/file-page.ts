import { fileDigest } from "../record/file-digest.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import { CannotFile } from "./cannot-file.ts";
import { pagesOf } from "./filed-lines.ts";
import { filedPath } from "./filed-path.ts";
import { changeFolder, type Enter, type FilingFolder } from "./filing-folder.ts";
import { addToIndex } from "./filing-index.ts";
import type { FiledLine } from "./ledger-line.ts";
import { indexRow } from "./make-index-entry.ts";

export type SignedPage = { bytes: Uint8Array; record: SealedRecord };
/** Who files it, where the paper with the signatures lies, and the SHA-256 of the table that its signatures were checked by. */
export type FiledWith = { by?: string | undefined; paper?: string | undefined; signersSha256?: string | undefined };
/** `put back`: the ledger had its line, and the page was missing. */
export type FiledPage = { outcome: "filed" | "filed already" | "put back"; line: FiledLine };

/**
 * Files a page, byte for byte, under a name of its own, and enters that into the ledger; never over another file.
 *
 * Whenever the process is ended: the page is there whole or not at all, and filing it again completes what was begun.
 */
export async function filePage(folder: FilingFolder, page: SignedPage, filedWith: FiledWith): Promise<FiledPage> {
  return changeFolder(folder, async (enter) => {
    const { sha256 } = fileDigest(page.bytes);
    const { tag, calibration, revision } = identityOf(page.record);
    const before = folder.ledger.filed({ tag, calibration, revision });
    if (before !== undefined) return filedBefore(folder, page, sha256, before);
    const like = folder.ledger.tagLike(tag);
    if (like !== undefined) throw new CannotFile("filing/tag-like-another", { tag, like });
    checkRevision(folder, page.record);
    const path = filedPath(page.record, 1 + withdrawnBefore(folder, page.record));
    const isNew = await putDown(folder, path, page.bytes);
    if (!isNew) await checkSame(folder, path, sha256);
    const number = folder.ledger.count + 1;
    const row = indexRow({ number, path, fileSha256: sha256, paper: filedWith.paper }, page.record);
    const line = await entered(enter, page, { path, sha256, rowSha256: row.sha256 }, filedWith);
    await addToIndex(folder, line, row);
    return { outcome: "filed", line };
  });
}

function entered(
  enter: Enter,
  { record }: SignedPage,
  { path, sha256, rowSha256 }: { path: string; sha256: string; rowSha256: string },
  { by, paper, signersSha256 }: FiledWith,
): Promise<FiledLine> {
  return enter<FiledLine>({
    action: "filed",
    path,
    fileSha256: sha256,
    sealSha256: record.seal.sha256,
    ...identityOf(record),
    rowSha256,
    ...(by !== undefined && { by }),
    ...(paper !== undefined && { paper }),
    ...(signersSha256 !== undefined && { signersSha256 }),
  });
}

function identityOf({ instrument, calibration, revision }: SealedRecord) {
  return { tag: instrument.tag, calibration: calibration.calibration, revision };
}

/** How many pages of this very revision were withdrawn, and lie there still. */
function withdrawnBefore({ ledger }: FilingFolder, record: SealedRecord): number {
  const { tag, calibration, revision } = identityOf(record);
  return pagesOf(ledger.linesOf(tag)).withdrawn.filter(
    (line) => line.calibration === calibration && line.revision === revision,
  ).length;
}

async function filedBefore(
  folder: FilingFolder,
  { bytes }: SignedPage,
  sha256: string,
  line: FiledLine,
): Promise<FiledPage> {
  if (sha256 !== line.fileSha256) throw new CannotFile("filing/issued-already", { path: line.path });
  const disposal = pagesOf(folder.ledger.linesOf(line.tag)).disposed.find(({ path }) => path === line.path);
  if (disposal !== undefined) throw new CannotFile("filing/disposed-of", { path: line.path, line: disposal.number });
  const isNew = await putDown(folder, line.path, bytes);
  if (!isNew) await checkSame(folder, line.path, sha256);
  return { outcome: isNew ? "put back" : "filed already", line };
}

/** Only who has the lock puts pages down, so that whatever lies unfinished beside the page was left behind. */
async function putDown({ disk, path: root }: FilingFolder, path: string, bytes: Uint8Array): Promise<boolean> {
  const target = `${root}/${path}`;
  await disk.sweep(target.slice(0, target.lastIndexOf("/")), 0);
  return disk.createOnce(target, bytes, "durable");
}

async function checkSame({ disk, path: root }: FilingFolder, path: string, sha256: string): Promise<void> {
  const there = await disk.read(`${root}/${path}`);
  if (there === undefined || fileDigest(there).sha256 !== sha256)
    throw new CannotFile("filing/issued-already", { path });
}

/** A revision after the first replaces the one before it, which has to be here, and says so by its seal. */
function checkRevision({ ledger }: FilingFolder, { instrument, calibration, revision, amendment }: SealedRecord): void {
  const replaces = amendment?.replaces;
  if (revision === 1 && replaces === undefined) return;
  const before = revision - 1;
  if (replaces === undefined || replaces.revision !== before || replaces.calibration !== calibration.calibration) {
    throw new CannotFile("filing/replaces-nothing", { revision });
  }
  const replaced = ledger.filed({ tag: instrument.tag, calibration: calibration.calibration, revision: before });
  if (replaced === undefined) throw new CannotFile("filing/revision-missing", { revision, before });
  if (replaced.sealSha256 !== replaces.sha256) {
    throw new CannotFile("filing/replaces-another", { before, path: replaced.path });
  }
}
