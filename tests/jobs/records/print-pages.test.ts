import { expect, test } from "vitest";
import { printPages } from "../../../src/jobs/records/print-pages.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { renderPage } from "../../../src/report/page.tsx";
import { sampleRecord } from "../../charts/sample-record.ts";
import { memoryDisk } from "../memory-disk.ts";

const record = sealRecord(sampleRecord());
const nothingDrawn = { errorWide: undefined, errorNarrow: undefined, stages: [], others: [], absent: [] };
const page = renderPage(record, nothingDrawn);

async function printed(texts: Record<string, string>, pages: readonly string[], why?: string) {
  const asked: string[] = [];
  const problems = new ProblemList();
  const print = (from: string, to: string) => {
    asked.push(`${from} > ${to}`);
    return Promise.resolve(why === undefined ? undefined : { why });
  };
  const written = await printPages(memoryDisk(texts), pages, print, problems);
  return { asked, written, told: problems.all.map(sentence) };
}

test("the PDF file of a page lies beside it under the same name", async () => {
  expect(await printed({ "a/C-1.html": page }, ["a/C-1.html"])).toEqual({
    asked: ["a/C-1.html > a/C-1.pdf"],
    written: ["a/C-1.pdf"],
    told: [],
  });
});

test("what is no page of a record is told and not printed; the others are", async () => {
  const texts = { "notes.html": "<!doctype html><p>notes", "C-1.json": JSON.stringify(record), "C-1.html": page };
  const { written, told } = await printed(texts, ["notes.html", "C-1.json", "gone.html", "C-1.html"]);
  expect(written).toEqual(["C-1.pdf"]);
  expect(told.map((sentence) => sentence.split(";")[0])).toEqual([
    "notes.html: this is no record",
    "gone.html: there is no such file",
    "C-1.json: the page was not printed: it is the record's JSON, not its page",
  ]);
});

test("a browser that does not print is told with its reason", async () => {
  const { written, told } = await printed({ "C-1.html": page }, ["C-1.html"], "it ended with code 21");
  expect(written).toEqual([]);
  expect(told[0]).toMatch(/^C-1.html: the page was not printed: it ended with code 21;/u);
});
