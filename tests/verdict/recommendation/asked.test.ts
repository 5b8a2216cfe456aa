import { expect, test } from "vitest";
import { askedOf, countedFindings, isOfReadings } from "../../../src/verdict/recommendation/asked.ts";
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

const findings = [10, 33, 12, 9, 4, 27].map((row, index) =>
  finding(row, (["sensor", "readings", "wiring", "input card", "scaling", "switched output"] as const)[index] ?? "rig"),
);
const rows = (asked: { sensor: boolean; controller: boolean }) =>
  countedFindings(stateOf({ findings }), { ...asked, isPassing: false }).map(({ row }) => row);

test("a finding counts where its part of the loop asks for work, and none of a switched output", () => {
  expect(rows({ sensor: true, controller: false })).toEqual([10, 33, 12]);
  expect(rows({ sensor: false, controller: true })).toEqual([33, 9, 4]);
  expect(rows({ sensor: false, controller: false })).toEqual([]);
});

test("typing, play and warm-up are for the readings to settle", () => {
  expect([33, 23, 34, 10].map((row) => isOfReadings(finding(row, "sensor")))).toEqual([true, true, true, false]);
});
