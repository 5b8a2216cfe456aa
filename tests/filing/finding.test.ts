import { expect, test } from "vitest";
import { isFinding } from "../../src/filing/finding.ts";

test.each([
  ["pass", false],
  ["conditional pass", false],
  ["conditional fail", true],
  ["fail", true],
  ["cannot be decided", true],
  [null, false],
  [undefined, false],
] as const)("found %s: needs a decision %s", (statement, expected) => {
  expect(isFinding(statement)).toBe(expected);
});
