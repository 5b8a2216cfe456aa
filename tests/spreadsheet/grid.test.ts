import { expect, test } from "vitest";
import { Grid } from "../../src/spreadsheet/grid.ts";

test("rows are counted from 1, and cells named with their sheet", () => {
  const grid = new Grid("Figures");
  expect([grid.next, grid.add(["a"]), grid.add(["b", 2]), grid.next]).toEqual([1, 1, 2, 3]);
  expect(grid.at("B", 2)).toBe("Figures!$B$2");
  expect(grid.range("B", 1, 2)).toBe("Figures!$B$1:$B$2");
});

test("a part of the sheet begins behind an empty row, but for the first", () => {
  const grid = new Grid("Figures");
  grid.begin("As found");
  grid.begin("As left");
  expect(grid.rows.map(({ kind, cells }) => [kind, cells[0]])).toEqual([
    ["title", "As found"],
    ["plain", undefined],
    ["title", "As left"],
  ]);
});
