import { expect, test } from "vitest";
import { lookOfName } from "../../src/model/look-of-name.ts";

test.each([
  ["LT-101", "lt-101"],
  ["LT-101", "LT - 101"],
  ["LT-101", "LT\u2011101"],
  ["LT-101", "LT\u2212101"],
  ["LT-101", "LT_101"],
  ["LT-101", "L\u0422-101"],
  ["LT-101", "LT-1O1"],
  ["LT-101", "LT-10l"],
  ["LT-101", "LT-1\u200b01"],
  ["LT-101", "\uff2c\uff34-101"],
  ["PT-7", "\u03a1\u03a4-7"],
])("%s and %s look the same", (one, other) => expect(lookOfName(one)).toBe(lookOfName(other)));

test.each([
  ["LT-101", "LT-110"],
  ["LI-101", "LL-101"],
  ["P-1-11", "P-11-1"],
  ["LT-10.1", "LT-101"],
  ["LT-101A", "LT-101B"],
])("%s and %s do not", (one, other) => expect(lookOfName(one)).not.toBe(lookOfName(other)));
