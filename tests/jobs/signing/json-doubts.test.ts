import { expect, test } from "vitest";
import { jsonDoubts } from "../../../src/jobs/signing/json-doubts.ts";

const record = { a: [1, 2], b: "x".repeat(200) };
const text = `${JSON.stringify(record, null, 2)}\n`;

test("a text as it is always written gives no doubt", () => {
  expect(jsonDoubts(text, record)).toEqual([]);
});

test("the first line that differs is told, shortened; a missing end too", () => {
  expect(jsonDoubts(text.replace("1,", "1.0,"), record)).toEqual([
    { about: "page", place: "line 3", says: 'the record is written as "1,", the file has "1.0,"' },
  ]);
  expect(jsonDoubts(text.replaceAll("x", "y"), record)[0]?.says).toMatch(/^.{120,160}…", the file has ".{95,105}…"$/u);
  expect(jsonDoubts(text.trimEnd(), record)[0]?.says).toBe('the record is written as "", the file has "(end)"');
});
