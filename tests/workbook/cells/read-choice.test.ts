import { expect, test } from "vitest";
import { readChoice } from "../../../src/workbook/cells/read-choice.ts";

const bases = ["percent of span", "percent of reading", "distance", "signal"] as const;
const units = ["mm", "cm", "m", "in", "ft"] as const;

test.each([
  ["percent_of_span", bases, "percent of span"],
  ["Percent-of-Span", bases, "percent of span"],
  ["% of span", bases, "percent of span"],
  ["As found", ["as_found", "as_left"], "as_found"],
  ["reteach", ["none", "re-teach"], "re-teach"],
  ["pnp", ["PNP", "NPN"], "PNP"],
  ["MM", units, "mm"],
  ["inches", units, "in"],
  ["metre", units, "m"],
  ["ma", ["mA", "V"], "mA"],
] as const)("%j of %j is %j", (text, choices, value) => {
  expect(readChoice(text, choices)).toEqual({ value });
});

test.each(["km", "kg", "", "constructor", "m m m"])("%j is no unit of distance", (text) => {
  expect(readChoice(text, units)).toEqual({
    code: "tables/cell-not-choice",
    values: { choices: "mm, cm, m, in, ft" },
  });
});
