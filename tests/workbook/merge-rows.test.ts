import { expect, test } from "vitest";
import { mergeRows, type PlacedRow } from "../../src/workbook/merge-rows.ts";

const reading = (signal: string, more: Record<string, string> = {}): PlacedRow => ({
  cells: { calibration: "C-1", phase: "as_found", cycle: "1", direction: "rising", point: "50", signal, ...more },
  place: `${signal} ${more.typed_at ?? ""}`,
});

test("a row that is not there is new, the same once more is not, whenever it was typed", () => {
  expect(mergeRows("readings", [], [reading("12.00")]).added).toHaveLength(1);
  const again = mergeRows("readings", [reading("12.00")], [reading("12.00", { typed_at: "later" })]);
  expect(again).toMatchObject({ added: [], same: 1, refused: [] });
});

test("digits are part of what was read: 12.0 is another observation than 12.00", () => {
  const { refused, filled } = mergeRows("readings", [reading("12.0")], [reading("12.00")]);
  expect(refused).toEqual([{ place: "12.00 ", there: "12.0 ", column: "signal", read: "12.00", kept: "12.0" }]);
  expect(filled.size).toBe(0);
});

test("an empty cell is filled, and what is there stays", () => {
  const { filled, refused } = mergeRows("readings", [reading("12.00")], [reading("12.00", { value: "50.1" })]);
  expect(refused).toEqual([]);
  expect([...filled]).toEqual([[0, { value: "50.1" }]]);
});

test("repeats that nobody numbered are told apart by their order", () => {
  const bare = (signal: string) => reading(signal, { cycle: "" });
  const there = [bare("12.00"), bare("12.01")];
  expect(mergeRows("readings", there, [bare("12.00"), bare("12.01"), bare("12.02")])).toMatchObject({
    added: [bare("12.02")],
    same: 2,
    refused: [],
  });
});

test("a place is the same with a unit behind it or without, and with either mark", () => {
  const inMillimetres = reading("12.00", { point: "50,0" });
  expect(mergeRows("readings", [reading("12.00", { point: "50.0" })], [inMillimetres]).added).toEqual([]);
});
