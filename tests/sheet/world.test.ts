import { expect, test } from "vitest";
import { momentOf } from "../../src/sheet/world.ts";

test.each([
  // The examples of RFC 3339, 5.8, first moment of its second and third, at their offsets.
  [Date.UTC(1996, 11, 20, 0, 39, 57), 480, "1996-12-19T16:39:57-08:00"],
  [Date.UTC(1937, 0, 1, 11, 40, 27), -20, "1937-01-01T12:00:27+00:20"],
  [Date.UTC(2026, 10, 27, 5, 1, 5), -330, "2026-11-27T10:31:05+05:30"],
])("%d with %d minutes behind UTC is %s", (moment, behind, words) => {
  expect(momentOf(new Date(moment), behind)).toBe(words);
  expect(Date.parse(words)).toBe(moment);
});
