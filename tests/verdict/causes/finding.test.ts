import { expect, test } from "vitest";
import { causeTitles, rivalName } from "../../../src/verdict/causes/finding.ts";

test("there are 34 causes, each with a title of its own", () => {
  expect(Object.keys(causeTitles)).toEqual(Array.from({ length: 34 }, (_, index) => String(index + 1)));
  expect(new Set(Object.values(causeTitles)).size).toBe(34);
});

test("a rival is named by its title and row, and a row that does not exist is refused", () => {
  expect(rivalName(26)).toBe("curved characteristic (26)");
  expect(() => rivalName(35)).toThrow(RangeError);
});
