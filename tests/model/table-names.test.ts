import { expect, test } from "vitest";
import { requiredTables, tableNames } from "../../src/model/table-names.ts";
import { tableSchemas } from "../../src/model/tables.ts";

test("every table has a schema, and beside the workbook's there are the signers", () => {
  expect(Object.keys(tableSchemas)).toEqual([...tableNames, "signers"]);
  expect(tableNames).toEqual(expect.arrayContaining([...requiredTables]));
});
