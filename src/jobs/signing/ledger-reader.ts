import { filedPages, placeInFolder } from "../../filing/filed-lines.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import type { FiledLine, WithdrawnLine } from "../../filing/ledger-line.ts";

/** What a ledger says of a page: the line that filed it, or the one that withdrew it; and the revision after it. */
export type LineOfPage = { line: FiledLine | WithdrawnLine; replacedBy?: number | undefined };

/** Finds the line of a page that lies in a filing folder; each ledger is read once. */
export function ledgerReader(disk: Pick<FilingDisk, "read">): (page: string) => Promise<LineOfPage | undefined> {
  const byFolder = new Map<string, Promise<ReadonlyMap<string, LineOfPage>>>();
  return async (page) => {
    const { folder, path } = placeInFolder(page);
    const known = byFolder.get(folder) ?? linesByPath(disk, folder);
    byFolder.set(folder, known);
    return (await known).get(path);
  };
}

/** A ledger that cannot be read is told where the ledger itself is verified. */
async function linesByPath(disk: Pick<FilingDisk, "read">, folder: string): Promise<ReadonlyMap<string, LineOfPage>> {
  const { standing, withdrawn } = await filedPages(disk, folder).catch(() => ({ standing: [], withdrawn: [] }));
  const key = ({ tag, calibration }: FiledLine) => JSON.stringify([tag, calibration]);
  const last = new Map(standing.map((line) => [key(line), line.revision]));
  const ofStanding = standing.map((line): [string, LineOfPage] => {
    const revision = last.get(key(line)) ?? line.revision;
    return [line.path, { line, replacedBy: revision > line.revision ? revision : undefined }];
  });
  return new Map([...ofStanding, ...withdrawn.map((line): [string, LineOfPage] => [line.path, { line }])]);
}
