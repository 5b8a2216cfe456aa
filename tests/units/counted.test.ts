import { expect, test } from "vitest";
import { counted } from "../../src/units/counted.ts";

test.each([
  [0, "0 records", "0 records were signed"],
  [1, "1 record", "1 record was signed"],
  [2, "2 records", "2 records were signed"],
])("%d of a record are %j", (count, words, sentence) => {
  expect(counted(count, "record")).toBe(words);
  expect(counted(count, "record was signed", "records were signed")).toBe(sentence);
});
