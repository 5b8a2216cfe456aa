import { expect, test } from "vitest";
import { loopCheckSheet } from "../../../src/jobs/workbook/loop-check-sheet.ts";
import { readingRows } from "../../../src/jobs/workbook/reading-rows.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { smallestWorkbook, type Texts, withText } from "../../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";

const today = "2026-11-25";

async function told(texts: Texts) {
  const disk = memoryDisk(inFolder("book", texts));
  const [rows, checks] = [
    await readingRows(disk, "book", { today }),
    await loopCheckSheet(disk, "book", { today, asGuide: false }),
  ];
  return [rows, checks].map(({ problems }) => problems.all.map(sentence));
}

test("readings that are still to be taken stop nothing; the row of an instrument does", async () => {
  const unread = { ...smallestWorkbook, "readings.csv": "calibration,phase,direction,reference,signal\n" };
  expect(await told(unread)).toEqual([[], []]);
  const { "readings.csv": _, ...without } = smallestWorkbook;
  expect(await told(without)).toEqual([[], []]);
  for (const lines of await told(withText("instruments.csv", "0,100,mm", "zero,100,mm"))) {
    expect(lines[0]).toContain("instruments.csv:2:range_lower");
  }
});

test("a file that cannot be read may hold any of the tables, and is told", async () => {
  for (const lines of await told({ "book.xlsx": "PK no spreadsheet" })) {
    expect(lines.join(" ")).toContain("the file cannot be read as a spreadsheet");
  }
});
