import { expect, test } from "vitest";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { readDelimited } from "../../src/workbook/files/read-delimited.ts";
import { remarked, textRows } from "../../src/workbook/text-rows.ts";

const rowsOf = (text: string) =>
  textRows(
    readDelimited({ name: "readings.csv", bytes: new TextEncoder().encode(text) }, "readings", new ProblemList()),
    "point",
  );

test("units of the header stand behind the numbers, words are as they are meant, what is unknown keeps its name", () => {
  const [row] = rowsOf(
    "calibration;Phase;direction;reference (cm);signal;by\nC-1;As found;Rising;2,5;8,01 mA;Ada, 2,5\n",
  );
  expect(row).toEqual({
    line: 2,
    cells: {
      calibration: "C-1",
      phase: "as_found",
      direction: "rising",
      reference: "2.5 cm",
      signal: "8.01 mA",
      by: "Ada, 2,5",
    },
  });
});

test("a row with a cell that cannot be read is there all the same", () => {
  expect(rowsOf("calibration,phase,reference\nC-1,as_found,about 5\n")[0]?.cells.reference).toBe("about 5");
});

test("either mark becomes that of the file, in numbers only", () => {
  expect(remarked("12,02 mA", "point")).toBe("12.02 mA");
  expect(remarked("±0.5 % of reading or 5.25 mm, whichever is greater", "comma")).toBe(
    "±0,5 % of reading or 5,25 mm, whichever is greater",
  );
  expect(remarked("−.5", "comma")).toBe("−,5");
});
