import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { CannotFile } from "../../src/filing/cannot-file.ts";
import { changeTag } from "../../src/filing/change-tag.ts";
import { checkFolder } from "../../src/filing/check-folder.ts";
import { checkLedger } from "../../src/filing/check-ledger.ts";
import { decideFinding } from "../../src/filing/decide-finding.ts";
import { filePage } from "../../src/filing/file-page.ts";
import type { FilingDisk } from "../../src/filing/filing-disk.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import { readIndex } from "../../src/filing/read-index.ts";
import { textOf } from "../../src/filing/text-of.ts";
import { withdrawPage } from "../../src/filing/withdraw-page.ts";
import { amended, diskWith, onPaper, samplePage, temporaryFolder } from "./sample-pages.ts";

const words = { by: "A. Example", reason: "a trial" };
const first = samplePage();
const pages = [first, amended(first.record, "put right"), samplePage({ tag: "LT-2", isOutOfTolerance: true })];

/** Everything that is done to a filing folder, one after the other. */
const steps: readonly ((disk: FilingDisk, folder: string) => Promise<unknown>)[] = [
  ...pages.map((page) => (disk: FilingDisk, folder: string) => filePage(filingFolder(disk, folder), page, onPaper)),
  (disk, folder) =>
    decideFinding(filingFolder(disk, folder), { tag: "LT-2", calibration: "C-1", by: "A. Example", decision: "none" }),
  (disk, folder) =>
    withdrawPage(filingFolder(disk, folder), { tag: "LT-1", calibration: "C-1", revision: 2, ...words }),
  (disk, folder) => changeTag(filingFolder(disk, folder), { tag: "LT-2", ...words }, { action: "retired" }),
  (disk, folder) => readIndex(disk, folder),
];

const changing = ["createOnce", "append", "cut", "replace", "remove"] as const;
const ways = ["the disk is full", "ended before it", "ended after it", "half of it is written"] as const;
type Way = (typeof ways)[number];

/** A disk whose call number `at` of those that change something goes wrong; after an end there is nobody to go on. */
function failing(at: number, way: Way): { disk: FilingDisk; calls: () => number } {
  const real = diskWith();
  let calls = 0;
  let isEnded = false;
  const call = (name: keyof FilingDisk, given: readonly unknown[]) =>
    (real[name] as (...all: readonly unknown[]) => unknown)(...given);
  const wrap =
    (name: keyof FilingDisk) =>
    async (...given: readonly unknown[]) => {
      if (isEnded) throw new Error("the process is no more");
      const isChanging = (changing as readonly string[]).includes(name);
      if (isChanging) calls += 1;
      if (!isChanging || calls !== at) return call(name, given);
      isEnded = way !== "the disk is full";
      if (way === "ended after it") await call(name, given);
      if (way === "half of it is written" && name === "append") {
        const [path, text, keeping] = given as [string, string, "durable"];
        await real.append(path, text.slice(0, text.length / 2), keeping);
      }
      throw new Error(way === "the disk is full" ? "ENOSPC: no space left on device" : "the process was ended");
    };
  const waits = ["read", "readFrom", "changedAt", "namesIn", "filesBelow", "notFilesBelow", "sweep"] as const;
  const wrapped = Object.fromEntries([...changing, ...waits].map((name) => [name, wrap(name)]));
  // A number that no process has, so that its lock is known to be left behind.
  return { disk: { ...real, ...wrapped, process: 4_000_000 } as FilingDisk, calls: () => calls };
}

/** As far as it goes; what was done before is refused the second time. */
async function done(disk: FilingDisk, folder: string): Promise<void> {
  for (const step of steps) {
    await step(disk, folder).catch((fault: unknown) => {
      if (!(fault instanceof CannotFile)) throw fault;
    });
  }
}

const actionsOf = async (folder: string) =>
  checkLedger(await textOf(diskWith(), `${folder}/ledger.jsonl`)).lines.map(({ action }) => action);

test.each(ways)(
  "at each of the calls that change something, %s: the same commands once more complete it",
  async (way) => {
    const whole = temporaryFolder();
    const counting = failing(Number.POSITIVE_INFINITY, way);
    await done(counting.disk, whole);
    const expected = new Set(await actionsOf(whole));
    expect(expected).toEqual(new Set(["filed", "decided", "withdrawn", "retired"]));
    expect(counting.calls()).toBeGreaterThan(20);
    for (let at = 1; at <= counting.calls(); at += 1) {
      const folder = temporaryFolder();
      await done(failing(at, way).disk, folder).catch(() => undefined);
      await done(diskWith(), folder);
      expect(await checkFolder(diskWith(), folder), `${way}, call ${at}`).toEqual([]);
      expect(new Set(await actionsOf(folder)), `${way}, call ${at}`).toEqual(expected);
      expect(leftIn(folder), `${way}, call ${at}`).toEqual([]);
    }
  },
);

/** Locks, and what was being written. */
function leftIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => /filing\.lock|\.tmp$/u.test(name));
}
