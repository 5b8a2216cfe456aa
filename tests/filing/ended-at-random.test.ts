import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { checkFolder } from "../../src/filing/check-folder.ts";
import { checkLedger } from "../../src/filing/check-ledger.ts";
import { pagesOf } from "../../src/filing/filed-lines.ts";
import { filedPath } from "../../src/filing/filed-path.ts";
import { readIndex } from "../../src/filing/read-index.ts";
import { fileDigest } from "../../src/record/file-digest.ts";
import { filesBelow } from "../cli/built-command.ts";
import { howMany } from "../how-many.ts";
import { builtFilingProcess, filingProcess, type PagesOnDisk, pagesOnDisk } from "./process-of-pages.ts";
import { diskWith, temporaryFolder } from "./sample-pages.ts";

/** Of a moment that a fiftieth of the ends hit, twenty hit it in 33 runs of 100, and 200 in 98; the seed can be another. */
const kills = howMany(20, 200);
const pagesToFile = howMany(50, 500);
/** Two or three pages are filed in the longest time that a process is left. */
const longestMilliseconds = 24;
/** More than are filed in that time. */
const atOnce = 12;
const seed = Number(process.env.FILING_SEED ?? 20261125);

/** mulberry32: enough to spread moments over some milliseconds. */
function seeded(state: number): () => number {
  let a = state;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

type Whole = ReadonlyMap<string, string>;

function wholePages(pages: PagesOnDisk): Whole {
  return new Map(pages.map(({ page }) => [filedPath(page.record), fileDigest(page.bytes).sha256]));
}

/** What must hold whenever a process was ended: every page whole, every line of the ledger borne out by its page. */
function expectSound(folder: string, whole: Whole, seen: Set<string>): number {
  for (const path of filesBelow(folder).filter((name) => name.endsWith(".html") && !seen.has(name))) {
    expect([path, fileDigest(readFileSync(join(folder, path))).sha256]).toEqual([path, whole.get(path)]);
    seen.add(path);
  }
  const text = filesBelow(folder).includes("ledger.jsonl") ? readFileSync(join(folder, "ledger.jsonl"), "utf8") : "";
  const { lines, doubts } = checkLedger(text);
  expect(doubts.filter(({ says }) => !says.startsWith("the line was not finished"))).toEqual([]);
  for (const line of pagesOf(lines).standing) expect(line.fileSha256).toBe(whole.get(line.path));
  return lines.length;
}

test(`${kills} times ended at a random moment while filing ${pagesToFile} pages (FILING_SEED=${seed})`, async () => {
  const root = temporaryFolder();
  const program = await builtFilingProcess(root);
  const random = seeded(seed);
  let killed = 0;
  for (let round = 0; killed < kills; round += 1) {
    const pages = pagesOnDisk(join(root, `pages-${round}`), pagesToFile, `C${round}`);
    const folder = join(root, `filed-${round}`);
    const [whole, seen] = [wholePages(pages), new Set<string>()];
    for (let filed = 0; killed < kills && filed < pagesToFile; ) {
      // The last page filed is filed again, with those that are left.
      const run = filingProcess(program, folder, pages.slice(Math.max(0, filed - 1), filed + atOnce));
      await run.ready;
      await new Promise((settle) => setTimeout(settle, random() * longestMilliseconds));
      run.kill();
      const { signal, complaints } = await run.ended;
      expect(complaints).toBe("");
      if (signal === "SIGKILL") killed += 1;
      filed = expectSound(folder, whole, seen);
    }
    const { complaints } = await filingProcess(program, folder, pages).ended;
    expect(complaints).toBe("");
    expect(await checkFolder(diskWith(), folder)).toEqual([]);
    expect((await readIndex(diskWith(), folder)).entries).toHaveLength(pagesToFile);
    const names = [...pages.map(({ page }) => filedPath(page.record)), "index.jsonl", "ledger.jsonl"];
    // A process that was ended while it claimed the folder may have left that claim, which is swept when it is old.
    expect(filesBelow(folder).filter((name) => !/^\.[0-9a-f-]{36}\.tmp$/u.test(name))).toEqual(names.toSorted());
  }
  expect(killed).toBe(kills);
});
