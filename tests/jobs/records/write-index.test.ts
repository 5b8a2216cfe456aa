import { expect, test } from "vitest";
import { writeIndex } from "../../../src/jobs/records/write-index.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { indexRow } from "../../../src/report/columns/index-columns.tsx";
import { sampleRecord } from "../../charts/sample-record.ts";
import { memoryDisk } from "../memory-disk.ts";

const page = (tag: string) =>
  `<!doctype html>\n<script type="application/json" id="record">${JSON.stringify(sealRecord(sampleRecord({ tag })))}</script>`;
const files = { "out/LT-1/C-1.html": page("LT-1"), "out/filed/LT-3/x.html": page("LT-3"), "out/notes.html": "none" };
const filesBelow = async () => Object.keys(files).map((path) => path.slice("out/".length));
const noParts = { namesIn: async () => undefined, remove: async () => undefined };

test("records of this run and of earlier ones are listed; what lies deeper, or is none, is not", async () => {
  const disk = memoryDisk(files);
  const problems = new ProblemList();
  const written = [indexRow(sealRecord(sampleRecord({ tag: "LT-2" })), "LT-2/C-2.html")];
  await writeIndex({ disk, filing: { ...noParts, filesBelow } }, "out", written, problems);
  const index = String(disk.written.get("out/index.html"));
  expect([...index.matchAll(/<a href="([^"]+)"/gu)].map(([, path]) => path)).toEqual([
    "LT-1/C-1.html",
    "LT-2/C-2.html",
  ]);
  expect(problems.all).toEqual([]);
});

test("a record that lies where the index would is not written over", async () => {
  const disk = memoryDisk({ "out/index.html": page("LT-9") });
  const problems = new ProblemList();
  await writeIndex({ disk, filing: { ...noParts, filesBelow: async () => [] } }, "out", [], problems);
  expect(problems.all.map(({ code }) => code)).toEqual(["options/record-there"]);
  expect(disk.written.size).toBe(0);
});

test("of more than a thousand records every one stands in a part beside the page, all written together; older parts go", async () => {
  const row = indexRow(sealRecord(sampleRecord({ tag: "LT-1" })), "LT-1/C-1.html");
  const many = Array.from({ length: 1001 }, (_, index) => ({
    ...row,
    tag: `LT-${index}`,
    page: `LT-${index}/C-1.html`,
  }));
  const removed: string[] = [];
  const filing = {
    filesBelow: async () => ["index-parts/records-001.html"],
    namesIn: async () => ["records-003.html", "records-004.html", "notes.html"],
    remove: async (path: string) => void removed.push(path),
  };
  const names = [
    "index.html",
    "index-parts/records-001.html",
    "index-parts/records-002.html",
    "index-parts/records-003.html",
  ];
  const disk = memoryDisk({});
  await writeIndex({ disk, filing }, "out", many, new ProblemList());
  expect([...disk.written.keys()]).toEqual(names.map((name) => `out/${name}`));
  expect(disk.written.get("out/index-parts/records-003.html")).toContain('<a href="../LT-1000/C-1.html">');
  expect(removed).toEqual(["out/index-parts/records-004.html"]);

  const full = memoryDisk({}, (path) => path.endsWith("records-003.html"));
  const problems = new ProblemList();
  await writeIndex({ disk: full, filing }, "out", many, problems);
  expect(problems.all.map(({ code }) => code)).toEqual(["options/cannot-write"]);
  expect([full.written.size, removed.length]).toEqual([0, 1]);
});
