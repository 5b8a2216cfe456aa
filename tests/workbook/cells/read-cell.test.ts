import { expect, test } from "vitest";
import type { Column } from "../../../src/model/column.ts";
import { tableColumns } from "../../../src/model/table-columns.ts";
import { type TableName, tableNames } from "../../../src/model/table-names.ts";
import { acceptedWords, readCell } from "../../../src/workbook/cells/read-cell.ts";

function column(table: TableName, name: string): Column {
  const found = tableColumns(table).find((one) => one.name === name);
  if (found === undefined) throw new RangeError(`no column ${table}.${name}`);
  return found;
}

const read = (text: string, table: TableName, name: string) => readCell(text, column(table, name), "point", {});

test("each kind of column gives its kind of value", () => {
  expect(read("  as typed", "readings", "remark")).toEqual({ value: "  as typed" });
  expect(read("007", "standards", "certificate")).toEqual({ value: "007" });
  expect(read("4.01", "readings", "signal")).toEqual({ value: 4.01 });
  expect(read("3", "readings", "cycle")).toEqual({ value: 3 });
  expect(read("Rising", "readings", "direction")).toEqual({ value: "rising" });
  expect(read("2026-03-04", "calibrations", "performed_on")).toEqual({ value: "2026-03-04" });
  expect(read("14:05", "readings", "time")).toEqual({ value: "14:05" });
  expect(read("inches", "standards", "uncertainty_unit")).toEqual({ value: "in" });
});

test.each([
  ["yes", true],
  ["Y", true],
  ["TRUE", true],
  ["1", true],
  ["No", false],
  ["n", false],
  ["false", false],
  ["0", false],
])("%j is %s", (text, value) => {
  expect(read(text, "instruments", "loop_powered")).toEqual({ value });
});

test.each([
  ["GB-1", ["GB-1"]],
  ["GB-1; DMM-3", ["GB-1", "DMM-3"]],
  ["GB-1+DMM-3|T-2,H-1", ["GB-1", "DMM-3", "T-2", "H-1"]],
  ["GB-1;;GB-1; ", ["GB-1"]],
])("the list %j names %j", (text, value) => {
  expect(read(text, "calibrations", "standards")).toEqual({ value });
});

test.each([
  ["1.5", "readings", "cycle", "tables/cell-not-whole"],
  ["0", "readings", "cycle", "tables/cell-not-whole"],
  ["-1", "readings", "cycle", "tables/cell-not-whole"],
  ["1 mm", "readings", "cycle", "tables/cell-not-whole"],
  ["04/03/2026", "calibrations", "performed_on", "tables/cell-not-date"],
  ["noon", "readings", "time", "tables/cell-not-time"],
  ["maybe", "instruments", "loop_powered", "tables/cell-not-choice"],
  ["furlong", "standards", "uncertainty_unit", "tables/cell-not-choice"],
  ["left", "readings", "phase", "tables/cell-not-choice"],
] as const)("%j in %s.%s is %s", (text, table, name, code) => {
  expect(read(text, table, name)).toMatchObject({ code });
});

test("what every column takes can be said in words", () => {
  expect(acceptedWords(column("readings", "phase"))).toBe("as_found, as_left (before or after anything was adjusted)");
  expect(acceptedWords(column("readings", "reference"))).toBe("a number: reference distance");
  expect(acceptedWords(column("standards", "due_on"))).toBe(
    "a date such as 2026-03-04: day until which it may be used",
  );
  for (const table of tableNames) for (const one of tableColumns(table)) expect(acceptedWords(one)).not.toBe("");
});

test("several words of a choice come in the order in which they are written, each once", () => {
  const needed = (text: string) => read(text, "instruments", "signatures_needed");
  expect(needed("Performed; reviewed, AUTHORISED; performed")).toEqual({
    value: ["performed", "reviewed", "authorised"],
  });
  expect(needed("authorised")).toEqual({ value: ["authorised"] });
  for (const text of ["performed; approved", ";"]) {
    expect(needed(text)).toEqual({
      code: "tables/cell-not-choice",
      values: { choices: "performed, reviewed, authorised" },
    });
  }
  expect(acceptedWords(column("instruments", "signatures_needed"))).toMatch(/^performed, reviewed, authorised \(/u);
});
