import { canonicalText } from "../proof/canonical-text.ts";
import { CannotFile } from "./cannot-file.ts";
import type { FilingDisk } from "./filing-disk.ts";
import { lineHash } from "./ledger-line.ts";

/** The name of the lock inside a folder; what begins with it was left by a lock that was broken. */
export const lockName = "filing.lock";

/** How long something unreadable may keep a folder until another gives up, and after which somebody is told. */
const patience = { unread: 30_000, tell: 2_000 } as const;
/** A lock is kept for as long as it takes to file one page, some milliseconds: one that is there for this long, by the
 * clock of whoever waits, was left behind, though a process of its number runs: numbers are used again. Whoever holds
 * it all the same is told that it was lost before anything is entered. Own choice. */
const leftBehindMilliseconds = 60_000;

type Claim = { host: string; process: number; at: string; id: string };

/** A lock that is held: `check` throws if it was lost; `sweep` takes away what ended processes left of theirs. */
export type HeldLock = { check: () => Promise<void>; sweep: () => Promise<void> };

/** Does something that no other process may do at the same time to this folder. */
export async function withFilingLock<Result>(
  disk: FilingDisk,
  folder: string,
  work: (lock: HeldLock) => Promise<Result>,
): Promise<Result> {
  const path = `${folder}/${lockName}`;
  const claim = claimText(disk);
  await acquire(disk, path, claim);
  const isHeld = async () => (await textOf(disk, path)) === claim;
  try {
    return await work({
      check: async () => {
        if (!(await isHeld())) throw new CannotFile("filing/lock-lost", { path });
      },
      sweep: () => sweep(disk, folder, markerOf(path, claim)),
    });
  } finally {
    if (await isHeld()) await disk.remove(path);
  }
}

function claimText(disk: FilingDisk): string {
  const claim: Claim = { host: disk.host, process: disk.process, at: disk.now(), id: disk.unique() };
  return canonicalText(claim);
}

async function acquire(disk: FilingDisk, path: string, claim: string): Promise<void> {
  let watched: { text?: string | undefined; since: number; isTold: boolean } = { text: "", since: 0, isTold: false };
  while (!(await disk.createOnce(path, claim, "derived"))) {
    const text = await textOf(disk, path);
    if (text !== watched.text) watched = { text, since: disk.elapsedMilliseconds(), isTold: false };
    const waited = disk.elapsedMilliseconds() - watched.since;
    if (text === undefined) {
      await waitUnread(disk, path, waited);
      continue;
    }
    if (isLeftBehind(disk, text, waited)) {
      await breakLock(disk, path, text, waited);
      continue;
    }
    if (waited > patience.tell && !watched.isTold) {
      disk.tellWaiting(holderText(text));
      watched.isTold = true;
    }
    await disk.pause();
  }
}

/** A lock that is gone when it is read was just given back; a link that leads nowhere is there, and never read. */
async function waitUnread(disk: FilingDisk, path: string, waited: number): Promise<void> {
  if (waited > patience.unread) throw new CannotFile("filing/locked", { holder: "something unreadable", path });
  await disk.pause();
}

function isLeftBehind(disk: FilingDisk, text: string, waited: number): boolean {
  const claim = claimOf(text);
  return waited > leftBehindMilliseconds || (claim?.host === disk.host && !disk.isRunning(claim.process));
}

/**
 * Removes a lock that was left behind. Of all who see that, only the one that makes the marker named after this very
 * lock may remove it, and only while it is still that lock: a fresh lock is never taken for the old one. A marker whose
 * maker was ended in its turn is broken in the same way.
 */
async function breakLock(disk: FilingDisk, path: string, text: string, waited: number): Promise<void> {
  const marker = markerOf(path, text);
  if (!(await disk.createOnce(marker, claimText(disk), "derived"))) {
    const other = await textOf(disk, marker);
    const waitedForIt = waited - leftBehindMilliseconds;
    if (other !== undefined && isLeftBehind(disk, other, waitedForIt))
      await breakLock(disk, marker, other, waitedForIt);
    else await disk.pause();
    return;
  }
  if ((await textOf(disk, path)) === text) await disk.remove(path);
  await disk.remove(marker);
}

/**
 * Markers of locks that are gone, for only one lock is there at a time and that is ours; and files beside their place,
 * if they are too old to be those of somebody who is about to claim the folder.
 */
async function sweep(disk: FilingDisk, folder: string, ownMarker: string): Promise<void> {
  const paths = ((await disk.namesIn(folder)) ?? []).map((name) => `${folder}/${name}`);
  const markers = paths.filter((path) => path.startsWith(`${folder}/${lockName}.`) && path !== ownMarker);
  for (const path of markers) await disk.remove(path);
  await disk.sweep(folder, leftBehindMilliseconds);
}

function markerOf(path: string, text: string): string {
  return `${path}.${lineHash(text).slice(0, 16)}`;
}

async function textOf(disk: FilingDisk, path: string): Promise<string | undefined> {
  const bytes = await disk.read(path);
  return bytes && new TextDecoder().decode(bytes);
}

function claimOf(text: string): Claim | undefined {
  try {
    const found = JSON.parse(text) as Claim;
    return typeof found.process === "number" && typeof found.host === "string" ? found : undefined;
  } catch {
    return undefined;
  }
}

function holderText(text: string): string {
  const claim = claimOf(text);
  return claim === undefined
    ? "an unknown process"
    : `process ${claim.process} on ${claim.host}, since ${claim.at}`.replace(/\s+/gu, " ");
}
