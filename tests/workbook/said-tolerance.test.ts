import { expect, test } from "vitest";
import { checked, smallestWorkbook, withFile, withText } from "./smallest-workbook.ts";

const read = async (cells: string, header = "tolerance,tolerance_basis") => {
  const text = smallestWorkbook["instruments.csv"]
    .replace("tolerance,tolerance_basis", header)
    .replace("0.5,percent of span", cells);
  const { workbook, codes, cases } = await checked(withFile("instruments.csv", text));
  const { tolerance, toleranceMinus, toleranceBasis, secondTolerance, toleranceCombined } =
    workbook.instruments[0]?.row ?? {};
  return {
    codes,
    count: cases.length,
    row: { tolerance, toleranceMinus, toleranceBasis, secondTolerance, toleranceCombined },
  };
};

test("a tolerance in words fills in the columns that it says", async () => {
  const { codes, row, count } = await read('"±0.5 % of reading or 2 mm, whichever is greater",');
  expect(codes).toEqual([]);
  expect(count).toBe(1);
  expect(row).toEqual({
    ...{ tolerance: 0.5, toleranceMinus: undefined, toleranceBasis: "percent of reading" },
    ...{ secondTolerance: 2, toleranceCombined: "greater" },
  });
});

test("the basis need not be a column where every tolerance says it", async () => {
  expect((await read("0.5 % of span", "tolerance")).codes).toEqual([]);
  expect((await read("0.5", "tolerance")).codes).toEqual(["tables/cell-missing"]);
  expect((await read("0.5,")).codes).toEqual(["tables/cell-missing"]);
});

test("what is said twice alike is no contradiction; what is said otherwise is", async () => {
  expect((await read("0.5 % of span,% of span")).codes).toEqual([]);
  expect((await read("0.5 %FS,%FS")).codes).toEqual([]);
  expect((await read("0.5 % of span,distance")).codes).toEqual(["tables/tolerance-contradicted"]);
  expect((await read("+3/-5 mm,,4", "tolerance,tolerance_basis,tolerance_minus")).codes).toEqual([
    "tables/tolerance-contradicted",
  ]);
});

test("a number with the unit of its basis is read as before", async () => {
  expect((await read("0.5 %,percent of span")).row).toMatchObject({
    tolerance: 0.5,
    toleranceBasis: "percent of span",
  });
  expect((await read("0.2 cm,distance")).row).toMatchObject({ tolerance: 2, toleranceBasis: "distance" });
});

test("words that cannot be understood stop, and the loop's row with them", async () => {
  expect((await read("0.5 % of reading or 5 mm,")).codes).toEqual(["tables/tolerance-words"]);
  expect((await read("0.05 V,")).codes).toEqual(["tables/tolerance-words"]);
  expect((await checked(withText("instruments.csv", "0.5,percent", "small,percent"))).cases).toEqual([]);
});
