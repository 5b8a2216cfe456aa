import { join } from "node:path";
import { expect, test } from "vitest";
import { smallestWorkbook, withText } from "../../workbook/smallest-workbook.ts";
import { filesBelow, spanwright, temporaryFolder, written } from "../built-command.ts";

test("a workbook in which nothing is wrong is read, counted, and left as it is", () => {
  const folder = written(temporaryFolder(), smallestWorkbook);
  expect(spanwright("check", folder)).toEqual({
    exitCode: 0,
    output: "1 instrument, 1 calibration, 5 readings: nothing wrong, no notes\n",
    complaints: "",
  });
  expect(filesBelow(folder)).toEqual(Object.keys(smallestWorkbook).sort());
});

test("a note alone is no fault", () => {
  const folder = written(temporaryFolder(), withText("calibrations.csv", "GB-1", ""));
  const { exitCode, output, complaints } = spanwright("check", folder);
  expect(exitCode).toBe(0);
  expect(output).toContain("nothing wrong, 1 note");
  expect(complaints).toBe(
    `note  ${folder}/calibrations.csv:2: the calibration names no standard, so nothing shows its traceability; accepted: the standards used, by name\n`,
  );
});

test("several problems in several tables are all told in one run, each with file, line and column", () => {
  const folder = written(temporaryFolder(), {
    ...smallestWorkbook,
    "instruments.csv": smallestWorkbook["instruments.csv"].replace("0.5,percent of span", "-1,percent of spam"),
    "calibrations.csv": smallestWorkbook["calibrations.csv"].replace("2026-03-04", "04/03/26"),
    "readings.csv": smallestWorkbook["readings.csv"].replace("50,12.01", "5O,12.01 mm"),
  });
  const { exitCode, complaints } = spanwright("check", folder);
  expect(exitCode).toBe(2);
  const lines = complaints.split("\n").filter((line) => line.startsWith("wrong"));
  for (const place of [
    "instruments.csv:2:tolerance:",
    "instruments.csv:2:tolerance_basis:",
    "calibrations.csv:2:performed_on:",
    "readings.csv:4:reference:",
    "readings.csv:4:signal:",
  ]) {
    expect(lines.filter((line) => line.startsWith(`wrong  ${folder}/${place}`))).toHaveLength(1);
  }
});

test("a lone table of readings is checked with the options that a report of it takes", () => {
  const folder = written(temporaryFolder(), { "rail.csv": smallestWorkbook["readings.csv"] });
  const path = join(folder, "rail.csv");
  const { exitCode, output } = spanwright(
    "check",
    path,
    ...["--range", "0:100mm", "--signal", "4:20mA", "--tolerance", "0.5%span"],
  );
  expect(output).toBe(
    'rail: the tolerance "0.5%span" is ±0.5 % of span: ±0.5 mm at 0 mm, ±0.5 mm at 100 mm\n' +
      "1 instrument, 1 calibration, 5 readings: nothing wrong, no notes\n",
  );
  expect(exitCode).toBe(0);
  expect(spanwright("check", path).exitCode).toBe(2);
});

test("a path at which nothing is, is a fault", () => {
  const { exitCode, complaints } = spanwright("check", join(temporaryFolder(), "nowhere"));
  expect(exitCode).toBe(2);
  expect(complaints).toContain("there is no such file or folder");
});
