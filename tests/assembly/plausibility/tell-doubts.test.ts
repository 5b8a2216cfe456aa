import { expect, test } from "vitest";
import { tellDoubts } from "../../../src/assembly/plausibility/tell-doubts.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { fullWorkbook, judged, withRows } from "../../workbook/full-workbook.ts";
import { measuredRows } from "./measured-rows.ts";

test("of a calibration whose numbers agree nothing is told", async () => {
  const problems = new ProblemList();
  tellDoubts(await measuredRows(), problems);
  expect(problems.all).toEqual([]);
});

test("where the unit of a column is wrong, its single readings are not told as well", async () => {
  const texts = withRows("readings.csv", (row) => ({ ...row, signal: String(Number(row.signal) / 4) }));
  const { codes } = await judged(texts);
  expect(new Set(codes.filter((code) => code.startsWith("plausible/")))).toEqual(new Set(["plausible/unit-of-column"]));
  expect((await judged(fullWorkbook)).codes).toEqual([]);
});
