import type { ProblemList } from "../../problems/problem-list.ts";
import { tableNamed } from "../../workbook/files/table-named.ts";
import { withoutEnding } from "../../workbook/read-tables.ts";
import type { Disk } from "../disk.ts";

/** What is read as one: a folder or a file, or files that together are the tables of a workbook. */
export type WorkbookGroup = { path: string; disk: Disk };

/**
 * Several paths as the workbooks that they are: files named after tables are one workbook, and any other file is a lone
 * table of readings of its own. Two that would get one name are a problem.
 */
export function workbookGroups(
  disk: Disk,
  paths: readonly string[],
  { tag, calibration }: { tag?: string | undefined; calibration?: string | undefined },
  problems: ProblemList,
): readonly WorkbookGroup[] {
  const [first = "", ...more] = paths;
  if (more.length === 0) return [{ path: first, disk }];
  const tables = paths.map((path) => tableNamed(nameOf(path)));
  if (tables.some((table) => table !== undefined && table !== "readings")) {
    return [{ path: first, disk: joined(disk, paths) }];
  }
  const names = paths.map((path) => `${tag ?? nameOf(path)} ${calibration ?? nameOf(path)}`);
  const twin = names.findIndex((name, place) => names.indexOf(name) !== place);
  if (twin !== -1) {
    const values = { first: paths[names.indexOf(names[twin] ?? "")] ?? "" };
    problems.add("options/one-name", { file: paths[twin] ?? "" }, { values });
    return [];
  }
  return paths.map((path) => ({ path, disk }));
}

function nameOf(path: string): string {
  return withoutEnding(path.split(/[\\/]/u).at(-1) ?? path);
}

/** Files that lie anywhere, as if they lay in one folder. */
function joined(disk: Disk, paths: readonly string[]): Disk {
  return {
    ...disk,
    read: async () => {
      const found = await Promise.all(paths.map((path) => disk.read(path)));
      const missing = found.indexOf(undefined);
      if (missing !== -1) return disk.read(paths[missing] ?? "");
      return { isFolder: true, files: found.flatMap((one) => one?.files ?? []) };
    },
  };
}
