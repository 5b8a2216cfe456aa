import { open, readdir, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { CannotWrite, type Disk, type FoundFile, type NewFile, type PartedDisk, standardInput } from "../jobs/disk.ts";
import { removeLeftOvers, temporaryBeside } from "./left-overs.ts";
import { makeFolder } from "./make-folder.ts";
import { readRegularFile } from "./read-regular-file.ts";
import { streamTogether } from "./stream-together.ts";

/** The real disk. */
export const nodeDisk: Disk & PartedDisk = {
  read: async (path, isWanted = () => true) => {
    if (path === "-") return { isFolder: false, files: [await inputFile()] };
    const found = await stat(path).catch(() => undefined);
    if (found === undefined) return undefined;
    if (!found.isDirectory()) return { isFolder: false, files: [await fileAt(path)] };
    const names = (await readdir(path)).filter(isWanted).sort();
    const files = await Promise.all(names.map((name) => fileIn(path, name)));
    return { isFolder: true, files: files.filter((file) => file !== undefined) };
  },
  namesIn: (folder) => readdir(folder).catch(() => undefined),
  writeTogether,
  streamTogether,
};

async function inputFile(): Promise<FoundFile> {
  const parts: Uint8Array[] = [];
  for await (const part of process.stdin) parts.push(part as Uint8Array);
  return { name: standardInput, path: standardInput, bytes: Buffer.concat(parts) };
}

/** A file of a folder, a symbolic link to one too; nothing for a folder below and for a link that leads nowhere. */
async function fileIn(folder: string, name: string) {
  const path = join(folder, name);
  const found = await stat(path).catch(() => undefined);
  return found?.isFile() ? fileAt(path) : undefined;
}

async function fileAt(path: string): Promise<FoundFile> {
  return { name: basename(path), path, bytes: await readRegularFile(path) };
}

/** Each file is written beside its place and moved there when all of them are whole on the disk. */
async function writeTogether(files: readonly NewFile[]): Promise<void> {
  const temporary = files.map(({ path }) => temporaryBeside(path));
  try {
    await Promise.all(files.map(({ path }) => refuseFolder(path)));
    for (const [index, { path, text }] of files.entries()) {
      await makeFolder(dirname(path));
      await writeDurably(temporary[index] as string, text);
    }
    for (const [index, { path }] of files.entries()) await rename(temporary[index] as string, path);
    await removeLeftOvers(files.map(({ path }) => path));
  } catch (fault) {
    throw new CannotWrite(fault instanceof Error ? fault.message : String(fault));
  } finally {
    await Promise.all(temporary.map(removed));
  }
}

/** What cannot be removed was never made: the fault of making it is the one to be told. */
async function removed(path: string): Promise<void> {
  await rm(path, { force: true }).catch(() => undefined);
}

/** A folder in the place of one file would stop the moves after the others are made. */
async function refuseFolder(path: string): Promise<void> {
  const found = await stat(path).catch(() => undefined);
  if (found?.isDirectory()) throw new Error(`a folder is in the place of ${path}`);
}

async function writeDurably(path: string, text: string | Uint8Array): Promise<void> {
  const file = await open(path, "wx");
  try {
    await file.writeFile(text);
    await file.sync();
  } finally {
    await file.close();
  }
}
