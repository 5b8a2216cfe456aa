import { expect, test } from "vitest";
import { isAdjusted } from "../../src/model/is-adjusted.ts";

test("any kind of work is an adjustment; none, and nothing said, is not", () => {
  expect(
    (["re-teach", "re-scale", "repair", "replace"] as const).every((adjustment) => isAdjusted({ adjustment })),
  ).toBe(true);
  expect([isAdjusted({ adjustment: "none" }), isAdjusted({})]).toEqual([false, false]);
});
