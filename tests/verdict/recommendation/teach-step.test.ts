import { expect, test } from "vitest";
import { betterStandard, chanceWords, teachStep } from "../../../src/verdict/recommendation/teach-step.ts";
import { curable, finding, part, reasonsOf, stateOf } from "./sample-state.ts";

const known = { ...curable, best: curable.best! };

test("both ends are taught where that suffices; otherwise the best line", () => {
  expect(teachStep(known, stateOf()).does).toBe("Teach both ends of the range anew, at 200 mm and 1200 mm.");
  const bestOnly = { ...known, ends: { statement: "fail", errorDistance: 11, part: 1.1 } as const };
  expect(teachStep(bestOnly, stateOf()).does).toContain("for the best line");
  const reasons = reasonsOf(teachStep({ ...bestOnly, chanceOfPass: 0 }, stateOf()));
  expect(reasons[0]).toBe(
    "It takes the best line, and for that the chance that new readings pass is not determined; after a teach at both ends they pass with a chance of 0.00.",
  );
  expect(reasons.some((says) => says.startsWith("A new zero and span"))).toBe(false);
});

test("what was found in the sensor is the first reason, then what the best two constants leave", () => {
  const step = teachStep(known, stateOf({ findings: [finding("datum-shifted", "sensor")] }));
  expect(reasonsOf(step).slice(0, 3)).toEqual([
    "It is datum-shifted.",
    "A new zero and span may cure it; the chance that new readings pass is not determined from these.",
    "At best two constants leave 2 mm (20 % of the tolerance) of these very readings: a bound, which new readings seldom reach.",
  ]);
  expect(step.before).toContain("mount");
});

test("it can cure it only where new readings pass in more than nine of ten cases", () => {
  expect(chanceWords({ chanceOfPass: 0.901 })).toContain("can cure it");
  expect(chanceWords({ chanceOfPass: 0.9 })).toContain("may not be enough");
});

test("on the limits a re-teach is advised outright; beyond one of them with little in hand", () => {
  const left = (part: number) => ({ ...known, best: { ...known.best, part } });
  expect(teachStep(left(0.5), stateOf({ scatter: 0.25 })).rule).toContain("a zero and span error alone");
  const residual = teachStep(left(0.51), stateOf());
  expect(residual.rule).toContain("little in hand");
  expect(reasonsOf(residual).at(-1)).toContain("plan to replace");
  expect(teachStep(known, stateOf({ scatter: 0.26 })).rule).toContain("little in hand");
});

test("with one cycle a second is asked for first", () => {
  const step = teachStep(known, stateOf({ scatter: { notDetermined: "one cycle only" } }));
  expect(step.before).toBe("Read a second cycle first, to see that it repeats.");
  expect(reasonsOf(step)).toContain("How far readings repeat is not determined: one cycle only.");
});

test("an error inside the tolerance that a guard band refuses names the U that would accept it", () => {
  const state = stateOf({
    sensor: part("fail", 0.88, known),
    rule: { name: "guard band", guardFactor: 1 },
    worstPoint: { point: 700, errorDistance: 8, expandedUncertainty: 4.7, tolerance: 10, greatestSource: null },
  });
  // |e| + U <= T, so that U <= 10 - 8 = 2 mm.
  expect(teachStep(known, state).before).toContain("With a U of 2 mm or less it would be accepted as it is.");
  expect(teachStep(known, stateOf()).before).toBeNull();
});

test("a teach that was just tried is said first", () => {
  expect(reasonsOf(teachStep(known, stateOf({ isJustTaught: true })))[0]).toContain("taught anew just now");
  const before = stateOf({ isJustTaught: true, isPassingBefore: true });
  expect(reasonsOf(teachStep(known, before))[0]).toContain("It passed before it was taught");
  expect(reasonsOf(teachStep(known, before)).join(" ")).not.toContain("taught anew just now");
});

test("a better standard says what U and tolerance are", () => {
  expect(reasonsOf(betterStandard(known, stateOf()))[1]).toBe("At the worst point U is 1.5 mm, the tolerance 10 mm.");
  expect(reasonsOf(betterStandard(known, stateOf({ worstPoint: null })))).toHaveLength(1);
});
