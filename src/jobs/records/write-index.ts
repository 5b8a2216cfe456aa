import type { FilingDisk } from "../../filing/filing-disk.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { type IndexRow, indexRow } from "../../report/columns/index-columns.tsx";
import { renderIndex } from "../../report/index-page.tsx";
import type { Disk, PartedDisk } from "../disk.ts";
import { removeOtherParts } from "../filing/remove-other-parts.ts";
import { isKept } from "../filing/write-derived.ts";
import { writeOrTell } from "../write-or-tell.ts";

export type { IndexRow } from "../../report/columns/index-columns.tsx";

type Disks = {
  disk: Pick<Disk, "read"> & PartedDisk;
  filing: Pick<FilingDisk, "filesBelow" | "namesIn" | "remove">;
};

/** Where `report` puts its pages: a folder a tag, and no deeper. */
const reportedPage = /^(?!index-parts\/records-\d+\.html$)[^/]+\/[^/]+\.html$/u;

/** Writes the page that lists every record of a folder, those of this run and those that lay there before; its parts too. */
export async function writeIndex(
  { disk, filing }: Disks,
  folder: string,
  written: readonly IndexRow[],
  problems: ProblemList,
): Promise<void> {
  const rows = new Map(written.map((row) => [row.page, row]));
  const files = ((await filing.filesBelow(folder)) ?? []).filter((file) => reportedPage.test(file) && !rows.has(file));
  if (files.length > 0) await addRowsOf(files, { disk, folder }, rows);
  const index = `${folder}/index.html`;
  if (await isKept(disk, index, problems)) return;
  const { page, parts } = renderIndex([...rows.values()]);
  const made = [
    { path: index, parts: () => [page] },
    ...parts.map(({ path, render }) => ({ path: `${folder}/${path}`, parts: () => [render()] })),
  ];
  const isWritten = await writeOrTell(() => disk.streamTogether(made), index, problems);
  if (isWritten) await removeOtherParts(filing, `${folder}/index-parts`, made);
}

/** A record that is alone in its folder does without the schema, which is loaded here. */
async function addRowsOf(
  files: readonly string[],
  { disk, folder }: { disk: Disks["disk"]; folder: string },
  rows: Map<string, IndexRow>,
): Promise<void> {
  const { readSealedRecord } = await import("../../record/read-sealed-record.ts");
  for (const file of files) {
    const [found] = (await disk.read(`${folder}/${file}`))?.files ?? [];
    const read = found && readSealedRecord(new TextDecoder().decode(found.bytes), file);
    if (read !== undefined && "record" in read) rows.set(file, indexRow(read.record, file));
  }
}
