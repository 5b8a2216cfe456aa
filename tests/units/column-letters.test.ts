import { expect, test } from "vitest";
import { columnLetters } from "../../src/units/column-letters.ts";

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

test("columns are lettered as a spreadsheet letters them", () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(columnLetters)).toEqual(["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]);
});
