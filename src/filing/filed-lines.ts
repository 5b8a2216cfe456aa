import type { FilingDisk } from "./filing-disk.ts";
import { ledgerName } from "./ledger.ts";
import {
  type DisposedLine,
  type FiledLine,
  type LedgerLine,
  type PageLine,
  readLedgerLine,
  type WithdrawnLine,
} from "./ledger-line.ts";
import { textOf } from "./text-of.ts";

/** Where a page lies in a filing folder: the folder, and its path in it, two names long. */
export function placeInFolder(page: string): { folder: string; path: string } {
  const names = page.split(/[\\/]/u);
  return {
    folder: names.slice(0, -2).join("/") || (page.startsWith("/") ? "/" : "."),
    path: names.slice(-2).join("/"),
  };
}

/** What a ledger says of the pages of its folder. */
export type FiledPages = {
  /** Lines by which pages were filed that count, in their order. */
  standing: readonly FiledLine[];
  /** Those by which pages were withdrawn that count no more. */
  withdrawn: readonly WithdrawnLine[];
  /** Those by which pages were disposed of, which are no longer there. */
  disposed: readonly DisposedLine[];
};

/** What the ledger of a folder says of its pages; nothing where there is no ledger that can be read. */
export async function filedPages(disk: Pick<FilingDisk, "read">, folder: string): Promise<FiledPages> {
  const texts = (await textOf(disk, `${folder}/${ledgerName}`)).split("\n");
  return pagesOf(texts.flatMap((text) => (text === "" ? [] : (readLedgerLine(text) ?? []))));
}

/** Which pages count, by the lines of a ledger: what was said last of a page holds. */
export function pagesOf(lines: readonly LedgerLine[]): FiledPages {
  const last = new Map<string, PageLine>();
  for (const line of lines) {
    if (isOfPage(line) && line.action !== "decided") last.set(line.path, line);
  }
  const lastOnes = [...last.values()];
  const gone = new Set(lastOnes.filter(({ action }) => isGone(action)).map(({ path }) => path));
  return {
    standing: lines.filter((line) => line.action === "filed").filter(({ path }) => !gone.has(path)),
    withdrawn: lastOnes.filter((line) => line.action === "withdrawn"),
    disposed: lastOnes.filter((line) => line.action === "disposed"),
  };
}

/** Whether a line is about a page. */
export function isOfPage(line: LedgerLine): line is PageLine {
  return "path" in line;
}

function isGone(action: PageLine["action"]): boolean {
  return action === "withdrawn" || action === "disposed";
}
