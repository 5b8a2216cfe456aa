import { expect, test } from "vitest";
import { tableColumns } from "../../src/model/table-columns.ts";

test("a table's columns stand in the order of its schema", () => {
  const names = tableColumns("readings").map(({ name }) => name);
  expect(names.slice(0, 3)).toEqual(["calibration", "phase", "cycle"]);
});
