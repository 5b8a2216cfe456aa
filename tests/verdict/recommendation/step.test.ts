import { expect, test } from "vitest";
import { reasonOf, stepOf } from "../../../src/verdict/recommendation/step.ts";

test("a step has nothing to make sure of and no constants where nothing is said of them", () => {
  const step = stepOf({ action: "leave", of: "loop", does: "Leave it.", rule: "it passes", reasons: [] });
  expect(step).toMatchObject({ before: null, constants: null });
  expect(stepOf({ ...step, before: "Look." }).before).toBe("Look.");
});

test("a sentence alone is a reason, and a finding is one with its cause and place", () => {
  const found = { id: "blind-zone", stage: "sensor", says: "It stands still." } as const;
  const reason = reasonOf(found, { before: "Look: ", after: " So it is." });
  expect(reason).toEqual({ says: "Look: It stands still. So it is.", cause: { id: "blind-zone", stage: "sensor" } });
  const facts = { action: "leave", of: "loop", does: "Leave it.", rule: "it passes" } as const;
  expect(stepOf({ ...facts, reasons: ["It passes.", reason] }).reasons).toEqual([{ says: "It passes." }, reason]);
});
