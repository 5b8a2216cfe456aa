import type { Dirent } from "node:fs";
import { appendFile, link, open, readdir, rename, rm, stat, truncate } from "node:fs/promises";
import { hostname } from "node:os";
import { dirname, join } from "node:path";
import type { FilingDisk, Unread } from "../jobs/filing/file-records.ts";
import { localDateTime } from "./local-date-time.ts";
import { makeFolder } from "./make-folder.ts";
import { readRegularFile } from "./read-regular-file.ts";

const unfinished = /^\.[0-9a-f-]{36}\.tmp$/u;
const pauseMilliseconds = { least: 2, most: 20 } as const;

/** The real disk, clock and processes; `tell` is given the sentence for whoever has to wait. */
export function nodeFilingDisk(tell: (text: string) => void): FilingDisk {
  return {
    read: (path) => readRegularFile(path).catch(noFileThere),
    readFrom,
    changedAt,
    namesIn: (folder) => readdir(folder).catch(nothingThere),
    filesBelow: (folder, tell) => namesBelow(folder, (entry) => !entry.isDirectory(), tell),
    notFilesBelow: async (folder) =>
      (await namesBelow(folder, (entry) => !entry.isDirectory() && !entry.isFile(), passOver)) ?? [],
    createOnce,
    append,
    cut,
    replace,
    remove: (path) => rm(path, { force: true }),
    sweep,
    now: () => localDateTime(new Date()),
    elapsedMilliseconds: () => performance.now(),
    pause,
    unique: () => crypto.randomUUID(),
    host: hostname(),
    process: process.pid,
    isRunning,
    tellWaiting: (holder) => tell(`waiting for ${holder}, who files into the same folder`),
  };
}

async function readFrom(path: string, start: number): Promise<Uint8Array | undefined> {
  const file = await open(path, "r").catch(nothingThere);
  if (file === undefined) return start === 0 ? new Uint8Array() : undefined;
  try {
    const length = (await file.stat()).size - start;
    if (length < 0) return undefined;
    const bytes = new Uint8Array(length);
    let done = 0;
    while (done < length) {
      const { bytesRead } = await file.read(bytes, done, length - done, start + done);
      if (bytesRead === 0) break;
      done += bytesRead;
    }
    return bytes.subarray(0, done);
  } finally {
    await file.close();
  }
}

/** By the disk's clock; the second of the two nobody can set back. */
async function changedAt(path: string): Promise<number | undefined> {
  const found = await stat(path).catch(nothingThere);
  return found && Math.max(found.mtimeMs, found.ctimeMs);
}

async function namesBelow(
  folder: string,
  isWanted: (entry: Dirent) => boolean,
  tell?: (unread: Unread) => void,
): Promise<readonly string[] | undefined> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(nothingThere);
  if (entries === undefined) return undefined;
  const names = entries.filter(isWanted).map(({ name }) => name);
  const below = [...entries.filter((entry) => entry.isDirectory()).map(({ name }) => name)];
  for (let path = below.pop(); path !== undefined; path = below.pop()) {
    for (const entry of await entriesOf(folder, path, tell)) {
      if (isWanted(entry)) names.push(`${path}/${entry.name}`);
      if (entry.isDirectory()) below.push(`${path}/${entry.name}`);
    }
  }
  return names.sort();
}

/** Of folders that cannot be read `filesBelow` tells. */
const passOver = () => undefined;

/** None where the folder went away meanwhile, or cannot be read and somebody is told so. */
async function entriesOf(root: string, path: string, tell?: (unread: Unread) => void): Promise<readonly Dirent[]> {
  try {
    return (await readdir(join(root, path), { withFileTypes: true }).catch(nothingThere)) ?? [];
  } catch (fault) {
    if (tell === undefined) throw fault;
    tell({ path, why: fault instanceof Error ? fault.message : String(fault) });
    return [];
  }
}

/** Written beside its place and linked there: a link is made in one step, and never over another file. */
async function createOnce(
  path: string,
  content: Uint8Array | string,
  keeping: "durable" | "derived",
): Promise<boolean> {
  if (await isThere(path)) return false;
  const folder = dirname(path);
  await makeFolderDurably(folder);
  const temporary = join(folder, `.${crypto.randomUUID()}.tmp`);
  try {
    await writeNew(temporary, content, keeping);
    await link(temporary, path);
  } catch (fault) {
    if (codeOf(fault) === "EEXIST") return false;
    throw fault;
  } finally {
    await rm(temporary, { force: true });
  }
  if (keeping === "durable") await syncFolder(folder);
  return true;
}

async function append(path: string, text: string, keeping: "durable" | "derived"): Promise<void> {
  if (keeping === "derived") return appendFile(path, text);
  const isNew = !(await isThere(path));
  const file = await open(path, "a");
  try {
    await file.writeFile(text);
    await file.sync();
  } finally {
    await file.close();
  }
  if (isNew) await syncFolder(dirname(path));
}

async function cut(path: string, length: number): Promise<void> {
  await truncate(path, length);
  const file = await open(path, "r+");
  try {
    await file.sync();
  } finally {
    await file.close();
  }
}

async function replace(path: string, text: string): Promise<void> {
  const temporary = join(dirname(path), `.${crypto.randomUUID()}.tmp`);
  try {
    await writeNew(temporary, text, "derived");
    await rename(temporary, path);
  } finally {
    await rm(temporary, { force: true });
  }
}

async function sweep(folder: string, ageMilliseconds: number): Promise<void> {
  const names = (await readdir(folder).catch(nothingThere)) ?? [];
  for (const name of names.filter((one) => unfinished.test(one))) {
    const path = join(folder, name);
    const isOld = ageMilliseconds === 0 || (await ageOf(path)) >= ageMilliseconds;
    if (isOld) await rm(path, { force: true });
  }
}

/** By the clocks of this machine and of the disk, which may differ; a file that is gone has no age. */
async function ageOf(path: string): Promise<number> {
  const found = await stat(path).catch(nothingThere);
  return found === undefined ? 0 : Date.now() - found.mtimeMs;
}

function pause(): Promise<void> {
  const { least, most } = pauseMilliseconds;
  return new Promise((settle) => setTimeout(settle, least + Math.random() * (most - least)));
}

/** Signal 0 is not sent: it asks whether the process is there. One of another user's may not be asked, and is there. */
function isRunning(id: number): boolean {
  try {
    process.kill(id, 0);
    return true;
  } catch (fault) {
    return codeOf(fault) !== "ESRCH";
  }
}

async function writeNew(path: string, content: Uint8Array | string, keeping: "durable" | "derived"): Promise<void> {
  const file = await open(path, "wx");
  try {
    await file.writeFile(content);
    if (keeping === "durable") await file.sync();
  } finally {
    await file.close();
  }
}

/** A folder outlasts a power cut when the one that it was made in does. */
async function makeFolderDurably(folder: string): Promise<void> {
  const first = await makeFolder(folder);
  if (first !== undefined) await syncFolder(dirname(first));
}

/** Windows opens no folder; there the file system keeps the order by itself. */
async function syncFolder(folder: string): Promise<void> {
  if (process.platform === "win32") return;
  const handle = await open(folder, "r");
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

async function isThere(path: string): Promise<boolean> {
  return (await stat(path).catch(nothingThere)) !== undefined;
}

function nothingThere(fault: unknown): undefined {
  if (codeOf(fault) === "ENOENT") return undefined;
  throw fault;
}

/** A folder is no file either. */
function noFileThere(fault: unknown): undefined {
  return codeOf(fault) === "EISDIR" ? undefined : nothingThere(fault);
}

function codeOf(fault: unknown): unknown {
  return fault instanceof Error && "code" in fault ? fault.code : undefined;
}
