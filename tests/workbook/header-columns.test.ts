import { expect, test } from "vitest";
import { columnNamed, foldedColumnName, headerColumns } from "../../src/workbook/header-columns.ts";

test.each(["range_lower", "Range lower", "RANGE-LOWER", " range\u00a0lower ", "range\nlower"])(
  "%j is range_lower",
  (header) => {
    expect(foldedColumnName(header)).toBe("range_lower");
    expect(columnNamed("instruments", header)?.key).toBe("rangeLower");
  },
);

test.each(["rangelower", "", "__proto__", "constructor", "toString"])("%j is no column", (header) => {
  expect(columnNamed("instruments", header)).toBeUndefined();
});

test("a column that stands there twice is read from its first place", () => {
  const columns = headerColumns("readings", ["signal", "?", "Signal", "reference"]);
  expect(columns.map((column) => column?.name)).toEqual(["signal", undefined, undefined, "reference"]);
});
