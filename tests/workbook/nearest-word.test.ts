import { expect, test } from "vitest";
import { nearestWord } from "../../src/workbook/nearest-word.ts";

const words = ["range_lower", "range_upper", "tag", "serial", "signal_unit"];

test.each([
  ["range_lowr", "range_lower"],
  ["range_uper", "range_upper"],
  ["sreial", "serial"],
  ["tags", "tag"],
  ["ta", "tag"],
  ["signal_units", "signal_unit"],
])("%j was meant to be %j", (written, meant) => {
  expect(nearestWord(written, words)).toBe(meant);
});

test.each(["colour", "x", "", "rangelowerlimit", "sig"])("%j comes near to none", (written) => {
  expect(nearestWord(written, words)).toBeUndefined();
});
