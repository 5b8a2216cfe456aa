import { expect, test } from "vitest";
import { tableColumns } from "../../src/model/table-columns.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { checkHeader, neededColumns } from "../../src/workbook/check-header.ts";
import { tableOfRows } from "../../src/workbook/files/table-of-rows.ts";

function check(header: readonly string[], firstLook = false, cells: readonly string[] = ["x"]) {
  const problems = new ProblemList();
  const origin = { file: "c.csv", name: "c.csv", encoding: "utf-8", delimiter: ",", table: "calibrations" } as const;
  const rows = { header: { line: 1, cells: header }, rows: [{ line: 2, cells }] };
  checkHeader(tableOfRows({ ...origin, ...rows }, problems), firstLook, problems);
  return problems.all;
}

test("every missing column is told, whatever the order of the others", () => {
  const found = check(["tag", "calibration"]);
  expect(found.map(({ values }) => values.column)).toEqual(["performed_on", "performed_by"]);
});

test("a first look does without the day and the person", () => {
  expect(check(["tag", "calibration"], true)).toEqual([]);
  const names = neededColumns(tableColumns("calibrations"), true).map(({ name }) => name);
  expect(names).toEqual(["calibration", "tag"]);
});

test("an unknown column names the one that was probably meant, or none", () => {
  const found = check(["tag", "calibration", "performed_on", "performed by", "air_tempratue", "colour", ""]);
  expect(found.map(({ code, values }) => [code, values.nearest])).toEqual([
    ["tables/column-unknown", "; did you mean air_temperature?"],
    ["tables/column-unknown", ""],
  ]);
});

test("a column with its unit in brackets is the column", () => {
  expect(
    check(["tag", "calibration", "performed_on", "performed_by", "Air temperature (°C)", "Pressure [hPa]"]),
  ).toEqual([]);
});

// One letter missing, one too many, one wrong, two exchanged.
test.each(["air_temprature", "air_temmperature", "air_temperatuge", "air_temperatuer", "Air temprature (°C)"])(
  "%s with something under it stops, for it was meant as a column",
  (name) => {
    const header = ["tag", "calibration", "performed_on", "performed_by", name];
    const filled = check(header, false, ["LT-1", "C-1", "2026-03-04", "T. Example", "20"]);
    expect(filled.map(({ code, values }) => [code, values.nearest])).toEqual([
      ["tables/column-slip", "air_temperature"],
    ]);
    expect(check(header).map(({ code }) => code)).toEqual(["tables/column-unknown"]);
  },
);

test("a slip of a needed column is not told as missing too; beside the filled column itself it is a note", () => {
  const slipped = check(["tga", "tag", "calibratoin", "performed_on", "performed_by"], false, [
    "x",
    "x",
    "x",
    "x",
    "x",
  ]);
  expect(slipped.map(({ code }) => code)).toEqual(["tables/column-unknown", "tables/column-slip"]);
  const beside = check(["tag", "calibration", "owner", "owners"], true, ["x", "x", "x", "x"]);
  expect(beside.map(({ code }) => code)).toEqual(["tables/column-unknown"]);
});

test("each further place of a column is told with its first", () => {
  const found = check(["tag", "calibration", "performed_on", "performed_by", "Tag", "TAG"]);
  expect(found.map(({ code, values }) => [code, values.first])).toEqual([
    ["tables/column-twice", 1],
    ["tables/column-twice", 1],
  ]);
});
