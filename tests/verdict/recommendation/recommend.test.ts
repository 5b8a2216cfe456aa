import { expect, test } from "vitest";
import type { PhaseState } from "../../../src/verdict/recommendation/phase-state.ts";
import { recommend } from "../../../src/verdict/recommendation/recommend.ts";
import { usualThresholds } from "../../../src/verdict/recommendation/recommendation-thresholds.ts";
import { curable, finding, notCurable, part, passing, reasonsOf, stateOf } from "./sample-state.ts";
import { switchedState } from "./sample-switching.ts";

const stepsOf = (changes: Partial<PhaseState>) => {
  const { also, ...first } = recommend(stateOf(changes));
  return [first, ...also].map(({ action, of }) => `${action}: ${of}`);
};
const scalingOff: Partial<PhaseState> = {
  controller: part("fail", 6),
  stageParts: [{ stage: "scaling", part: 5 }],
  newConstants: "pass",
};

test("a loop that passes and asks for nothing is left", () => {
  expect(stepsOf(passing)).toEqual(["leave: loop"]);
});

test("means that pass beside a reading far outside: it is read again, as under a rule that judges readings", () => {
  const wild = finding("wild-reading", "readings");
  const outside = { ...passing, rule: { name: "guard band", guardFactor: 1 } as const, sensor: part("pass", 2) };
  expect(stepsOf({ ...outside, findings: [wild] })).toEqual(["cannot be decided: readings"]);
  const step = recommend(stateOf({ ...outside, findings: [wild] }));
  const alone = recommend(stateOf({ findings: [wild] }));
  expect(step.does).toBe(alone.does);
  expect(reasonsOf(step)[0]).toBe(
    "By the rule the mean errors pass, and single readings lie outside: the worst is 2 times the tolerance.",
  );
  expect(stepsOf({ ...outside, findings: [wild], missing: ["4 test points were read, 5 are asked for"] })).toEqual([
    "cannot be decided: readings",
    "cannot be decided: readings",
  ]);
  expect(stepsOf({ ...passing, findings: [wild] })).toEqual(["leave: loop"]);
  expect(reasonsOf(recommend(stateOf(outside)))).toEqual([
    "By the rule the mean errors pass, and single readings lie outside: the worst is 2 times the tolerance.",
    "Read those points again before anything rests on a single reading there.",
  ]);
  const near = { ...outside, sensor: part("pass", 2, curable), thresholds: { ...usualThresholds, adjustAt: 80 } };
  expect(reasonsOf(recommend(stateOf(near)))[0]).toBe(
    "By the rule the mean errors pass, and single readings lie outside: the worst is 2 times the tolerance, and adjusting is asked for from 80 % on.",
  );
});

test("only the sensor off: re-teach; only the controller off: re-scale; both: from behind, for a teach would hide what is there", () => {
  expect(stepsOf({ findings: [finding("datum-shifted", "sensor")] })).toEqual(["re-teach: sensor"]);
  expect(stepsOf({ ...passing, statement: "fail", ...scalingOff })).toEqual(["re-scale: controller"]);
  expect(stepsOf(scalingOff)).toEqual(["re-scale: controller", "re-teach: sensor"]);
});

test("what is wrong around the sensor is put right before it is taught, and alone where it explains the error", () => {
  expect(stepsOf({ findings: [finding("current-limited", "sensor")] })).toEqual(["repair wiring or set-up: wiring"]);
  expect(stepsOf({ findings: [finding("current-limited", "sensor"), finding("ends-taught-wrong", "sensor")] })).toEqual(
    ["repair wiring or set-up: wiring", "re-teach: sensor"],
  );
});

test("a sensor is not replaced while something around it is still to be put right", () => {
  const failedChecks = [
    { item: "mounting", key: "mounting", number: 22, says: "loose", isContradiction: false } as const,
  ];
  expect(stepsOf({ sensor: part("fail", 2, notCurable), failedChecks })).toEqual(["repair wiring or set-up: set-up"]);
});

test("a typing error alone is read again; with a wrong constant both stand, the certain one first", () => {
  expect(stepsOf({ findings: [finding("typing-error", "readings")] })).toEqual(["cannot be decided: readings"]);
  const both = {
    ...passing,
    statement: "fail",
    ...scalingOff,
    findings: [finding("typing-error", "readings"), finding("high-constant-wrong", "scaling")],
  } as const;
  expect(stepsOf(both)).toEqual(["re-scale: controller", "cannot be decided: readings"]);
});

test("a sensor that was not warm is not taught, whatever else was found of it", () => {
  expect(stepsOf({ findings: [finding("warm-up-or-drift", "sensor"), finding("datum-shifted", "sensor")] })).toEqual([
    "cannot be decided: readings",
  ]);
});

test("from adjust_at on a passing loop is adjusted by its stage, and says that it passes", () => {
  const near = {
    statement: "pass",
    sensor: part("pass", 0.85, curable),
    thresholds: { ...usualThresholds, adjustAt: 80 },
  } as const;
  expect(stepsOf(near)).toEqual(["re-teach: sensor"]);
  expect(reasonsOf(recommend(stateOf(near)))[0]).toBe(
    "It passes, but its worst reading is 85 % of the tolerance, and adjusting is asked for from 80 % on.",
  );
});

test("a switched output that fails is worked on though the analog value passes", () => {
  expect(stepsOf({ ...passing, switching: [switchedState("teach")] })).toEqual(["re-teach: switched output"]);
  expect(stepsOf({ ...passing, switching: [switchedState("shift")] })).toEqual(["repair wiring or set-up: set-up"]);
});

test("a failed loop check keeps a passing loop from being left", () => {
  const failedChecks = [{ item: "shield", key: "shield", number: 5, says: "", isContradiction: false } as const];
  expect(stepsOf({ ...passing, failedChecks })).toEqual(["repair wiring or set-up: wiring"]);
});

test("a U that is too large is decided by another standard", () => {
  const open = { statement: "cannot be decided", sensor: part("cannot be decided", 0.9, curable) } as const;
  expect(stepsOf(open)).toEqual(["cannot be decided: standard"]);
});

test("fault signals among distances that are right are not taught away", () => {
  const sensor = part("fail", 0.3, { ...curable, now: { statement: "pass", errorDistance: 3, part: 0.3 } });
  expect(stepsOf({ sensor, faultReadings: 2 })).toEqual(["repair wiring or set-up: set-up"]);
});

test("two stages that pass each, but not together, are cured at the sensor", () => {
  const sensor = part("pass", 0.8, { ...curable, now: { statement: "pass", errorDistance: 8, part: 0.8 } });
  const sum = { sensor, controller: part("fail", 1.1), stageParts: [{ stage: "scaling", part: 0.3 } as const] };
  expect(stepsOf(sum)).toEqual(["re-teach: sensor"]);
  expect(reasonsOf(recommend(stateOf(sum)))[0]).toContain("not what they add up to; the sensor has the greater share");
});

test("where the controller has the greater share of such a sum, it is re-scaled", () => {
  const sensor = part("pass", 0.3, { ...curable, now: { statement: "pass", errorDistance: 3, part: 0.3 } });
  const sum = { sensor, controller: part("fail", 0.7), stageParts: [{ stage: "scaling", part: 0.4 } as const] };
  expect(stepsOf(sum)).toEqual(["re-scale: controller"]);
  expect(reasonsOf(recommend(stateOf(sum)))[0]).toContain("the controller has the greater share");
});

test("nothing judged and nothing found asks for readings", () => {
  expect(stepsOf({ statement: null, sensor: null })).toEqual(["cannot be decided: readings"]);
});

test("a history of the whole loop does not condemn the sensor where the controller is off too", () => {
  const drift = { ...stateOf().drift, earlier: 2, isTaughtTwice: true, isOfWholeLoop: true };
  expect(stepsOf({ drift })).toEqual(["replace: sensor"]);
  expect(stepsOf({ drift, ...scalingOff }).at(-1)).toBe("re-teach: sensor");
});

test("between signal and counts lies the card: it is put right before the sensor is taught, and no constant is typed in", () => {
  const cardOff: Partial<PhaseState> = { controller: part("fail", 6), stageParts: [{ stage: "input card", part: 5 }] };
  expect(stepsOf(cardOff)).toEqual(["repair wiring or set-up: wiring", "re-teach: sensor"]);
  const named = { ...passing, statement: "fail", ...cardOff, findings: [finding("range-of-card-wrong", "input card")] };
  expect(stepsOf(named as Partial<PhaseState>)).toEqual(["repair wiring or set-up: wiring"]);
  const sum = { ...cardOff, sensor: part("pass", 0.6, curable), controller: part("fail", 1.1) };
  expect(stepsOf({ ...sum, stageParts: [{ stage: "input card", part: 0.7 }] })).toEqual([
    "repair wiring or set-up: wiring",
  ]);
});

test("what was read before an adjustment asks for nothing after it: the loop is read first, then what else is open", () => {
  const isUnread = { isUnread: true, missing: ["no readings were taken as left"] };
  const findings = [finding("current-limited", "sensor"), finding("ends-taught-wrong", "sensor")];
  const before: Partial<PhaseState> = { ...scalingOff, findings, stageParts: [{ stage: "wiring", part: 5 }] };
  expect(stepsOf(before)).toContain("repair wiring or set-up: wiring");
  expect(stepsOf({ ...isUnread, ...before })).toEqual(["cannot be decided: readings"]);
  const failedChecks = [{ item: "mounting", key: "mounting", says: "loose", isContradiction: false } as const];
  expect(stepsOf({ ...isUnread, failedChecks })).toEqual([
    "cannot be decided: readings",
    "repair wiring or set-up: set-up",
  ]);
});
