import { expect, test } from "vitest";
import { isOneSlip, nearestWord } from "../../src/workbook/nearest-word.ts";

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

test.each([
  ["singal", "signal"],
  ["signl", "signal"],
  ["signnal", "signal"],
  ["sihnal", "signal"],
])("%j is one slip away from %j", (written, word) => {
  expect(isOneSlip(written, word)).toBe(true);
});

// The same word; two letters wrong; letters exchanged that do not touch; words of three letters.
test.each([
  ["signal", "signal"],
  ["sihbal", "signal"],
  ["gisnal", "signal"],
  ["tga", "tag"],
  ["ta", "tag"],
])("%j is not one slip away from %j", (written, word) => {
  expect(isOneSlip(written, word)).toBe(false);
});
