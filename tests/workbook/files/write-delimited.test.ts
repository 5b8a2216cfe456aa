import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { readNumber } from "../../../src/units/read-number.ts";
import { readDelimited } from "../../../src/workbook/files/read-delimited.ts";
import { writeDelimited } from "../../../src/workbook/files/write-delimited.ts";

test("numbers stay numbers, also below zero; cells that need it are quoted", () => {
  expect(
    writeDelimited([
      ["a", "b"],
      [-0.5, 'x, "y"'],
    ]),
  ).toBe('a,b\r\n-0.5,"x, ""y"""\r\n');
});

test("a table with decimal commas has semicolons, and is read back with the numbers that were written", () => {
  const text = writeDelimited(
    [
      ["tag", "description", "tolerance"],
      ["LT-1", "level, left; old", -0.25],
    ],
    { mark: "comma" },
  );
  expect(text).toBe('tag;description;tolerance\r\nLT-1;"level, left; old";-0,25\r\n');
  const problems = new ProblemList();
  const read = readDelimited(
    { name: "instruments.csv", bytes: new TextEncoder().encode(text) },
    "instruments",
    problems,
  );
  expect(read.decimalMark).toBe("comma");
  expect(read.rows.at(0)?.cells).toEqual(["LT-1", "level, left; old", "-0,25"]);
  expect(readNumber(read.rows.at(0)?.cells[2] ?? "", read.decimalMark)?.value).toBe(-0.25);
});

// What spreadsheets take for a formula: OWASP, "CSV Injection", https://owasp.org/www-community/attacks/CSV_Injection
test.each(["=1+1", "+1", "-1+cmd", "@SUM(A1)", "\r=1", " =1", "\u200b=1", "-"])("%j is marked as text", (text) => {
  expect(writeDelimited([[text]])).toContain(`'${text}`);
});

test.each([
  ["a;=1+1", "a;'=1+1"],
  ["a,=1+1", "a,'=1+1"],
  ["a\t@SUM(A1)", "a\t'@SUM(A1)"],
  ['a;"=1+1', "a;\"'=1+1"],
  ["a; =1;+2", "a; '=1;'+2"],
  [";=1", ";'=1"],
  ["\t=1", "'\t'=1"],
])("%j stays text where another character separates cells", (text, marked) => {
  expect(writeDelimited([[text]])).toContain(marked.replaceAll('"', '""'));
});

test.each(["LT-1", "2026-01-01", "a=b", "", "±1"])("%j is text already", (text) => {
  expect(writeDelimited([[text, "end"]])).toBe(`${text},end\r\n`);
});
