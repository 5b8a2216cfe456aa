import { expect, test } from "vitest";
import type { PlannedRow } from "../../../src/sheet/sheet-data.ts";
import {
  changed,
  freshId,
  noEntries,
  textAt,
  typing,
  undone,
  withoutRow,
  withRow,
} from "../../../src/sheet/state/entries.ts";

const row: PlannedRow = { id: "r1", table: "readings", cells: { point: "50" } };
const step = (before: string, after: string, at = "1") => ({ at, row: "r1", column: "signal", before, after });

test("what stands in a field is there at once, and a change only when the field is left with another text", () => {
  const during = typing(noEntries, "r1", "signal", "12.0");
  expect([textAt(during, row, "signal"), during.log]).toEqual(["12.0", []]);
  expect(changed(during, [step("12.0", "12.0")])).toBe(during);
  expect(changed(during, [step("", "12.0")]).log).toHaveLength(1);
});

test("a step is taken back as a whole, and the log says both", () => {
  const pasted = changed(noEntries, [step("", "12.0"), { ...step("", "50.1"), column: "value" }]);
  const back = undone(pasted, "2");
  expect([textAt(back, row, "signal"), textAt(back, row, "value")]).toEqual(["", ""]);
  expect(back.log).toHaveLength(4);
  expect(undone(back, "3")).toBe(back);
});

test("the last step first, whatever was typed between", () => {
  const twice = changed(changed(noEntries, [step("", "12.54")]), [step("12.54", "12.45", "2")]);
  expect(textAt(undone(twice, "3"), row, "signal")).toBe("12.54");
});

test("a row that was added goes with its texts, and what was typed into it stays in the log", () => {
  const added = withRow(noEntries, row);
  const filled = changed(added, [step("", "12.0")]);
  expect(freshId(filled, "readings")).not.toBe(freshId(added, "readings"));
  const gone = withoutRow(filled, "r1");
  expect([gone.added, gone.cells, gone.log.length]).toEqual([[], {}, 1]);
});
