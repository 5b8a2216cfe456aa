import { expect, test } from "vitest";
import { decisionRules, type Instrument } from "../../../src/model/instrument.ts";
import { falseAcceptOf } from "../../../src/verdict/decision/false-accept-of.ts";
import { globalFalseAccept } from "../../../src/verdict/decision/global-false-accept.ts";
import { meter, rail } from "../../analysis/sample-basis.ts";
import { loop, reading } from "../../analysis/sample-loop.ts";
import { phaseOf } from "../../record/phase-of.ts";

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
const point = Object.freeze({ testUncertaintyRatio: 4, guardBand: 0, toleranceLow: -1, toleranceHigh: 1 });

// Bivariate normal by quadrature (scipy 1.17.1), tests/published/false-accept-grid; printed to 8 decimals.
test("ratio 4, 95 % in tolerance, no guard band: 0.00858266 falsely accepted", () => {
  const found = falseAcceptOf(
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
      inToleranceRate: 95,
    },
    { points: [{ testUncertaintyRatio: 4, guardBand: 0, toleranceLow: -1, toleranceHigh: 1 }] },
  );
  expect(Math.abs(found!.falseAccept - 0.00858266)).toBeLessThan(0.51e-8);
  expect(Math.abs(found!.falseReject - 0.01553651)).toBeLessThan(0.51e-8);
  expect(found).toMatchObject({ inToleranceRate: 95, testUncertaintyRatio: 4, guardMultiplier: 1 });
});

test("the point with the least ratio is taken, with its own guard band", () => {
  const least = { testUncertaintyRatio: 2, guardBand: 0.5, toleranceLow: -1, toleranceHigh: 3 };
  const points = Object.freeze([point, least, { ...point, testUncertaintyRatio: 9 }]);
  const expected = { testUncertaintyRatio: 2, guardMultiplier: 0.75 };
  expect(falseAcceptOf(instrument, { points })).toEqual({
    inToleranceRate: 95,
    ...expected,
    ...globalFalseAccept({ ...expected, inToleranceProbability: 0.95 }),
  });
});

test("where no error can pass nothing is falsely accepted, and every good loop is falsely rejected", () => {
  const none = falseAcceptOf(instrument, { points: [{ ...point, testUncertaintyRatio: 0.5, guardBand: 2 }] });
  expect(none).toMatchObject({ guardMultiplier: 0, falseAccept: 0 });
  expect(Math.abs(none!.falseReject - 0.95)).toBeLessThan(1e-9);
});

test("nothing is said where no rate is stated, or nothing was judged", () => {
  const { inToleranceRate: _, ...unstated } = instrument;
  expect(falseAcceptOf(unstated, { points: [point] })).toBeUndefined();
  expect(falseAcceptOf(instrument, undefined)).toBeUndefined();
  expect(falseAcceptOf(instrument, { points: [] })).toBeUndefined();
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
    expect(falseAcceptOf(instrument, phase)?.testUncertaintyRatio).toBe(phase.points[1]?.testUncertaintyRatio);
    expect(falseAcceptOf(instrument, phaseOf(readings.slice(0, 1), changes))).toBeUndefined();
    const rejected = readings.map((row) => ({ ...row, rejected: "slipped" }));
    expect(falseAcceptOf(instrument, phaseOf(rejected, changes))).toBeUndefined();
  }
});

test("where nobody states a rate, ten filed results or more give it: (k + 1)/(n + 2), which is never 0 or 1", () => {
  const { inToleranceRate: _, ...unstated } = instrument;
  const points = { points: [point] };
  const rateFrom = (inTolerance: number, of: number) =>
    falseAcceptOf(unstated, points, { inTolerance, of })?.inToleranceRate;
  expect(rateFrom(18, 18)).toBe(95);
  expect(rateFrom(0, 18)).toBe(5);
  expect(falseAcceptOf(unstated, points, { inTolerance: 18, of: 18 })).toEqual(falseAcceptOf(instrument, points));
  expect(rateFrom(9, 9)).toBeUndefined();
  expect(rateFrom(9, 10)).toBe((100 * 10) / 12);
  expect(falseAcceptOf(unstated, points)).toBeUndefined();
});

test("what the owner states comes before what was filed", () => {
  expect(falseAcceptOf(instrument, { points: [point] }, { inTolerance: 5, of: 20 })?.inToleranceRate).toBe(95);
});
