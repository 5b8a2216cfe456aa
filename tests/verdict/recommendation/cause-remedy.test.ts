import { expect, test } from "vitest";
import { namedCause } from "../../../src/verdict/causes/cause-of.ts";
import { causes } from "../../../src/verdict/causes/causes.ts";
import { remedyOf } from "../../../src/verdict/recommendation/cause-remedy.ts";

const cureOf = (id: string, stage: Parameters<typeof remedyOf>[0]["stage"] = "sensor") => remedyOf({ id, stage }).cures;

test("every cause has a remedy, and an id that no cause has is refused", () => {
  for (const { id, place } of causes) expect(() => cureOf(id, place)).not.toThrow();
  expect(() => cureOf("gremlin")).toThrow(RangeError);
});

test.each([
  ["wiring", ["offset-of-card", "shunt-or-gain-off", "leakage-across-loop", "current-limited"]],
  ["wiring", ["voltage-output-overloaded", "open-wire", "current-and-voltage-mixed-up", "other-channel"]],
  ["set-up", ["blind-zone", "obstruction-in-beam", "target-beyond-range", "target-lost-fault", "target-lost-held"]],
  ["set-up", ["air-temperature", "axis-tilted", "weak-target", "signal-at-its-end"]],
  ["sensor", ["slope-turned-round", "datum-shifted", "ends-taught-wrong", "both-ends-taught-wrong"]],
  ["sensor", ["curved-characteristic"]],
  ["readings", ["output-not-settled", "play-in-rig", "typing-error", "warm-up-or-drift"]],
] as const)("%s cures what lies there: %j", (place, ids) => {
  expect(ids.map((id) => cureOf(id))).toEqual(ids.map(() => place));
});

test("constants cure what the controller makes of a right signal", () => {
  const ofScaling = causes.filter(({ place }) => place === "scaling").map(({ id }) => cureOf(id, "scaling"));
  expect(ofScaling).toEqual(Array(11).fill("scaling"));
});

test("what shows in the raw counts is cured at the card, for no constant lies before them", () => {
  const inCounts = ["live-zero-scaled-from-zero", "from-zero-scaled-as-live-zero", "full-scale-count-wrong"];
  for (const id of [...inCounts, "range-of-card-wrong"]) expect(cureOf(id, "input card"), id).toBe("wiring");
});

test("an offset of the value is the card's, but where both constants are not excluded they are compared first", () => {
  const of = (rivals: readonly string[]) =>
    remedyOf({ id: "offset-of-card", stage: "input card", rivals: rivals.map(namedCause) });
  expect(of(["counts-row-wrong"]).cures).toBe("wiring");
  expect(of(["both-constants-wrong"])).toMatchObject({ cures: "scaling", isOfConstants: false });
});

test("a signal of another kind is set at the sensor, not in the controller", () => {
  expect(cureOf("live-zero-scaled-from-zero")).toBe("set-up");
  expect(cureOf("from-zero-scaled-as-live-zero")).toBe("set-up");
});

test("a gap that closes at both ends is for the forecast to judge, a lag for a longer dwell", () => {
  expect(cureOf("hysteresis-of-sensor")).toBe("sensor");
  expect(cureOf("hysteresis-of-sensor", "scaling")).toBe("readings");
  expect(cureOf("output-not-settled")).toBe("readings");
});
