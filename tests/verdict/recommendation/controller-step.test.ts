import { expect, test } from "vitest";
import { namedCause } from "../../../src/verdict/causes/cause-of.ts";
import { controllerPart, controllerStep, scalingPart } from "../../../src/verdict/recommendation/controller-step.ts";
import type { PhaseState } from "../../../src/verdict/recommendation/phase-state.ts";
import { finding, part, reasonsOf, stateOf } from "./sample-state.ts";

const off: Partial<PhaseState> = {
  sensor: part("pass", 0.2),
  controller: part("fail", 6.8),
  stageParts: [
    { stage: "sensor", part: 0.2 },
    { stage: "wiring", part: 9 },
    { stage: "scaling", part: 6.7 },
  ],
  newConstants: "pass",
};
const fourth = finding("high-constant-wrong", "scaling");

test("the controller's share is that of the stages behind the signal, without the wiring", () => {
  expect(controllerPart(stateOf(off))).toBe(6.7);
  expect(controllerPart(stateOf())).toBe(0);
});

test("a wrong constant is re-scaled with the forecast's constants where nothing else is changed", () => {
  expect(controllerStep(stateOf(off), [fourth], true)).toMatchObject({
    action: "re-scale",
    does: "Put the scaling constants in the controller right.",
    constants: "of the forecast",
  });
});

test("after another step the designed constants are typed in: the forecast's would count its cure twice", () => {
  const step = controllerStep(stateOf(off), [fourth], false);
  expect(step?.constants).toBe("of the instrument's row");
  expect(reasonsOf(step).at(-1)).toContain("twice");
});

test("constants that would not bring it inside are not offered, and a truncation needs none", () => {
  expect(controllerStep(stateOf({ ...off, newConstants: "fail" }), [fourth], true)?.constants).toBe(
    "of the instrument's row",
  );
  expect(controllerStep(stateOf(off), [finding("value-clamped-or-cut", "scaling")], true)?.constants).toBeNull();
});

test("a controller that is right is never re-scaled", () => {
  const right = stateOf({ ...off, stageParts: [{ stage: "scaling", part: 0.49 }] });
  expect(controllerStep(right, [], true)).toBeUndefined();
  expect(controllerStep({ ...right, stageParts: [{ stage: "scaling", part: 0.5 }] }, [], true)?.action).toBe(
    "re-scale",
  );
});

test("what the card makes of the signal before any constant is no part of the scaling", () => {
  const card = stateOf({ ...off, stageParts: [{ stage: "input card", part: 6.7 }] });
  expect(controllerPart(card)).toBe(6.7);
  expect(scalingPart(card)).toBe(0);
  expect(controllerStep(card, [], true)).toBeUndefined();
});

test("an offset that may be one of both constants is looked for there first, and hidden by no constants of the forecast", () => {
  const open = finding("offset-of-card", "input card", { rivals: [namedCause("both-constants-wrong")] });
  const step = controllerStep(stateOf(off), [open], true);
  expect(step).toMatchObject({ action: "re-scale", constants: null });
  expect(step?.does).toMatch(/^Compare the two scaling constants .* find the offset of the input card/u);
  expect(step?.before).toContain("To be sure of the cause");
});

test("an offset of the card, or another channel, is not for new constants", () => {
  for (const id of ["offset-of-card", "shunt-or-gain-off", "other-channel"])
    expect(controllerStep(stateOf(off), [finding(id, "input card")], true)).toBeUndefined();
});

test("a cause that is not certain is to be confirmed first", () => {
  const open = finding("live-zero-scaled-from-zero", "scaling", {
    rivals: [namedCause("low-constant-wrong")],
    separatedBy: "read the range of the channel",
  });
  expect(controllerStep(stateOf(off), [open], true)?.before).toBe(
    "To be sure of the cause: read the range of the channel.",
  );
});
