import { expect, test } from "vitest";
import type { Candidate } from "../../../src/model/instrument.ts";
import { fitSignal } from "../../../src/verdict/replacement/fit-signal.ts";
import { candidateWith, loopNeeds, type NeedsChanges, told } from "./sample-loop-needs.ts";

const cell = (more: Partial<Candidate>, instrument: NeedsChanges["instrument"] = {}) =>
  fitSignal(candidateWith(more), loopNeeds({ instrument }));

test("the same ends fit", () => {
  expect(cell({})).toMatchObject({ result: "fits", needs: "4 to 20 mA", offers: "4 to 20 mA" });
  expect(cell({ signalLower: 20, signalUpper: 4 }, { signalLower: 20, signalUpper: 4 }).result).toBe("fits");
});

test("another range of the same kind asks for new scaling; without a live zero a broken wire is no longer seen", () => {
  expect(told(cell({ signalLower: 0 }))).toBe(
    "fits with a change: new scaling in the controller, and the card set to these ends; a broken wire then looks like the low end",
  );
  // No live zero is lost where there is none, or where both have one.
  const plain = "new scaling in the controller, and the card set to these ends";
  expect(cell({ signalLower: 4 }, { signalLower: 0 }).reason).toBe(plain);
  expect(cell({ signalLower: 0, signalUpper: 10 }, { signalLower: 0 }).reason).toBe(plain);
  expect(cell({ signalLower: 5 }).reason).toBe(plain);
});

test("reversed ends ask for the slope or the constants to be turned", () => {
  expect(told(cell({ signalLower: 20, signalUpper: 4 }))).toMatch(/^fits with a change: it goes the other way/u);
});

test("a voltage on a card for current does not fit, whatever its ends", () => {
  expect(told(cell({ signalUnit: "V", signalLower: undefined }))).toBe(
    "does not fit: the card takes mA, and this gives V",
  );
});

test("ends or a unit that are not stated cannot be told", () => {
  expect(cell({ signalUpper: undefined })).toMatchObject({
    result: "cannot be told",
    offers: "mA, its ends not stated",
  });
  expect(cell({ signalUnit: undefined })).toMatchObject({ result: "cannot be told", offers: "not stated" });
});
