import { expect, test } from "vitest";
import { findTargets } from "../../../src/jobs/records/find-targets.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { memoryDisk } from "../memory-disk.ts";

const paths = ["r/LT-1/a.html", "r/LT-1/a.json", "r/b.HTM", "r/ledger.jsonl", "r/due.ics", "r/note.txt", "s/c.html"];
const disk = memoryDisk(Object.fromEntries([...paths, "r/x", "empty/note.txt"].map((path) => [path, ""])));
const filing = {
  filesBelow: async (folder: string) => {
    const below = [...paths, "empty/note.txt"].filter((path) => path.startsWith(`${folder}/`));
    return below.map((path) => path.slice(folder.length + 1)).toSorted();
  },
};

async function found(...names: readonly string[]) {
  const problems = new ProblemList();
  const targets = await findTargets({ disk, filing }, names, problems);
  return { targets: targets.map(({ kind, path }) => `${kind} ${path}`), told: problems.all.map(sentence) };
}

test("a folder stands for the ledgers in it and for every page and JSON below it, in order; a slash behind it is nothing", async () => {
  const targets = ["ledger r", "found r/LT-1/a.html", "found r/LT-1/a.json", "found r/b.HTM"];
  expect(await found("r")).toEqual({ targets, told: [] });
  expect(await found("r//")).toEqual({ targets, told: [] });
});

test("a file that was named is a target whatever its ending, and each path is one once, named before found", async () => {
  expect((await found("r/note.txt", "s/c.html", "s", "s/c.html")).targets).toEqual([
    "named r/note.txt",
    "named s/c.html",
  ]);
});

test("what is not there, and a folder without a page, are told, and the others are found", async () => {
  const { targets, told } = await found("gone.html", "empty", "s");
  expect(targets).toEqual(["found s/c.html"]);
  expect(told).toEqual(
    ["gone.html", "empty"].map(
      (path) =>
        `${path}: there is no record in it; accepted: pages of records, their .json files, or a folder with some of them in it`,
    ),
  );
});

test("an index of filed records without its ledger stands for the ledger that was taken away", async () => {
  const robbed = { filesBelow: async () => ["LT-1/a.html", "index.jsonl"] };
  const plain = memoryDisk({ "r/index.jsonl": "" });
  const targets = await findTargets({ disk: plain, filing: robbed }, ["r"], new ProblemList());
  expect(targets.map(({ kind, path }) => `${kind} ${path}`)).toEqual(["ledger r", "found r/LT-1/a.html"]);
});
