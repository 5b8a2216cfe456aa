import { expect, test } from "vitest";
import { jsonDoubts } from "../../../src/jobs/signing/json-doubts.ts";

const record = { a: [1, 2], b: "x".repeat(200), c: 3 };
const text = `${JSON.stringify(record)}\n`;

test("a text as it should be gives no doubt", () => {
  expect(jsonDoubts(text, text)).toEqual([]);
});

test("the first difference is told with what stands around it", () => {
  expect(jsonDoubts(text.replace("1,", "1.0,"), text)).toEqual([
    {
      about: "page",
      place: "line 1",
      says: `the record is written as "{"a":[1,2],"b":"${"x".repeat(51)}", the file has "{"a":[1.0,2],"b":"${"x".repeat(49)}"`,
    },
  ]);
  const indented = `${JSON.stringify(record, null, 2)}\n`;
  expect(jsonDoubts(indented.replace('"c": 3', '"c": 4'), indented)).toEqual([
    { about: "page", place: "line 7", says: expect.stringMatching(/x", "c": 3 \}", the file has ".*x", "c": 4 \}"$/u) },
  ]);
});

test("an end that is missing, and one too many, are told", () => {
  expect(jsonDoubts(text.trimEnd(), text)[0]?.says).toMatch(/x","c":3\}", the file has ".*x","c":3\}"$/u);
  expect(jsonDoubts("", text)[0]?.says).toMatch(/the file has "\(end\)"$/u);
});
