import { expect, test } from "vitest";
import { askedOf, countedFindings, isOfApart, isOfReadings } from "../../../src/verdict/recommendation/asked.ts";
import { usualThresholds } from "../../../src/verdict/recommendation/recommendation-thresholds.ts";
import { finding, part, stateOf } from "./sample-state.ts";

const at80 = { ...usualThresholds, adjustAt: 80 };

test("what does not pass asks for work, a conditional fail too; a conditional pass is accepted", () => {
  expect(askedOf(stateOf())).toEqual({ sensor: true, controller: false, isPassing: false });
  const conditional = (statement: "conditional fail" | "conditional pass") =>
    askedOf(stateOf({ statement, sensor: part(statement, 0.95) }));
  expect(conditional("conditional fail")).toMatchObject({ sensor: true, isPassing: false });
  expect(conditional("conditional pass")).toMatchObject({ sensor: false, isPassing: true });
});

test("from adjust_at on a passing part asks as well, and just below it does not", () => {
  const asked = (worst: number) =>
    askedOf(stateOf({ statement: "pass", sensor: part("pass", worst), thresholds: at80 }));
  expect(asked(0.8)).toEqual({ sensor: true, controller: false, isPassing: true });
  expect(asked(0.7999).sensor).toBe(false);
});

test("without adjust_at nothing is asked of a part that passes on its limit", () => {
  expect(askedOf(stateOf({ statement: "pass", sensor: part("pass", 1) })).sensor).toBe(false);
});

const findings = (
  [
    ["datum-shifted", "sensor"],
    ["typing-error", "readings"],
    ["leakage-across-loop", "wiring"],
    ["offset-of-card", "input card"],
    ["high-constant-wrong", "scaling"],
    ["switch-point-off", "switched output"],
  ] as const
).map(([id, stage]) => finding(id, stage));
const ids = (asked: { sensor: boolean; controller: boolean }) =>
  countedFindings(stateOf({ findings }), { ...asked, isPassing: false }).map(({ id }) => id);

test("a finding counts where its part of the loop asks for work, and none of a switched output", () => {
  expect(ids({ sensor: true, controller: false })).toEqual(["datum-shifted", "typing-error", "leakage-across-loop"]);
  expect(ids({ sensor: false, controller: true })).toEqual(["typing-error", "offset-of-card", "high-constant-wrong"]);
  expect(ids({ sensor: false, controller: false })).toEqual([]);
});

test("typing, play and warm-up are for the readings to settle", () => {
  const isAgain = (id: string) => isOfReadings({ id, stage: "sensor" });
  expect(["typing-error", "play-in-rig", "warm-up-or-drift", "datum-shifted"].map(isAgain)).toEqual([
    true,
    true,
    true,
    false,
  ]);
});

test("wild readings, exchanged rows and slips stand apart from the others; what all readings show does not", () => {
  const stage = "readings" as const;
  const ids = ["wild-reading", "rows-exchanged", "typing-error"];
  expect(ids.map((id) => isOfApart({ id, stage }))).toEqual([true, true, true]);
  expect(isOfApart({ id: "warm-up-or-drift", stage })).toBe(false);
  expect(isOfApart({ id: "one-point-off", stage: "sensor" })).toBe(true);
  expect(isOfApart({ id: "one-point-off", stage: "scaling" })).toBe(false);
});
