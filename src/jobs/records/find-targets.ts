import type { FilingDisk, Unread } from "../../filing/filing-disk.ts";
import { indexName } from "../../filing/filing-index.ts";
import { ledgerName } from "../../filing/ledger.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import type { Disk } from "../disk.ts";

/**
 * Something to be verified: a file that was named, one that was found below a folder, or a folder with a ledger; and a
 * folder that cannot be read, with the reason, for what lies in it stays in doubt.
 */
export type Target = { kind: "named" | "found" | "ledger"; path: string } | ({ kind: "unread" } & Unread);

type Disks = { disk: Pick<Disk, "read">; filing: Pick<FilingDisk, "filesBelow"> };

const mayBeRecord = /\.(?:html?|json)$/iu;

/** What is to be verified, each once: ledgers of a folder first, then its files in their order. */
export async function findTargets(
  { disk, filing }: Disks,
  paths: readonly string[],
  problems: ProblemList,
): Promise<readonly Target[]> {
  const byPath = new Map<string, Target>();
  for (const path of paths.map(withoutSlash)) {
    const found = await disk.read(path, () => false);
    if (found === undefined) problems.add("options/no-records", { file: path });
    else if (!found.isFolder) byPath.set(path, { kind: "named", path });
    else {
      const unread: Target[] = [];
      const files = await filing.filesBelow(path, (one) => {
        unread.push({ kind: "unread", path: `${path}/${one.path}`, why: one.why });
      });
      const below = [...targetsBelow(path, files ?? []), ...unread];
      if (below.length === 0) problems.add("options/no-records", { file: path });
      for (const target of below) if (!byPath.has(target.path)) byPath.set(target.path, target);
    }
  }
  return [...byPath.values()];
}

function targetsBelow(folder: string, files: readonly string[]): readonly Target[] {
  const folders = [ledgerName, indexName].flatMap((name) => foldersOf(name, files));
  const pages = files.filter((file) => mayBeRecord.test(file));
  return [
    ...[...new Set(folders)].map((below): Target => ({ kind: "ledger", path: `${folder}${below}` })),
    ...pages.map((file): Target => ({ kind: "found", path: `${folder}/${file}` })),
  ];
}

/** Where records are filed there is a ledger; an index of one without it shows that it was taken away. */
function foldersOf(name: string, files: readonly string[]): readonly string[] {
  return files
    .map((file) => `/${file}`)
    .filter((file) => file.endsWith(`/${name}`))
    .map((file) => file.slice(0, -name.length - 1));
}

function withoutSlash(path: string): string {
  return path.length > 1 ? path.replace(/[\\/]+$/u, "") : path;
}
