import type { ProblemList } from "../../problems/problem-list.ts";
import { counted } from "../../units/counted.ts";
import { tableNamed } from "../../workbook/files/table-named.ts";
import { type AskedCalibration, isAsked, type NamedCalibration } from "../../workbook/named-calibrations.ts";
import { withoutEnding } from "../../workbook/read-tables.ts";
import type { Disk } from "../disk.ts";
import { recordPlace } from "../records/record-place.ts";
import { namesInWorkbook } from "./read-workbook.ts";

/** What is read as one: a folder or a file, or files that together are the tables of a workbook. */
export type WorkbookGroup = { path: string; disk: Disk };

/**
 * Several paths as the workbooks that they are: files named after tables are one workbook, and any other file is a lone
 * table of readings of its own. Two records that would get one name are a problem, and then nothing is given: the one
 * would be written over the other.
 */
export async function workbookGroups(
  disk: Disk,
  paths: readonly string[],
  asked: AskedCalibration,
  problems: ProblemList,
): Promise<readonly WorkbookGroup[]> {
  const [first = "", ...more] = paths;
  if (more.length === 0) return [{ path: first, disk }];
  const tables = paths.map((path) => tableNamed(withoutEnding(path.split(/[\\/]/u).at(-1) ?? path)));
  if (tables.some((table) => table !== undefined && table !== "readings")) {
    return [{ path: first, disk: joined(disk, paths) }];
  }
  const kept = keepingInput(disk);
  return (await isAnyNameTwice(kept, paths, asked, problems)) ? [] : paths.map((path) => ({ path, disk: kept }));
}

/** Names are compared as the files of the records will be, on a disk that does not tell capitals apart. */
async function isAnyNameTwice(
  disk: Disk,
  paths: readonly string[],
  asked: AskedCalibration,
  problems: ProblemList,
): Promise<boolean> {
  const firstByPlace = new Map<string, { path: string; index: number }>();
  let isAny = false;
  for (const [index, path] of paths.entries()) {
    const names = (await namesInWorkbook(disk, path, asked)).filter((named) => isNamed(named) && isAsked(named, asked));
    const twins = names.flatMap(({ tag, calibration }) => {
      const place = recordPlace("", { instrument: { tag }, calibration: { calibration } }).toLowerCase();
      const first = firstByPlace.get(place);
      if (first === undefined) firstByPlace.set(place, { path, index });
      return first === undefined || first.index === index ? [] : [{ tag, calibration, first: first.path }];
    });
    const [twin, ...others] = twins;
    if (twin === undefined) continue;
    isAny = true;
    const more = others.length === 0 ? "" : `, and so would ${counted(others.length, "other")}`;
    problems.add("options/one-name", { file: path }, { values: { ...twin, more } });
  }
  return isAny;
}

/** What has no number, or no tag, gives no record, and is told where it is read. */
function isNamed({ tag, calibration }: NamedCalibration): boolean {
  return tag !== "" && calibration !== "";
}

/** What comes on the standard input comes once: it is kept for whoever reads it again. */
function keepingInput(disk: Disk): Disk {
  let input: ReturnType<Disk["read"]> | undefined;
  return {
    ...disk,
    read: (path, isWanted) => {
      if (path !== "-") return disk.read(path, isWanted);
      input ??= disk.read(path, isWanted);
      return input;
    },
  };
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
