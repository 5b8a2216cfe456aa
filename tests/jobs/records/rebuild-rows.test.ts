import { expect, test } from "vitest";
import { rebuildRows } from "../../../src/jobs/records/rebuild-rows.ts";
import { checked, smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { reportedRecord } from "../reported-records.ts";

test("the rows of a record are those that were read from its tables", async () => {
  const [{ record }, { cases }] = [await reportedRecord(), await checked(smallestWorkbook)];
  const rebuilt = rebuildRows(record);
  expect("rows" in rebuilt && rebuilt.rows).toEqual(cases[0]);
});

test("which day it was when the tables were read does not matter", async () => {
  const { record } = await reportedRecord();
  const rows = structuredClone(record.inputs.rows);
  const [calibration] = rows.calibrations;
  if (calibration !== undefined) calibration.cells.performed_on = "2999-01-01";
  const rebuilt = rebuildRows({ ...record, inputs: { ...record.inputs, rows } });
  expect("rows" in rebuilt && rebuilt.rows.calibration.row.performedOn).toBe("2999-01-01");
});

test("of many things that cannot be read the first five are told", async () => {
  const { record } = await reportedRecord();
  const rows = structuredClone(record.inputs.rows);
  for (const reading of rows.readings) Object.assign(reading.cells, { reference: "far", signal: "low" });
  const rebuilt = rebuildRows({ ...record, inputs: { ...record.inputs, rows } });
  expect("doubts" in rebuilt && rebuilt.doubts).toHaveLength(5);
});
