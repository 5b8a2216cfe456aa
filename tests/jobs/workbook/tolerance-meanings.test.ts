import { expect, test } from "vitest";
import { toleranceMeanings } from "../../../src/jobs/workbook/tolerance-meanings.ts";
import { checked, smallestWorkbook, withFile } from "../../workbook/smallest-workbook.ts";

const said = async (...tolerances: readonly string[]) => {
  const [header = "", row = ""] = smallestWorkbook["instruments.csv"].trimEnd().split("\n");
  const rows = tolerances.map((tolerance, index) =>
    row.replace("LT-1", `LT-${index + 1}`).replace("0.5,percent of span", tolerance),
  );
  const { workbook } = await checked(withFile("instruments.csv", `${header}\n${rows.join("\n")}\n`));
  return toleranceMeanings(workbook.instruments);
};

// The range is 0 to 100 mm.
test("a tolerance in words is said back with what it allows at both ends", async () => {
  expect(await said('"±2 % of reading or 0.05 cm, whichever is greater",')).toEqual([
    'LT-1: the tolerance "±2 % of reading or 0.05 cm, whichever is greater" is ±2 % of reading or ±0.5 mm, whichever is greater: ±0.5 mm at 0 mm, ±2 mm at 100 mm',
  ]);
  expect(await said("+1/-2 mm,")).toEqual([
    'LT-1: the tolerance "+1/-2 mm" is −2 / +1 mm: −2 / +1 mm at 0 mm, −2 / +1 mm at 100 mm',
  ]);
});

test("a tolerance in numbers needs no words, and of many the first are said", async () => {
  expect(await said("0.5,percent of span", "±0.50,distance")).toEqual([]);
  const many = await said(...Array(12).fill("1 %FS,"));
  expect(many).toHaveLength(11);
  expect(many.at(-1)).toBe("2 more tolerances in words");
});
