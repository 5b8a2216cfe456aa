import { expect, test } from "vitest";
import { writeTyped } from "../../../src/workbook/files/write-typed.ts";

const columns = [
  { name: "tag", reads: "text" },
  { name: "signal", reads: "number" },
] as const;

test("a number stands as it was typed, also below zero; a text that begins like a formula is marked", () => {
  const rows = [
    ["=LT-1", "-4,02"],
    ["-5", "-4,02 mA"],
  ];
  expect(writeTyped({ columns, rows, delimiter: ";" })).toBe("tag;signal\r\n'=LT-1;-4,02\r\n'-5;'-4,02 mA\r\n");
});

test("a cell that holds the separator is quoted", () => {
  expect(writeTyped({ columns, rows: [["a, b", "4,02"]], delimiter: "," })).toBe('tag,signal\r\n"a, b","4,02"\r\n');
});
