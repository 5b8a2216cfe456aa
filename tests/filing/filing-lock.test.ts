import { existsSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { lockName, withFilingLock } from "../../src/filing/filing-lock.ts";
import { diskWith, temporaryFolder } from "./sample-pages.ts";

/** A process that is there, and one that cannot be. */
const alive = process.pid;
const ended = 2 ** 30;

const claim = (host: string, process: number, id = "one") =>
  JSON.stringify({ at: "2026-11-25T10:00:00.000+01:00", host, id, process });

/** A disk whose clock goes on by so much with each pause. */
function hastyDisk(milliseconds: number) {
  let now = 0;
  const told: string[] = [];
  const disk = diskWith({
    host: "here",
    elapsedMilliseconds: () => now,
    pause: async () => {
      now += milliseconds;
    },
    tellWaiting: (holder) => told.push(holder),
  });
  return { disk, told };
}

test("the lock is there while the work is done, says whose it is, and is gone afterwards", async () => {
  const folder = temporaryFolder();
  const { disk } = hastyDisk(0);
  const during = await withFilingLock(disk, folder, async () => readFileSync(join(folder, lockName), "utf8"));
  expect(JSON.parse(during)).toMatchObject({ host: "here", process: alive });
  expect(readdirSync(folder)).toEqual([]);
});

test("the lock is gone after a fault too, and the fault is passed on", async () => {
  const folder = temporaryFolder();
  const failing = withFilingLock(diskWith(), folder, () => Promise.reject(new Error("no room")));
  await expect(failing).rejects.toThrow("no room");
  expect(readdirSync(folder)).toEqual([]);
});

test("many at once in one process: never two at the same time", async () => {
  const folder = temporaryFolder();
  let inside = 0;
  let most = 0;
  const work = async () => {
    inside += 1;
    most = Math.max(most, inside);
    await new Promise((settle) => setTimeout(settle, 1));
    inside -= 1;
  };
  await Promise.all(Array.from({ length: 20 }, () => withFilingLock(diskWith(), folder, work)));
  expect(most).toBe(1);
});

test("a lock whose process of this machine has ended is broken at once", async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, lockName), claim("here", ended));
  const { disk, told } = hastyDisk(0);
  expect(await withFilingLock(disk, folder, async () => "done")).toBe("done");
  expect(told).toEqual([]);
  expect(readdirSync(folder)).toEqual([]);
});

test("a lock that a process of this machine keeps is waited for, told once, and broken in the end: numbers are used again", async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, lockName), claim("here", alive));
  const { disk, told } = hastyDisk(100);
  expect(await withFilingLock(disk, folder, async () => "done")).toBe("done");
  expect(told).toEqual([`process ${alive} on here, since 2026-11-25T10:00:00.000+01:00`]);
  expect(readdirSync(folder)).toEqual([]);
});

test.each([
  ["of another machine", claim("elsewhere", alive)],
  ["that cannot be read", ""],
])("a lock %s is left alone for a minute, and broken after it", async (_, text) => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, lockName), text);
  const { disk } = hastyDisk(1_000);
  expect(await withFilingLock(disk, folder, async () => disk.elapsedMilliseconds())).toBe(61_000);
  expect(readdirSync(folder)).toEqual([]);
});

test("a lock of another machine that changes hands meanwhile is never broken", async () => {
  const folder = temporaryFolder();
  const path = join(folder, lockName);
  writeFileSync(path, claim("elsewhere", 1, "first"));
  let pauses = 0;
  let now = 0;
  const disk = diskWith({
    elapsedMilliseconds: () => now,
    pause: async () => {
      now += 1_000;
      pauses += 1;
      if (pauses % 50 === 0 && pauses <= 250) writeFileSync(path, claim("elsewhere", 1, `number ${pauses}`));
    },
  });
  await withFilingLock(disk, folder, async () => undefined);
  // Five hands of fifty seconds each, and the last for more than a minute.
  expect(pauses).toBe(5 * 50 + 61);
});

test("of many that see a lock left behind none takes a fresh one for it", async () => {
  for (let round = 0; round < 20; round += 1) {
    const folder = temporaryFolder();
    writeFileSync(join(folder, lockName), claim("here", ended, String(round)));
    let inside = 0;
    let most = 0;
    const work = async () => {
      inside += 1;
      most = Math.max(most, inside);
      await new Promise((settle) => setTimeout(settle, 1));
      inside -= 1;
    };
    const slow = <Words extends readonly unknown[], Result>(step: (...words: Words) => Promise<Result>) => {
      return async (...words: Words) => {
        await new Promise((settle) => setTimeout(settle, Math.random() * 4));
        return step(...words);
      };
    };
    const { read, remove, createOnce } = diskWith();
    const disk = diskWith({ host: "here", read: slow(read), remove: slow(remove), createOnce: slow(createOnce) });
    await Promise.all(Array.from({ length: 8 }, () => withFilingLock(disk, folder, work)));
    expect(most).toBe(1);
    expect(readdirSync(folder)).toEqual([]);
  }
});

test("whoever was ended while breaking a lock does not stand in the way either", async () => {
  const folder = temporaryFolder();
  const path = join(folder, lockName);
  writeFileSync(path, claim("here", ended));
  const stopped = diskWith({ host: "here", process: ended, remove: () => Promise.reject(new Error("ended")) });
  await expect(withFilingLock(stopped, folder, async () => undefined)).rejects.toThrow("ended");
  expect(readdirSync(folder)).toHaveLength(2);
  expect(await withFilingLock(diskWith({ host: "here" }), folder, async () => "done")).toBe("done");
  expect(readdirSync(folder)).toEqual([]);
});

test("who lost the lock is told before anything is entered, and leaves the other's lock alone", async () => {
  const folder = temporaryFolder();
  const path = join(folder, lockName);
  const lost = withFilingLock(diskWith(), folder, async ({ check }) => {
    await check();
    writeFileSync(path, claim("elsewhere", 1));
    await check();
  });
  await expect(lost).rejects.toMatchObject({ code: "filing/lock-lost" });
  expect(existsSync(path)).toBe(true);
});

test("a link that leads nowhere in the place of the lock is waited for a while only", async () => {
  const folder = temporaryFolder();
  symlinkSync(join(folder, "nowhere"), join(folder, lockName));
  const { disk } = hastyDisk(1_000);
  await expect(withFilingLock(disk, folder, async () => "inside")).rejects.toMatchObject({ code: "filing/locked" });
});
