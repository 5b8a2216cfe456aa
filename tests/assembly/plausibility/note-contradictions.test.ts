import { expect, test } from "vitest";
import { readWorkbook } from "../../../src/jobs/workbook/read-workbook.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { memoryDisk } from "../../jobs/memory-disk.ts";
import { smallestWorkbook, withColumn } from "../../workbook/smallest-workbook.ts";

async function reading(loopChecks: string) {
  const texts = {
    ...smallestWorkbook,
    "instruments.csv": withColumn("instruments.csv", "supply_min,supply_max", "12,30")["instruments.csv"] as string,
    "loop_checks.csv": `calibration,item,result,measured,unit\n${loopChecks}`,
  };
  const files = Object.fromEntries(Object.entries(texts).map(([name, text]) => [`book/${name}`, text]));
  return readWorkbook(memoryDisk(files), "book", { today: "2026-11-25", firstLook: {} });
}

test("a pass that its number contradicts is a warning at its place, and one of its calibration's record", async () => {
  const { problems, cases } = await reading("C-1,supply at full output,pass,11.4,V\n");
  expect(problems.all.map(sentence)).toEqual([
    'loop_checks.csv:2:result: the result of supply at full output is pass, and yet: 11.4 V where 12 to 30 V is allowed; read "pass"; accepted: a result that the numbers bear out, or what is wrong in the numbers put right',
  ]);
  expect(problems.hasStop).toBe(false);
  expect(cases.map(({ read }) => read().warnings.map(({ code }) => code))).toEqual([
    ["verdict/loop-check-contradiction"],
  ]);
});

test("a fail with the same number, and a pass with a good one, contradict nothing", async () => {
  const { problems, cases } = await reading(
    "C-1,supply at full output,fail,11.4,V\nC-1,supply without load,pass,24,V\n",
  );
  expect(problems.all).toEqual([]);
  expect(cases).toHaveLength(1);
});
