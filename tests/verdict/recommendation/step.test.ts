import { expect, test } from "vitest";
import { stepOf } from "../../../src/verdict/recommendation/step.ts";

test("a step has nothing to make sure of and no constants where nothing is said of them", () => {
  const step = stepOf({ action: "leave", of: "loop", does: "Leave it.", rule: "it passes", reasons: [] });
  expect(step).toMatchObject({ before: null, constants: null });
  expect(stepOf({ ...step, before: "Look." }).before).toBe("Look.");
});
