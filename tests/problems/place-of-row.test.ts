import { expect, test } from "vitest";
import { placeOfRow } from "../../src/problems/place-of-row.ts";

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
