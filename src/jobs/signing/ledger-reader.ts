import { filedLines, placeInFolder } from "../../filing/filed-lines.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import type { FiledLine } from "../../filing/ledger-line.ts";

/** Finds the line by which a page that lies in a filing folder was filed; each ledger is read once. */
export function ledgerReader(disk: Pick<FilingDisk, "read">): (page: string) => Promise<FiledLine | undefined> {
  const byFolder = new Map<string, Promise<ReadonlyMap<string, FiledLine>>>();
  return async (page) => {
    const { folder, path } = placeInFolder(page);
    const known = byFolder.get(folder) ?? linesByPath(disk, folder);
    byFolder.set(folder, known);
    return (await known).get(path);
  };
}

/** A ledger that cannot be read is told where the ledger itself is verified. */
async function linesByPath(disk: Pick<FilingDisk, "read">, folder: string): Promise<ReadonlyMap<string, FiledLine>> {
  const lines = await filedLines(disk, folder).catch(() => []);
  return new Map(lines.map((line) => [line.path, line]));
}
