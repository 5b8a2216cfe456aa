import { expect, test } from "vitest";
import { tableColumns } from "../../src/model/tables.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { checkHeader, neededColumns } from "../../src/workbook/check-header.ts";
import { tableOfRows } from "../../src/workbook/files/table-of-rows.ts";

function check(header: readonly string[], firstLook = false) {
  const problems = new ProblemList();
  const origin = { file: "c.csv", name: "c.csv", encoding: "utf-8", delimiter: ",", table: "calibrations" } as const;
  const rows = [header, ["x"]].map((cells, index) => ({ line: index + 1, cells }));
  checkHeader(tableOfRows({ ...origin, rows }, problems), firstLook, problems);
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
  const found = check(["tag", "calibration", "performed_on", "performed by", "air_temprature", "colour", ""]);
  expect(found.map(({ code, values }) => [code, values.nearest])).toEqual([
    ["tables/column-unknown", "; did you mean air_temperature?"],
    ["tables/column-unknown", ""],
  ]);
});

test("a column with its unit in brackets names the one that was meant", () => {
  const found = check(["tag", "calibration", "performed_on", "performed_by", "Air temperature (°C)", "Pressure [hPa]"]);
  expect(found.map(({ values }) => values.nearest)).toEqual([
    "; did you mean air_temperature?",
    "; did you mean pressure?",
  ]);
});

test("each further place of a column is told with its first", () => {
  const found = check(["tag", "calibration", "performed_on", "performed_by", "Tag", "TAG"]);
  expect(found.map(({ code, values }) => [code, values.first])).toEqual([
    ["tables/column-twice", 1],
    ["tables/column-twice", 1],
  ]);
});
