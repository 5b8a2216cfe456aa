import { expect, test } from "vitest";
import { columnLetters, placeOfRow } from "../../src/problems/place-of-row.ts";

const sheet = { name: "readings", letters: { signal: "C" } };

test("a row of a text file has its line, a row of a sheet its cell as well", () => {
  expect(placeOfRow({ file: "readings.csv", line: 14 }, "signal")).toEqual({
    file: "readings.csv",
    line: 14,
    column: "signal",
  });
  const row = { file: "readings.xlsx", line: 14, sheet };
  const place = { file: "readings.xlsx", sheet: "readings", line: 14 };
  expect(placeOfRow(row, "signal")).toEqual({ ...place, column: "signal", cell: "C14" });
  expect(placeOfRow(row)).toEqual(place);
});

test("a column that stands on no sheet has no cell, whatever it is called", () => {
  const row = { file: "readings.xlsx", line: 2, sheet };
  for (const column of ["direction", "constructor"]) expect(placeOfRow(row, column)).not.toHaveProperty("cell");
});

// ECMA-376 part 1, 18.3.1.4: the columns of a sheet are A to XFD, 16384 of them.
test.each([
  [0, "A"],
  [25, "Z"],
  [26, "AA"],
  [701, "ZZ"],
  [702, "AAA"],
  [16383, "XFD"],
])("column %d is %s", (index, letters) => {
  expect(columnLetters(index)).toBe(letters);
});
