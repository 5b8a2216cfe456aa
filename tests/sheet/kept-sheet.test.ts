import { expect, test } from "vitest";
import { entriesOf, typedIn } from "../../src/sheet/kept-sheet.ts";

test("what another program kept is read as far as it is understood, and what is no sheet is empty", () => {
  const cells = { "as_found/1/rising/0": { signal: "4,01" } };
  expect(entriesOf({ form: 1, program: "0.3.0", entries: { cells } })).toEqual({ cells, added: [], log: [], undo: [] });
  expect(entriesOf({ form: 2, entries: { cells, colours: ["red"] } }).cells).toEqual(cells);
  for (const other of [undefined, null, {}, { entries: null }, "text"]) expect(entriesOf(other).cells).toEqual({});
});

test("the number of a sheet with that of its device", () => {
  expect(typedIn({ sheet: "S-0a1b2c3d", device: "00ff" })).toBe("S-0a1b2c3d-00ff");
});
