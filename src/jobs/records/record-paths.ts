import type { FilingDisk } from "../../filing/filing-disk.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { readSealedRecord } from "../../record/read-sealed-record.ts";
import type { Disk } from "../disk.ts";

type Disks = { disk: Pick<Disk, "read">; filing: Pick<FilingDisk, "filesBelow"> };

const mayBeRecord = /\.(?:html?|json)$/iu;
const wildcard = /[*?]/u;

/**
 * The records that are meant: files as they are named, and of folders and of patterns such as "reports/LT-*" whatever is
 * a record below them. What lies there and is none is passed over and named. A pattern is read here, so that it means the
 * same in every shell.
 */
export async function recordPaths(
  { disk, filing }: Disks,
  given: readonly string[],
  problems: ProblemList,
): Promise<readonly string[]> {
  const paths: string[] = [];
  for (const path of given.map((one) => one.replace(/(?<=.)[\\/]+$/u, ""))) {
    const found = wildcard.test(path) ? undefined : await disk.read(path, () => false);
    if (found === undefined ? !wildcard.test(path) : !found.isFolder) {
      paths.push(path);
      continue;
    }
    const below = found === undefined ? await matching(filing, path) : await filesOf(filing, path);
    const records = await recordsAmong(disk, below, problems);
    if (records.length === 0) problems.add("options/no-records", { file: path });
    paths.push(...records);
  }
  return [...new Set(paths)];
}

async function filesOf(filing: Disks["filing"], folder: string): Promise<readonly string[]> {
  const files = (await filing.filesBelow(folder)) ?? [];
  const prefix = folder === "." ? "" : `${folder}/`;
  return files.filter((file) => mayBeRecord.test(file)).map((file) => `${prefix}${file}`);
}

/** Files that a pattern means, and those below folders that it means. */
async function matching(filing: Disks["filing"], pattern: string): Promise<readonly string[]> {
  const parts = pattern.replaceAll("\\", "/").split("/");
  const first = parts.findIndex((part) => wildcard.test(part));
  const root = parts.slice(0, first).join("/");
  const meant = new RegExp(`^${partsPattern(parts)}(?:/.*)?$`, "u");
  const files = await filesOf(filing, root === "" ? (first === 0 ? "." : "/") : root);
  return files.filter((file) => meant.test(file));
}

function partsPattern(parts: readonly string[]): string {
  return parts
    .map((part) =>
      part === "**"
        ? ".*"
        : part
            .replace(/[.+^${}()|[\]\\]/gu, "\\$&")
            .replaceAll("*", "[^/]*")
            .replaceAll("?", "[^/]"),
    )
    .join("/")
    .replaceAll(".*/", "(?:.*/)?");
}

/** A page and the JSON beside it are one record, and the page stands for both. */
async function recordsAmong(
  disk: Disks["disk"],
  files: readonly string[],
  problems: ProblemList,
): Promise<readonly string[]> {
  const pages = new Set(files.filter((file) => !file.endsWith(".json")).map(withoutEnding));
  const records: string[] = [];
  for (const file of files.filter((one) => !one.endsWith(".json") || !pages.has(withoutEnding(one)))) {
    const [found] = (await disk.read(file))?.files ?? [];
    const read = found && readSealedRecord(new TextDecoder().decode(found.bytes), file);
    if (read !== undefined && "record" in read) records.push(file);
    else problems.add("options/passed-over", { file });
  }
  return records;
}

function withoutEnding(file: string): string {
  return file.replace(mayBeRecord, "");
}
