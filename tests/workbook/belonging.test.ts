import { expect, test } from "vitest";
import { tableColumns } from "../../src/model/table-columns.ts";
import { tableNames } from "../../src/model/table-names.ts";
import { belongingOf, nameColumns } from "../../src/workbook/belonging.ts";

test("a row belongs to the tag, standard or calibration that it names", () => {
  expect(belongingOf("outputs", { tag: "LT-1", output: "Q1" })).toEqual({ tag: "LT-1" });
  expect(belongingOf("standards", { standard: "GB-1" })).toEqual({ standard: "GB-1" });
  expect(belongingOf("calibrations", { calibration: "C-1", tag: "LT-1" })).toEqual({ calibration: "C-1" });
  expect(belongingOf("loop_checks", { calibration: "C-1" })).toEqual({ calibration: "C-1" });
});

test("a candidate, and a row without its name, may concern every calibration", () => {
  expect(belongingOf("candidates", { candidate: "A" })).toBeUndefined();
  expect(belongingOf("readings", { signal: "4" })).toBeUndefined();
});

test("the names stand in columns that must be filled in", () => {
  for (const table of tableNames) {
    const required = tableColumns(table).flatMap(({ name, required }) => (required ? [name] : []));
    expect(required).toEqual(expect.arrayContaining([...nameColumns[table]]));
  }
});
