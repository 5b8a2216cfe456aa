import type { FilingDisk } from "./filing-disk.ts";
import { ledgerName } from "./ledger.ts";
import { type FiledLine, readLedgerLine } from "./ledger-line.ts";
import { textOf } from "./text-of.ts";

/** Where a page lies in a filing folder: the folder, and its path in it, two names long. */
export function placeInFolder(page: string): { folder: string; path: string } {
  const names = page.split(/[\\/]/u);
  return {
    folder: names.slice(0, -2).join("/") || (page.startsWith("/") ? "/" : "."),
    path: names.slice(-2).join("/"),
  };
}

/** Lines by which pages were filed into a folder, in their order; none where there is no ledger that can be read. */
export async function filedLines(disk: Pick<FilingDisk, "read">, folder: string): Promise<readonly FiledLine[]> {
  const texts = (await textOf(disk, `${folder}/${ledgerName}`)).split("\n");
  return texts.flatMap((text) => {
    const line = text === "" ? undefined : readLedgerLine(text);
    return line?.action === "filed" ? [line] : [];
  });
}
