import { open, rename, rm, stat } from "node:fs/promises";
import { dirname } from "node:path";
import { CannotWrite, type PartedFile } from "../jobs/disk.ts";
import { removeLeftOvers, temporaryBeside } from "./left-overs.ts";
import { makeFolder } from "./make-folder.ts";

/**
 * Writes each file beside its place, a part at a time, and moves them there when all of them are whole on the disk.
 *
 * @throws CannotWrite where the disk refuses; whatever the making of a part throws; in both cases no file is in its place
 */
export async function streamTogether(files: readonly PartedFile[]): Promise<void> {
  const begun = files.map(({ path, parts }) => ({ path, parts, temporary: temporaryBeside(path) }));
  try {
    for (const { path } of begun) await refuseFolder(path);
    for (const { path, parts, temporary } of begun) {
      await orRefused(makeFolder(dirname(path)));
      await writeParts(temporary, parts());
    }
    for (const { path, temporary } of begun) await orRefused(rename(temporary, path));
    await removeLeftOvers(files.map(({ path }) => path));
  } finally {
    await Promise.all(begun.map(({ temporary }) => rm(temporary, { force: true }).catch(() => undefined)));
  }
}

async function writeParts(path: string, parts: ReturnType<PartedFile["parts"]>): Promise<void> {
  const file = await orRefused(open(path, "wx"));
  try {
    for await (const part of parts) await orRefused(file.writeFile(part));
    await orRefused(file.sync());
  } finally {
    await file.close();
  }
}

/** A folder in the place of one file would stop the moves after the others are made. */
async function refuseFolder(path: string): Promise<void> {
  const found = await stat(path).catch(() => undefined);
  if (found?.isDirectory()) throw new CannotWrite(`a folder is in the place of ${path}`);
}

async function orRefused<Result>(done: Promise<Result>): Promise<Result> {
  try {
    return await done;
  } catch (fault) {
    throw new CannotWrite(fault instanceof Error ? fault.message : String(fault));
  }
}
