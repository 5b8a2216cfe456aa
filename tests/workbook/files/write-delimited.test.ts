import { expect, test } from "vitest";
import { writeDelimited } from "../../../src/workbook/files/write-delimited.ts";

test("numbers stay numbers, also below zero; cells that need it are quoted", () => {
  expect(
    writeDelimited([
      ["a", "b"],
      [-0.5, 'x, "y"'],
    ]),
  ).toBe('a,b\r\n-0.5,"x, ""y"""\r\n');
});

// What spreadsheets take for a formula: OWASP, "CSV Injection", https://owasp.org/www-community/attacks/CSV_Injection
test.each(["=1+1", "+1", "-1+cmd", "@SUM(A1)", "\t=1", "\r=1", " =1", "\u200b=1", "-"])(
  "%j is marked as text",
  (text) => {
    expect(writeDelimited([[text]])).toContain(`'${text}`);
  },
);

test.each(["LT-1", "2026-01-01", "a=b", "", "±1"])("%j is text already", (text) => {
  expect(writeDelimited([[text, "end"]])).toBe(`${text},end\r\n`);
});
