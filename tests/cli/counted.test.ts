import { expect, test } from "vitest";
import { counted } from "../../src/cli/counted.ts";

test.each([
  [0, "0 records"],
  [1, "1 record"],
  [2, "2 records"],
])("%d of a record are %j", (count, words) => {
  expect(counted(count, "record")).toBe(words);
});
