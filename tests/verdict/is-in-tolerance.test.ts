import { expect, test } from "vitest";
import { isInTolerance } from "../../src/verdict/is-in-tolerance.ts";

test.each(["pass", "conditional pass"] as const)("a %s counts as in tolerance", (statement) => {
  expect(isInTolerance(statement)).toBe(true);
});

test.each(["conditional fail", "fail", "cannot be decided", null] as const)("%s does not", (statement) => {
  expect(isInTolerance(statement)).toBe(false);
});
