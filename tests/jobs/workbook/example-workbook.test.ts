import { expect, test } from "vitest";
import { exampleTables, firstRows } from "../../../src/jobs/workbook/example-workbook.ts";
import { tableColumns } from "../../../src/model/table-columns.ts";
import { tableNames } from "../../../src/model/table-names.ts";

test("every table has an example, in columns of its own", () => {
  for (const table of tableNames) {
    const names = tableColumns(table).map(({ name }) => name);
    for (const row of [...exampleTables[table], firstRows[table]]) {
      expect(Object.keys(row).filter((name) => !names.includes(name))).toEqual([]);
    }
    expect(exampleTables[table].length).toBeGreaterThan(0);
  }
});

test("no cycle of the example repeats another", () => {
  const rows = exampleTables.readings.map(({ cycle: _, ...row }) => JSON.stringify(row));
  expect(new Set(rows).size).toBe(rows.length);
});
