import { expect, test } from "vitest";
import type { Instrument } from "../../../src/model/instrument.ts";
import { decisionRules } from "../../../src/model/instrument-words.ts";
import { falseAcceptOf } from "../../../src/verdict/decision/false-accept-of.ts";
import { meter, rail } from "../../analysis/sample-basis.ts";
import { loop, reading } from "../../analysis/sample-loop.ts";
import { phaseOf } from "../../record/phase-of.ts";
import { onePointAtRisk } from "./sample-risk.ts";

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
  inToleranceRate: 95,
});
const simple = { name: "simple acceptance", guardFactor: 0 } as const;
const guarded = { name: "guard band", guardFactor: 1 } as const;
const [point] = onePointAtRisk.points as [(typeof onePointAtRisk.points)[number]];
const risksOf = (changes: Parameters<typeof falseAcceptOf>[1], rule: Parameters<typeof falseAcceptOf>[2] = simple) =>
  falseAcceptOf(instrument, changes, rule);

// σ² = σ(found)² − u² by another quadrature (scipy 1.17.1): 0.7705 % where 95 % are observed in tolerance at ratio 4.
test("one reading of ratio 4, 95 % found in tolerance: 0.770 % falsely accepted, for 95.7 % are truly in tolerance", () => {
  const found = risksOf(onePointAtRisk);
  expect(Math.abs(found!.falseAccept - 0.007705)).toBeLessThan(0.51e-6);
  expect(found).toMatchObject({ inToleranceRate: 95, testUncertaintyRatio: 4, guardMultiplier: 1, results: 1 });
  // 1/σ = 1/√(1/1.959964² − 1/64) = 2.02179: 95.68 % of a normal distribution.
  expect(Math.abs(found!.trueRate - 95.68)).toBeLessThan(0.005);
});

test("the more readings have to pass, the more good loops fail, and the wider measuring makes what is found", () => {
  const readings = Array.from({ length: 20 }, () => ({ point: 0, direction: "rising" }));
  const one = risksOf(onePointAtRisk)!;
  const many = risksOf({ ...onePointAtRisk, readings })!;
  expect(many.results).toBe(20);
  expect(many.falseReject).toBeGreaterThan(one.falseReject);
  expect(many.falseAccept).toBeLessThan(one.falseAccept);
  expect(many.trueRate).toBeGreaterThan(one.trueRate);
});

test("a guard band judges the mean of each direction, by its own limits; an error in the middle is as good on both sides", () => {
  const lopsided = { ...point, guardBand: 0.5, toleranceLow: -1, toleranceHigh: 3, testUncertaintyRatio: 8 };
  const readings = ["rising", "rising", "falling", "falling"].map((direction) => ({ point: 0, direction }));
  expect(risksOf({ points: [lopsided], readings }, guarded)).toMatchObject({ guardMultiplier: 0.75, results: 2 });
});

test("what decides a point is its last stage, and a reading that is left out is none", () => {
  const behind = { ...point, testUncertaintyRatio: 2 };
  const readings = [...onePointAtRisk.readings, { point: 0, direction: "rising", leftOut: "rejected" }];
  expect(risksOf({ points: [point], endPoints: [behind], readings })).toMatchObject({
    ...{ testUncertaintyRatio: 2, results: 1 },
  });
});

test("a conditional pass is found in tolerance, but is no pass", () => {
  const bounded = { points: [{ ...point, guardBand: 0.25 }], readings: onePointAtRisk.readings };
  const words = risksOf(bounded, { name: "non-binary guard band", guardFactor: 1 })!;
  expect(Math.abs(words.trueRate - risksOf(onePointAtRisk)!.trueRate)).toBeLessThan(1e-6);
  expect(words.trueRate).toBeLessThan(risksOf(bounded, guarded)!.trueRate);
});

test("nothing is said where no error can pass, no rate is stated, or nothing was judged", () => {
  const { inToleranceRate: _, ...unstated } = instrument;
  expect(risksOf({ ...onePointAtRisk, points: [{ ...point, guardBand: 2 }] }, guarded)).toBeUndefined();
  expect(falseAcceptOf(unstated, onePointAtRisk, simple)).toBeUndefined();
  expect(risksOf(undefined)).toBeUndefined();
  expect(risksOf({ points: [], readings: [] })).toBeUndefined();
});

test("a point without tolerance is passed over, under every rule; alone it says nothing", () => {
  const toleranceTerms = [{ basis: "percent of reading", plus: 1, minus: 1 }] as const;
  const readings = [0, 50, 100].map((reference) => reading(reference, { signal: 4 + 0.16 * reference }));
  for (const name of decisionRules) {
    const changes = {
      loop: { ...loop, toleranceTerms },
      standards: [rail, meter],
      rule: { name, guardFactor: 1 },
    } as const;
    const phase = phaseOf(readings, changes);
    expect(phase.points[0]?.testUncertaintyRatio).toBe(0);
    expect(falseAcceptOf(instrument, phase, changes.rule)?.testUncertaintyRatio).toBe(
      phase.points[1]?.testUncertaintyRatio,
    );
    expect(falseAcceptOf(instrument, phaseOf(readings.slice(0, 1), changes), changes.rule)).toBeUndefined();
    const rejected = readings.map((row) => ({ ...row, rejected: "slipped" }));
    expect(falseAcceptOf(instrument, phaseOf(rejected, changes), changes.rule)).toBeUndefined();
  }
});

test("where nobody states a rate, ten filed results or more give it: (k + 1)/(n + 2), which is never 0 or 1", () => {
  const { inToleranceRate: _, ...unstated } = instrument;
  const rateFrom = (inTolerance: number, of: number) =>
    falseAcceptOf(unstated, onePointAtRisk, simple, { inTolerance, of })?.inToleranceRate;
  expect(rateFrom(18, 18)).toBe(95);
  expect(rateFrom(0, 18)).toBe(5);
  expect(falseAcceptOf(unstated, onePointAtRisk, simple, { inTolerance: 18, of: 18 })).toEqual(risksOf(onePointAtRisk));
  expect(rateFrom(9, 9)).toBeUndefined();
  expect(rateFrom(9, 10)).toBe((100 * 10) / 12);
  expect(falseAcceptOf(unstated, onePointAtRisk, simple)).toBeUndefined();
});

test("what the owner states comes before what was filed", () => {
  expect(falseAcceptOf(instrument, onePointAtRisk, simple, { inTolerance: 5, of: 20 })?.inToleranceRate).toBe(95);
});
