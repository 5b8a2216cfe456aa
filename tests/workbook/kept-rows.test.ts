import { expect, test } from "vitest";
import { KeptRows } from "../../src/workbook/kept-rows.ts";
import { RowsByOwner } from "../../src/workbook/rows-by-owner.ts";

function twoOwners() {
  const rows = new RowsByOwner();
  rows.add("LT-2", 0);
  rows.add("LT-1", 1);
  rows.add("LT-2", 3);
  const asked: number[] = [];
  const kept = new KeptRows<{ tag: string }>(rows, (place) => {
    asked.push(place);
    return { row: { tag: `row ${place}` }, file: "a.csv", line: place + 2, cells: {} };
  });
  return { kept, asked };
}

test("rows are read when they are asked for, each time anew", () => {
  const { kept, asked } = twoOwners();
  expect([kept.length, kept.has("LT-1"), kept.has("LT-3")]).toEqual([3, true, false]);
  expect(asked).toEqual([]);
  expect(kept.of("LT-2").map(({ line }) => line)).toEqual([2, 5]);
  expect(kept.of("LT-2")[0]).not.toBe(kept.of("LT-2")[0]);
  expect(asked).toEqual([0, 3, 0, 3, 0, 3]);
  expect(kept.of("LT-3")).toEqual([]);
});

test("all of them come in the order of the table, changed where that is asked for", () => {
  const { kept } = twoOwners();
  expect(Array.from(kept, ({ line }) => line)).toEqual([2, 3, 5]);
  const changed = kept.with((one) => ({ ...one, line: -one.line }));
  expect(Array.from(changed, ({ line }) => line)).toEqual([-2, -3, -5]);
  expect(changed).toHaveLength(3);
});
