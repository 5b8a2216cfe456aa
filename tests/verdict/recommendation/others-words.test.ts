import { expect, test } from "vitest";
import type { PhaseState } from "../../../src/verdict/recommendation/phase-state.ts";
import { recommend } from "../../../src/verdict/recommendation/recommend.ts";
import { curable, finding, part, reasonsOf, stateOf } from "./sample-state.ts";

const wild = finding("wild-reading", "readings");
const inside = { statement: "pass", errorDistance: -2.5, part: 0.25 } as const;
const outside = { statement: "fail", errorDistance: 20, part: 2 } as const;

const saidOf = (changes: Partial<PhaseState>) => {
  const first = recommend(stateOf({ findings: [wild], ...changes }));
  return reasonsOf([first, ...first.also].find(({ of }) => of === "readings"));
};

test("with a wild reading stands what the others say without it: their worst error, whether they pass, what they ask for", () => {
  expect(saidOf({ others: { apart: 1, sensor: inside, controller: null, point: 700 } })).toEqual([
    "It is wild-reading.",
    "Without it the worst of the others is 2.5 mm (25 % of the tolerance), at 700 mm: they pass. By them alone: Leave it as it is.",
  ]);
});

test("others that fail ask for what they would ask for alone", () => {
  const others = { apart: 2, sensor: outside, controller: null, point: 1200 };
  expect(saidOf({ others, sensor: part("fail", 8, curable) })[1]).toBe(
    "Without them the worst of the others is 20 mm (2 times the tolerance), at 1200 mm: they fail. By them alone: Teach both ends of the range anew, at 200 mm and 1200 mm.",
  );
});

test("the loop is judged where it ends, without the one reading too", () => {
  const others = { apart: 1, sensor: inside, controller: outside, point: 700 };
  const off = { controller: part("fail", 7), stageParts: [{ stage: "scaling", part: 2 } as const] };
  expect(saidOf({ others, ...off })[1]).toContain("they fail. By them alone: Put the scaling constants");
});

test("nothing is said where no reading stands apart, nor where that is no reason for the advice", () => {
  expect(saidOf({})).toEqual(["It is wild-reading."]);
  const others = { apart: 1, sensor: inside, controller: null, point: 700 };
  expect(saidOf({ others, findings: [finding("warm-up-or-drift", "sensor")] })).toEqual(["It is warm-up-or-drift."]);
});
