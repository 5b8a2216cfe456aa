import { expect, test } from "vitest";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { namedCalibrations } from "../../src/workbook/named-calibrations.ts";
import { readTables } from "../../src/workbook/read-tables.ts";
import { filesOf } from "./smallest-workbook.ts";

const named = async (text: string) =>
  namedCalibrations(await readTables(filesOf({ "calibrations.csv": text }), new ProblemList()));

test("a calibration is named whatever is wrong with the rest of its row", async () => {
  expect(await named("Tag,calibration,performed_on\n LT-1 ,C-1,4.3.26\nLT-2,C-2\n")).toEqual([
    { calibration: "C-1", tag: "LT-1" },
    { calibration: "C-2", tag: "LT-2" },
  ]);
});

test("a table without one of the two columns names what it has", async () => {
  expect(await named("calibration\nC-1\n")).toEqual([{ calibration: "C-1", tag: "" }]);
});

test("without the table nothing is named", () => {
  expect(namedCalibrations([])).toEqual([]);
});
