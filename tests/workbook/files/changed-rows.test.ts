import { expect, test } from "vitest";
import { changedRows } from "../../../src/workbook/files/changed-rows.ts";

test("rows are changed when they are asked for, one by one and all in turn, by their place", () => {
  const rows = [
    { line: 2, cells: ["a"] },
    { line: 5, cells: ["b"] },
  ];
  const changed = changedRows(rows, (cells, index) => [String(index), ...cells]);
  const expected = [
    { line: 2, cells: ["0", "a"] },
    { line: 5, cells: ["1", "b"] },
  ];
  expect([...changed]).toEqual(expected);
  expect([changed.at(0), changed.at(1), changed.at(2)]).toEqual([...expected, undefined]);
  expect(changed.length).toBe(2);
});
