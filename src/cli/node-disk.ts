import { readdir, stat } from "node:fs/promises";
import { basename, join } from "node:path";
import { type Disk, type FoundFile, type NewFile, type PartedDisk, standardInput } from "../jobs/disk.ts";
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

/** Texts that are whole already are files of one part. */
function writeTogether(files: readonly NewFile[]): Promise<void> {
  return streamTogether(files.map(({ path, text }) => ({ path, parts: () => [text] })));
}
