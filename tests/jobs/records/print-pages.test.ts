import { expect, test } from "vitest";
import { printPages } from "../../../src/jobs/records/print-pages.ts";
import { recordPage } from "../../../src/jobs/records/write-record.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { withPlainRecord } from "../../../src/record/record-element.ts";
import { sampleRecord } from "../../charts/sample-record.ts";
import { memoryDisk } from "../memory-disk.ts";

const record = sealRecord(sampleRecord());
const page = await recordPage(record);
const softwareVersion = record.software.version;

async function printed(texts: Record<string, string>, pages: readonly string[], why?: string) {
  const asked: string[] = [];
  const problems = new ProblemList();
  const print = (text: string, to: string) => {
    expect(text).toBe(page);
    asked.push(to);
    return Promise.resolve(why === undefined ? undefined : { why });
  };
  const written = await printPages(memoryDisk(texts), pages, { print, softwareVersion }, problems);
  return { asked, written, told: problems.all.map(sentence) };
}

test("the PDF file of a page lies beside it under the same name", async () => {
  expect(await printed({ "a/C-1.html": page }, ["a/C-1.html"])).toEqual({
    asked: ["a/C-1.pdf"],
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

test.each([
  ["with a script of others", (text: string) => text.replace("</body>", "<script>alert(1)</script></body>")],
  ["without its policy", (text: string) => text.replace(/<meta http-equiv="?Content-Security-Policy[^>]*>/iu, "")],
  ["with an address", (text: string) => text.replace("</body>", '<img src="http://127.0.0.1/a.png"></body>')],
  ["with another word", (text: string) => text.replace(/\bPass\b/u, "Fail")],
])("a page %s is not printed", async (_, change) => {
  expect(change(page)).not.toBe(page);
  const { asked, told } = await printed({ "C-1.html": change(page) }, ["C-1.html"]);
  expect(asked).toEqual([]);
  expect(told[0]).toContain("the page is not what its record gives: it was changed");
});

test("a record whose seal is broken is not printed, and one of another version is, made anew", async () => {
  const edited = withPlainRecord(page).replace('"figureBasis":"', '"figureBasis":"x');
  expect((await printed({ "C-1.html": edited }, ["C-1.html"])).told[0]).toContain("is not the one that was sealed");
  const problems = new ProblemList();
  const texts: string[] = [];
  const print = async (text: string) => void texts.push(text);
  const disk = memoryDisk({ "C-1.html": page.replace("</body>", "<script>alert(1)</script></body>") });
  await printPages(disk, ["C-1.html"], { print, softwareVersion: "99.0.0" }, problems);
  expect(texts).toEqual([page]);
});
