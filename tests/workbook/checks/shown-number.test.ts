import { expect, test } from "vitest";
import { shownNumber } from "../../../src/workbook/checks/shown-number.ts";

test.each([
  [100, "100"],
  [2000, "2000"],
  [110.5, "110.5"],
  [50.800000000000004, "50.8"],
  [-0.25, "−0.25"],
  [0, "0"],
])("%d is shown as %s", (value, text) => {
  expect(shownNumber(value)).toBe(text);
});
