import { expect, test } from "vitest";
import { isBypassed } from "../../src/model/is-bypassed.ts";

test.each(["none", "None.", " NO ", "not needed", "N/A", "not applicable", "–", "-"])(
  "“%s” where a number of a permit would stand says that nothing was bypassed",
  (bypassPermit) => {
    expect(isBypassed({ bypassPermit })).toBe(false);
  },
);

test("every other text is a permit; an empty cell is none", () => {
  for (const bypassPermit of ["PTW-2026-17", "17", "NO-17", "none of the above 3", "yes"]) {
    expect(isBypassed({ bypassPermit }), bypassPermit).toBe(true);
  }
  expect(isBypassed({})).toBe(false);
});
