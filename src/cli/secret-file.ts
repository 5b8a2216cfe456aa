import { link, open, rename, rm, stat } from "node:fs/promises";
import { dirname } from "node:path";
import { CannotWrite } from "../jobs/disk.ts";
import { removeLeftOvers, temporaryBeside } from "./left-overs.ts";
import { makeFolder } from "./make-folder.ts";

const ownerAlone = 0o600;
const othersRights = 0o077;
const allRights = 0o777;

/** A file that its owner alone may read: written beside its place, and linked there only if nothing is there. */
export function writeSecretFile(path: string, text: string): Promise<void> {
  return written(path, text, (temporary) => link(temporary, path));
}

/** The same in the place of the file that is there, in one step. */
export function replaceSecretFile(path: string, text: string): Promise<void> {
  return written(path, text, (temporary) => rename(temporary, path));
}

/** The rights of a file, where others than its owner may read or write it; Windows has no such rights. */
export async function openToOthers(path: string): Promise<string | undefined> {
  if (process.platform === "win32") return undefined;
  const mode = (await stat(path).catch(() => undefined))?.mode ?? ownerAlone;
  return (mode & othersRights) === 0 ? undefined : (mode & allRights).toString(8);
}

async function written(path: string, text: string, put: (temporary: string) => Promise<void>): Promise<void> {
  const temporary = temporaryBeside(path);
  try {
    await makeFolder(dirname(path));
    const file = await open(temporary, "wx", ownerAlone);
    try {
      await file.writeFile(text);
      await file.sync();
    } finally {
      await file.close();
    }
    await put(temporary);
    await removeLeftOvers([path]);
  } catch (fault) {
    throw new CannotWrite(fault instanceof Error ? fault.message : String(fault));
  } finally {
    await rm(temporary, { force: true }).catch(() => undefined);
  }
}
