import { expect, test } from "vitest";
import { fixedText, signedText } from "../../../src/report/sheet/sheet-column.ts";

test("a number has its decimals and a true minus sign; an error also its plus", () => {
  expect(fixedText(-1.25, 1)).toBe("−1.3");
  expect(fixedText(1.25, 3)).toBe("1.250");
  expect(signedText(1.25, 2)).toBe("+1.25");
  expect(signedText(-0.001, 2)).toBe("0.00");
});

test("where there is no number the cell is empty", () => {
  expect(fixedText(undefined, 2)).toBe("");
  expect(signedText(undefined, 2)).toBe("");
});
