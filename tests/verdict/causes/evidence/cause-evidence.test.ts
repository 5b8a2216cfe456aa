import { expect, test } from "vitest";
import { planted } from "../planted.ts";

test("signal and value give two stages, counts a third, the signal at the card a fourth", () => {
  const stages = (changes: Parameters<typeof planted>[1], missing: Parameters<typeof planted>[2] = []) =>
    planted({}, changes, missing).stages.map(({ stage }) => stage);
  expect(stages({})).toEqual(["sensor", "input card and scaling"]);
  expect(stages({ hasCounts: true })).toEqual(["sensor", "input card", "scaling"]);
  expect(stages({ hasCounts: true, hasCard: true })).toEqual(["sensor", "wiring", "input card", "scaling"]);
  expect(stages({}, ["signal"])).toEqual(["whole loop"]);
});

test("half the tolerance matters: 0.25 % of span for 0.5 %", () => {
  expect(planted({}).mattering).toBe(0.25);
});

test("a fault at the sensor leaves the stages after it alone, and one after it leaves the sensor alone", () => {
  const errors = (fault: Parameters<typeof planted>[0]) =>
    planted(fault).stages.map(({ line }) => Math.round(line?.errorAtUpper.percentSpan ?? Number.NaN) + 0);
  expect(errors({ seen: (part) => part + 0.03 })).toEqual([3, 0]);
  expect(errors({ value: (part) => part + 0.03 })).toEqual([0, 3]);
  expect(errors({ seen: (part) => part - 0.02, value: (part) => part + 0.03 })).toEqual([-2, 3]);
});
