import { expect, test } from "vitest";
import { summaryRows } from "../../src/jobs/records/summary-rows.ts";
import { verifyRecord } from "../../src/jobs/signing/verify-record.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { renderLabels } from "../../src/report/label-sheet.tsx";
import { withColumn } from "../workbook/smallest-workbook.ts";
import { inFolder } from "./memory-disk.ts";
import { demoTexts, reportedDemo, reportedFrom, reportedRecord, softwareVersion } from "./reported-records.ts";

const { files, records } = await reportedFrom(inFolder("demo", demoTexts), "demo", { decimalMark: "comma" });
const pages = [...files].filter(([path]) => path.endsWith(".html")).map(([, text]) => text);

/** What a reader and a screen reader are told, without sources, whose numbers are those of clauses. */
function textsOf(page: string): readonly string[] {
  const body = page.slice(page.indexOf("<body>")).replace(/<script.*?<\/script>|<cite>.*?<\/cite>/gsu, "");
  const names = [...body.matchAll(/aria-label="([^"]*)"/gu)].map(([, name = ""]) => name);
  return [...body.replace(/<[^>]*>/gu, "\n").split("\n"), ...names];
}

/** Words that were typed stay as they were typed: a remark is none of the program's numbers. */
function typedWords({ inputs }: SealedRecord): readonly string[] {
  const cells = Object.values(inputs.rows).flatMap((rows) => (rows ?? []).flatMap(({ cells }) => Object.values(cells)));
  return cells.filter((cell) => /\d\.\d/u.test(cell) && /[a-z]+[ ,].*[a-z]+/iu.test(cell));
}

test("no number on a page has a point but that of a version, whatever the loop", () => {
  expect(pages).toHaveLength(records.length);
  expect(records.length).toBeGreaterThan(10);
  for (const [index, page] of pages.entries()) {
    const words = [...typedWords(records[index] as SealedRecord), `spanwright ${softwareVersion}`];
    const pointed = textsOf(page)
      .map((text) => words.reduce((rest, word) => rest.replaceAll(word, ""), text))
      .filter((text) => /\d\.\d/u.test(text));
    expect(pointed).toEqual([]);
    expect(page.match(/\d,\d/gu)?.length).toBeGreaterThan(200);
  }
});

test("nothing but the mark and the words differ: the numbers of the record are numbers, and the same", async () => {
  const inPoints = await reportedDemo();
  const numbersOf = (all: readonly SealedRecord[]) =>
    JSON.stringify(all.map(({ phases, switching }) => [phases, switching])).match(/(?<=:)-?\d[\d.e+-]*/gu);
  expect(numbersOf(records)).toEqual(numbersOf(inPoints));
  expect(records.every(({ instrument }) => instrument.decimalMark === "comma")).toBe(true);
  expect(inPoints.some(({ instrument }) => "decimalMark" in instrument)).toBe(false);
});

test("a page with commas is verified: its record says the mark, and is made again with it", async () => {
  for (const page of pages.slice(0, 3)) {
    expect(await verifyRecord(page, "a.html", { softwareVersion, signers: undefined })).toEqual([]);
  }
  const pointed = pages[0]?.replace(/(?<=>[^<>]*\d),(?=\d)/u, ".") ?? "";
  const [doubt] = await verifyRecord(pointed, "a.html", { softwareVersion, signers: undefined });
  expect(doubt?.about).toBe("page");
});

test("days stay year, month, day; a label has no number with a point", () => {
  expect(pages[0]).toMatch(/\d{4}-\d{2}-\d{2}/u);
  const label = renderLabels(records, { isSheet: true, skipped: 0 });
  expect(textsOf(label).filter((text) => /\d\.\d/u.test(text))).toEqual([]);
});

test("the terminal has the mark of each record", () => {
  const cells = summaryRows(records.map((record) => ({ record, page: "a.html" }))).flat();
  expect(cells.filter((cell) => /\d\.\d/u.test(String(cell)))).toEqual([]);
  expect(cells.join(" ")).toMatch(/\+0,95 → \+0,16/u);
});

const stated = (mark: string) => withColumn("instruments.csv", "decimal_mark", mark);

test("the row of the instrument states it, and an option of the run stands over it", async () => {
  const { record, page } = await reportedRecord(stated("comma"));
  expect(record.instrument.decimalMark).toBe("comma");
  expect(textsOf(page).some((text) => /\d,\d/u.test(text))).toBe(true);
  const { record: asked, page: other } = await reportedRecord(stated("comma"), { decimalMark: "point" });
  expect(asked.instrument.decimalMark).toBe("point");
  expect(await verifyRecord(other, "a.html", { softwareVersion, signers: undefined })).toEqual([]);
  expect(textsOf(other).some((text) => /\d,\d/u.test(text))).toBe(false);
});
