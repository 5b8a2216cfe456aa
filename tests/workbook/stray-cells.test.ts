import { expect, test } from "vitest";
import { checked, smallestWorkbook, withFile } from "./smallest-workbook.ts";

const told = async (text: string) =>
  (await checked(withFile("readings.csv", text))).problems
    .filter(({ code }) => code.startsWith("tables/row"))
    .map(({ code, place, values }) => [code, place.line, values.glued]);
const readings = smallestWorkbook["readings.csv"];
const wide = readings.replace("signal\n", "signal,counts,value,remark\n");

test("a decimal comma in a file of commas is told as that, in rows with more cells and in rows with fewer", async () => {
  const glued = "; 8 and 01 glued are 8,01, a number with a decimal comma";
  expect(await told(readings.replace("8.01", "8,01"))).toEqual([["tables/row-long", 3, glued]]);
  expect((await told(wide.replace("8.01", "8,01")))[1]).toEqual(["tables/row-short", 3, glued]);
});

test("a decimal comma before an empty cell at the end is told too", async () => {
  const empty = readings.replace("signal\n", "signal,remark\n").replace(/\.01$/gmu, ".01,");
  expect(await told(empty)).toEqual([]);
  expect(await told(empty.replace("8.01", "8,01"))).toEqual([
    // The cell behind it is the remark, and the empty one stands under no name.
    ["tables/row-long", 3, "; 8 and 01 glued are 8,01, a number with a decimal comma"],
  ]);
});

test("empty cells at the end are no cells", async () => {
  expect(await told(readings.replaceAll("\n", ",,\n"))).toEqual([]);
  expect(await told(readings.replace("8.01\n", "8.01,,\n"))).toEqual([]);
});

test("a row that ends early is told, though its last columns may be empty", async () => {
  expect((await told(wide)).map(([code, line]) => [code, line])).toEqual(
    [2, 3, 4, 5, 6].map((line) => ["tables/row-short", line]),
  );
});
