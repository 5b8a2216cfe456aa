import { expect, test } from "vitest";
import { recordPaths } from "../../../src/jobs/records/record-paths.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { sampleRecord } from "../../charts/sample-record.ts";
import { memoryDisk } from "../memory-disk.ts";

const json = JSON.stringify(sealRecord(sampleRecord()));
const page = `<!doctype html>\n<script type="application/json" id="record">${json}</script>`;
const files = {
  "out/LT-1/C-1.html": page,
  "out/LT-1/C-1.json": json,
  "out/LT-1/notes.html": "<p>no record</p>",
  "out/LT-2/C-2.json": json,
  "out/ZT-1/C-3.html": page,
  "out/labels.txt": "",
};
const filesBelow = async (folder: string) =>
  Object.keys(files)
    .filter((path) => path.startsWith(`${folder}/`))
    .map((path) => path.slice(folder.length + 1));

async function meant(...given: readonly string[]) {
  const problems = new ProblemList();
  const paths = await recordPaths({ disk: memoryDisk(files), filing: { filesBelow } }, given, problems);
  return { paths, told: problems.all.map(({ code, place }) => `${place.file} ${code}`) };
}

test("a file is meant as it is named, whatever it is", async () => {
  expect(await meant("out/labels.txt", "gone.html")).toEqual({ paths: ["out/labels.txt", "gone.html"], told: [] });
});

test("of a folder every record is meant, once, and what is none is named", async () => {
  expect(await meant("out/")).toEqual({
    paths: ["out/LT-1/C-1.html", "out/LT-2/C-2.json", "out/ZT-1/C-3.html"],
    told: ["out/LT-1/notes.html options/passed-over"],
  });
});

test.each([
  ["out/LT-*", ["out/LT-1/C-1.html", "out/LT-2/C-2.json"]],
  ["out/LT-?/C-1.*", ["out/LT-1/C-1.html"]],
  ["out/**/*.html", ["out/LT-1/C-1.html", "out/ZT-1/C-3.html"]],
  ["out\\ZT-*", ["out/ZT-1/C-3.html"]],
])("the pattern %s means the same in every shell", async (pattern, paths) => {
  expect((await meant(pattern)).paths).toEqual(paths);
});

test("a pattern or a folder without a record is told", async () => {
  expect((await meant("out/XT-*")).told).toEqual(["out/XT-* options/no-records"]);
});
