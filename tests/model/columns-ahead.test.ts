import { expect, test } from "vitest";
import { columnsOf } from "../../src/model/column.ts";
import { columnsByTable } from "../../src/model/columns-ahead.ts";
import { tableSchemas } from "../../src/model/tables.ts";

test("the columns are those of the schemas, and lose nothing when the build writes them as data", () => {
  expect(Object.keys(columnsByTable)).toEqual(Object.keys(tableSchemas));
  expect(columnsByTable.readings).toEqual(columnsOf(tableSchemas.readings));
  expect(JSON.parse(JSON.stringify(columnsByTable))).toStrictEqual(columnsByTable);
});
