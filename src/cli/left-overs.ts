import { readdir, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** Longer than any file takes to be written: what is older belongs to a process that was ended. */
const oldMilliseconds = 10 * 60_000;

const ending = /^\.[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\.tmp$/u;

/** A name beside a file, under which it is written before it is moved to its place. */
export function temporaryBeside(path: string): string {
  return `${path}.${crypto.randomUUID()}.tmp`;
}

/**
 * Removes what ended processes left beside files that were written once more. What cannot be removed stays: it is no
 * file of anybody's, and the one to be written is more than that.
 */
export async function removeLeftOvers(paths: readonly string[], now = Date.now()): Promise<void> {
  for (const folder of new Set(paths.map((path) => dirname(path)))) {
    const names = paths.filter((path) => dirname(path) === folder).map((path) => basename(path));
    for (const found of await readdir(folder).catch(() => [])) {
      const isLeftOver = names.some((name) => found.startsWith(name) && ending.test(found.slice(name.length)));
      if (isLeftOver) await removeOld(join(folder, found), now);
    }
  }
}

async function removeOld(path: string, now: number): Promise<void> {
  const found = await stat(path).catch(() => undefined);
  if (found !== undefined && now - found.mtimeMs > oldMilliseconds)
    await rm(path, { force: true }).catch(() => undefined);
}
