import { expect, test } from "vitest";
import type { Problem } from "../../src/problems/problem.ts";
import { furtherPlaceText, placeText, sentence, whatIsWrong } from "../../src/problems/sentence.ts";

const problem: Problem = Object.freeze({
  code: "tables/cell-not-number",
  severity: "stop",
  place: { file: "readings.csv", line: 14, column: "signal" },
  read: "12,o2",
  values: { example: "12.02" },
});

test("a problem is told with its place, what is wrong, what was read and what is accepted", () => {
  expect(sentence(problem)).toBe(
    'readings.csv:14:signal: this is not a number; read "12,o2"; accepted: a number such as 12.02',
  );
});

test("a page that shows the place apart gets what is wrong alone", () => {
  expect(whatIsWrong(problem)).toBe("this is not a number");
});

test("what is not known of a place is left out", () => {
  expect(placeText({ file: "readings.csv" })).toBe("readings.csv");
  expect(placeText({ file: "readings.csv", line: 3 })).toBe("readings.csv:3");
});

test("in a spreadsheet the place is a cell of a sheet, and what is a line elsewhere is a row", () => {
  const place = { file: "readings.xlsx", sheet: "readings", line: 14, column: "signal", cell: "C14" };
  const { cell: _, ...row } = place;
  expect(placeText(place)).toBe("readings.xlsx, sheet readings, cell C14 (signal)");
  expect(placeText(row)).toBe("readings.xlsx, sheet readings, row 14 (signal)");
  expect(placeText({ file: "readings.xlsx", sheet: "readings", line: 14 })).toBe(
    "readings.xlsx, sheet readings, row 14",
  );
  expect(placeText({ file: "readings.xlsx", sheet: "readings" })).toBe("readings.xlsx, sheet readings");
  expect(furtherPlaceText(place)).toBe("cell C14");
  expect(furtherPlaceText(row)).toBe("row 14");
  const twice = { code: "plausible/row-copied", severity: "warn", values: { line: 12 } } as const;
  expect(whatIsWrong({ ...twice, place })).toContain("as that of row 12;");
  expect(whatIsWrong({ ...twice, place: problem.place })).toContain("as that of line 12;");
});

test("sixty characters of a long text are quoted, counted as a reader counts them", () => {
  expect(sentence({ ...problem, read: "😀".repeat(61) })).toContain(`read "${"😀".repeat(60)}…"`);
  expect(sentence({ ...problem, read: "x".repeat(60) })).toContain(`read "${"x".repeat(60)}"`);
});

test("nothing from the user's files can break the line or move a terminal's cursor", () => {
  const place = { file: "a\u001b[2Jb.csv", line: 1, column: "x\ny" };
  const told = sentence({ ...problem, place, read: "1\n2\u202e3", values: { example: "\u0007" } });
  expect(told).toBe('a␛[2Jb.csv:1:x y: this is not a number; read "1 2\ufffd3"; accepted: a number such as ␇');
});

test("a value that the sentence asks for and nobody gave leaves a gap, not the word undefined", () => {
  expect(sentence({ ...problem, values: {} })).toContain("accepted: a number such as ");
  expect(sentence({ ...problem, values: {} })).not.toContain("undefined");
});
