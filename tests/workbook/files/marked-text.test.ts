import fc from "fast-check";
import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { markedText, unmarkedText } from "../../../src/workbook/files/marked-text.ts";
import { readDelimited } from "../../../src/workbook/files/read-delimited.ts";
import { writeDelimited } from "../../../src/workbook/files/write-delimited.ts";
import { howMany } from "../../how-many.ts";

const signs = fc.string({
  unit: fc.constantFrom(..."=+-@'\";,|\t a1ü".split(""), "\u200b", "\u00a0"),
  maxLength: 12,
});

test("whatever a text holds, it is the same after it was marked and read back", () => {
  fc.assert(
    fc.property(signs, (text) => {
      expect(unmarkedText(markedText(text))).toBe(text);
    }),
    { numRuns: howMany(1000, 3000), seed: 7 },
  );
});

test("no marked text begins a formula, in any country", () => {
  fc.assert(
    fc.property(signs, (text) => {
      for (const separator of [";", ",", "\t", "|"]) {
        const [first = "", ...others] = markedText(text).split(separator);
        expect(first).not.toMatch(/^[\s\p{Cc}\p{Cf}]*[=+@]/u);
        for (const cell of others) expect(cell).not.toMatch(/^["\s\p{Cc}\p{Cf}]*[=+@]/u);
      }
    }),
    { numRuns: howMany(1000, 3000), seed: 7 },
  );
});

test("a table that was written holds the same texts when it is read", () => {
  const texts = ["=1+1", "'=1+1", "''-x", "a;=1", "a;'=1", "@x", "it's", "'quoted'", "-", "LT-1"];
  const text = writeDelimited([["tag", "description"], ...texts.map((one) => [one, "x"])]);
  const read = readDelimited(
    { name: "instruments.csv", bytes: new TextEncoder().encode(text) },
    "instruments",
    new ProblemList(),
  );
  expect(Array.from(read.rows, ({ cells }) => cells[0])).toEqual(texts);
});
