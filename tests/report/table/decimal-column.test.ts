import { expect, test } from "vitest";
import { roomAfter, widestDecimals } from "../../../src/report/table/decimal-column.ts";

test("a number with fewer decimals leaves room for those that it lacks, and for the point if it has none", () => {
  const column = ["0.0196", "1.24", "34", "unlimited"];
  expect(column.map((text) => roomAfter(text, widestDecimals(column)))).toEqual([0, 2, 4.45, 0]);
});

test("words and columns of whole numbers are left as they are", () => {
  expect(
    ["12", "over 1000", "none"].map((text) => roomAfter(text, widestDecimals(["12", "over 1000", "none"]))),
  ).toEqual([0, 0, 0]);
});

test("of an error and its uncertainty the last decimals count", () => {
  expect(roomAfter("−400 ± 110", widestDecimals(["+22.8 ± 2.6", "−400 ± 110"]))).toBe(1.45);
});
