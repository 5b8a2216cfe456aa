import { expect, test } from "vitest";
import { tableColumns } from "../../src/model/table-columns.ts";
import { requiredTables, tableNames } from "../../src/model/table-names.ts";
import { tableSchemas } from "../../src/model/tables.ts";

const names = (table: (typeof tableNames)[number], required: boolean) =>
  tableColumns(table)
    .filter((column) => column.required === required)
    .map(({ name }) => name);

test("a workbook has nine tables, read in an order in which each refers to earlier ones only", () => {
  expect(tableNames).toEqual([
    "instruments",
    "outputs",
    "standards",
    "calibrations",
    "readings",
    "trips",
    "loop_checks",
    "controller_limits",
    "candidates",
  ]);
  expect(requiredTables).toEqual(["instruments", "calibrations", "readings"]);
});

test("the columns that must be filled in", () => {
  expect(Object.fromEntries(tableNames.map((table) => [table, names(table, true).join(" ")]))).toEqual({
    instruments:
      "tag range_lower range_upper distance_unit signal_lower signal_upper signal_unit tolerance tolerance_basis",
    outputs: "tag output set_point",
    standards: "standard certificate calibrated_on due_on",
    calibrations: "calibration tag performed_on performed_by",
    readings: "calibration phase direction reference",
    trips: "calibration phase output direction reference",
    loop_checks: "calibration item",
    controller_limits: "tag limit value acts",
    candidates: "candidate",
  });
});

test("no table has two columns of one name, and every column is explained", () => {
  for (const table of tableNames) {
    const columns = tableColumns(table);
    expect(new Set(columns.map(({ name }) => name)).size).toBe(columns.length);
    for (const { about } of columns) expect(about).not.toBe("");
    expect(tableColumns(table)).toBe(columns);
  }
});

test("a column is required in the table exactly where the schema asks for it, a first look aside", () => {
  for (const table of tableNames) {
    for (const column of tableColumns(table)) {
      const type = (tableSchemas[table].shape as Record<string, { safeParse(value: unknown): { success: boolean } }>)[
        column.key
      ];
      const takesNothing = type?.safeParse(undefined).success;
      expect([column.name, takesNothing]).toEqual([
        column.name,
        !column.required || column.missingAtFirstLook === true,
      ]);
    }
  }
});
