import { expect, test } from "vitest";
import { namedCause } from "../../../src/verdict/causes/cause-of.ts";
import { listedKey } from "../../../src/verdict/loop-check/loop-items.ts";
import { cardRepairs, repairSteps } from "../../../src/verdict/recommendation/repair-steps.ts";
import { finding, reasonsOf, stateOf } from "./sample-state.ts";

const check = (item: string, number: number | null, isContradiction = false) => ({
  item,
  key: listedKey(item) ?? null,
  number,
  says: "11 V",
  isContradiction,
});

test("set-up comes before wiring, each with what it is consistent with", () => {
  const steps = repairSteps(
    stateOf(),
    [finding("current-limited", "sensor"), finding("blind-zone", "sensor"), finding("datum-shifted", "sensor")],
    [],
  );
  expect(steps.map((step) => [step.of, reasonsOf(step)])).toEqual([
    ["set-up", ["It is blind-zone."]],
    ["wiring", ["It is current-limited."]],
  ]);
});

test("what has rivals is to be made sure of", () => {
  const open = finding("current-limited", "sensor", {
    rivals: [namedCause("obstruction-in-beam")],
    separatedBy: "simulate 20 mA",
  });
  expect(repairSteps(stateOf(), [open], [])[0]?.before).toBe("To be sure of the cause: simulate 20 mA.");
});

test("a loop check that fails is a repair of its place; what readings judge better, and contradictions, are not", () => {
  const places = (...failedChecks: ReturnType<typeof check>[]) =>
    repairSteps(stateOf({ failedChecks }), [], []).map(({ of }) => of);
  expect(places(check("supply at full output", 2))).toEqual(["wiring"]);
  expect(places(check("mounting", 22))).toEqual(["set-up"]);
  expect(places(check("an item of our own", null))).toEqual(["wiring"]);
  expect(places(check("scaling", 12), check("end to end", 13), check("restored", 27), check("identity", 1))).toEqual(
    [],
  );
  expect(places(check("trip point of Q1", 16))).toEqual([]);
  expect(places(check("broken wire", 14))).toEqual(["set-up"]);
  expect(places(check("burden", 6, true))).toEqual([]);
});

test("a card that is off is mended though no cause has a name, and once where one has", () => {
  const state = stateOf({ stageParts: [{ stage: "input card", part: 0.6 }] });
  expect(cardRepairs(state, [])).toMatchObject([{ of: "wiring", action: "repair wiring or set-up" }]);
  expect(cardRepairs(state, [finding("range-of-card-wrong", "input card")])).toEqual([]);
  expect(cardRepairs(stateOf({ stageParts: [{ stage: "input card", part: 0.4 }] }), [])).toEqual([]);
});

test("a signal that changes on its way is mended though no cause has a name", () => {
  const stageParts = [{ stage: "wiring", part: 0.6 } as const];
  expect(repairSteps(stateOf({ stageParts }), [], [])[0]).toMatchObject({ of: "wiring" });
  expect(reasonsOf(repairSteps(stateOf({ stageParts }), [finding("shunt-or-gain-off", "wiring")], [])[0])).toEqual([
    "It is shunt-or-gain-off.",
  ]);
  expect(repairSteps(stateOf({ stageParts: [{ stage: "wiring", part: 0.4 }] }), [], [])).toEqual([]);
});

test("what is left without the day's air is said where it is inside the tolerance", () => {
  const reason = (leftWithoutAir: number) =>
    reasonsOf(repairSteps(stateOf({ leftWithoutAir }), [finding("air-temperature", "sensor")], [])[0])[0];
  expect(reason(0.2)).toContain("the worst reading would be 20 % of the tolerance");
  expect(reason(1.2)).toBe("It is air-temperature.");
});
