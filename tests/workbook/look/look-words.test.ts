import { expect, test } from "vitest";
import { wordOfTable } from "../../../src/workbook/look/look-words.ts";

test.each([
  ["direction", "Up", "rising"],
  ["direction", "down", "falling"],
  ["direction", "↑", "rising"],
  ["direction", " INC ", "rising"],
  ["phase", "before", "as_found"],
  ["phase", "Left", "as_left"],
  ["phase", "later", "later"],
] as const)("%s %s is %s", (column, text, word) => {
  expect(wordOfTable(column, text)).toBe(word);
});
