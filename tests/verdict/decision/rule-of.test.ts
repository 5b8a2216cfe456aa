import { expect, test } from "vitest";
import type { Instrument } from "../../../src/model/instrument.ts";
import { decisionRules } from "../../../src/model/instrument-words.ts";
import { hasGuardFactor, type RuleOverride, ruleOf, usualMinimumRatio } from "../../../src/verdict/decision/rule-of.ts";

const instrument: Instrument = Object.freeze({
  tag: "LT-1",
  rangeLower: 0,
  rangeUpper: 100,
  distanceUnit: "mm",
  signalLower: 4,
  signalUpper: 20,
  signalUnit: "mA",
  tolerance: 1,
  toleranceBasis: "distance",
});

test("an instrument that asks for a guard band has one equal to U", () => {
  expect(
    ruleOf(
      {
        tag: "LT-1",
        rangeLower: 0,
        rangeUpper: 100,
        distanceUnit: "mm",
        signalLower: 4,
        signalUpper: 20,
        signalUnit: "mA",
        tolerance: 1,
        toleranceBasis: "distance",
        decisionRule: "guard band",
      },
      {},
    ),
  ).toEqual({ name: "guard band", guardFactor: 1 });
});

test.each<[string, Partial<Instrument>, RuleOverride, object]>([
  ["nothing is stated", {}, {}, { name: "simple acceptance", guardFactor: 0 }],
  [
    "its own factor",
    { decisionRule: "non-binary guard band", guardFactor: 0.83 },
    {},
    { name: "non-binary guard band", guardFactor: 0.83 },
  ],
  ["a factor of 0", { decisionRule: "guard band", guardFactor: 0 }, {}, { name: "guard band", guardFactor: 0 }],
  [
    "a factor for this run",
    { decisionRule: "guard band", guardFactor: 0.83 },
    { guardFactor: 0 },
    { name: "guard band", guardFactor: 0 },
  ],
  [
    "a rule for this run, with the factor of the instrument",
    { decisionRule: "simple acceptance", guardFactor: 0.83 },
    { name: "guard band" },
    { name: "guard band", guardFactor: 0.83 },
  ],
  [
    "a factor where the rule has none",
    { decisionRule: "managed guard band", guardFactor: 0.83 },
    { guardFactor: 0.5 },
    { name: "managed guard band", guardFactor: 0 },
  ],
  ["a factor without a rule", { guardFactor: 1 }, { guardFactor: 1 }, { name: "simple acceptance", guardFactor: 0 }],
  ["options left out", {}, { name: undefined, guardFactor: undefined }, { name: "simple acceptance", guardFactor: 0 }],
])("%s", (_, change, override, rule) => {
  expect(ruleOf({ ...instrument, ...change }, override)).toEqual(rule);
});

test("every rule of the table can be asked for", () => {
  for (const name of decisionRules) expect(ruleOf({ ...instrument, decisionRule: name }, {}).name).toBe(name);
});

test("four to one is what is usually asked for", () => {
  expect(usualMinimumRatio).toBe(4);
});

test("a guard band has a factor, with two words or with four, the other rules none", () => {
  expect(decisionRules.filter(hasGuardFactor)).toEqual(["guard band", "non-binary guard band"]);
});
