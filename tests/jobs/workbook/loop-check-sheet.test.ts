import { expect, test } from "vitest";
import { loopCheckSheet } from "../../../src/jobs/workbook/loop-check-sheet.ts";
import { readWorkbook } from "../../../src/jobs/workbook/read-workbook.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { smallestWorkbook, type Texts, withColumn } from "../../workbook/smallest-workbook.ts";
import { memoryDisk } from "../memory-disk.ts";

const today = "2026-11-25";
const inFolder = (texts: Texts) =>
  memoryDisk(Object.fromEntries(Object.entries(texts).map(([name, text]) => [`book/${name}`, text as string])));
const sheet = (texts: Texts, tag?: string, asGuide = false) =>
  loopCheckSheet(inFolder(texts), "book", { today, tag, asGuide });

test("the rows go into the table loop_checks as they are: read again, they are items that nobody looked at", async () => {
  const { text, problems } = await sheet(smallestWorkbook);
  expect(problems.all).toEqual([]);
  const lines = text.split("\n");
  expect(lines[0]).toBe("calibration,item,result,measured,unit,low,high,checked_by,time,remark");
  expect(lines[1]).toBe("C-1,identity,,,,,,,,");
  expect(lines).toContain("C-1,supply at full output,,,V,,,,,");
  const reading = await readWorkbook(inFolder({ ...smallestWorkbook, "loop_checks.csv": `${text}\n` }), "book", {
    today,
    firstLook: {},
  });
  expect(reading.problems.all.map(({ code }) => code)).toEqual(["model/loop-check-open"]);
  expect(reading.cases[0]?.read().loopChecks).toHaveLength(lines.length - 1);
});

test("readings, and even calibrations, need not be there yet", async () => {
  const { "instruments.csv": instruments, "calibrations.csv": calibrations } = smallestWorkbook;
  const planned = await sheet({ "instruments.csv": instruments, "calibrations.csv": calibrations });
  expect(planned.problems.all).toEqual([]);
  expect(planned.text).toContain("C-1,restored,");
  expect((await sheet({ "instruments.csv": instruments })).text).toContain("\n,restored,");
});

test("a tag chooses its rows; an output's items carry its name, quoted where it needs that", async () => {
  const texts = { ...smallestWorkbook, "outputs.csv": 'tag,output,set_point\nLT-1,"Q1, high",50\n' };
  expect((await sheet(texts, "LT-1")).text).toContain('C-1,"trip point of Q1, high",,,mm,,,,,');
  const { problems } = await sheet(texts, "LT-9");
  expect(problems.all.map(sentence)).toEqual([
    'command line: no instrument of the workbook has this tag; read "LT-9"; accepted: LT-1',
  ]);
});

test("the guide says what to do, what to write, what is accepted, and the limit here", async () => {
  const { text } = await sheet(withColumn("instruments.csv", "supply_min,supply_max", "12,30"), undefined, true);
  expect(text).toMatch(/^LT-1, calibration C-1\n\n 1 {2}identity\n {4}do {6}read the tag/u);
  expect(text).toContain("accept  between supply_min and supply_max of the sensor. Here: 12 to 30 V.");
  expect(text).toMatch(/\n\d\d {2}restored\n/u);
});

test("what is wrong with the tags stops it; what is wrong elsewhere does not", async () => {
  const wrong = { ...smallestWorkbook, "instruments.csv": smallestWorkbook["instruments.csv"].replace("mm", "km") };
  expect((await sheet(wrong)).problems.hasStop).toBe(true);
  const elsewhere = { ...smallestWorkbook, "readings.csv": smallestWorkbook["readings.csv"].replace("8.01", "8.O1") };
  expect((await sheet(elsewhere)).problems.all).toEqual([]);
  const { problems } = await loopCheckSheet(memoryDisk({}), "nowhere", { today, asGuide: false });
  expect(problems.all.map(({ code }) => code)).toEqual(["options/not-found"]);
});
