import { expect, test } from "vitest";
import { errorCurve } from "../../../src/analysis/figures/error-curve.ts";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import type { Loop } from "../../../src/analysis/readings/loop.ts";
import { type BudgetRows, budgetBasis, type JudgedCurve } from "../../../src/analysis/uncertainty/budget-basis.ts";
import { frozen } from "../../charts/frozen.ts";
import { rail } from "../sample-basis.ts";
import { curveReading, expectNear, loop, rounding } from "../sample-loop.ts";

const rows: BudgetRows = frozen({
  instrument: {
    tag: "LT-1",
    rangeLower: 0,
    rangeUpper: 200,
    distanceUnit: "in",
    signalLower: 4,
    signalUpper: 20,
    signalUnit: "mA",
    tolerance: 1,
    toleranceBasis: "percent of span",
  },
  calibration: { calibration: "C-1", tag: "LT-1" },
  standards: [rail],
  steps: { reference: 0.1, signal: 0.001, counts: 1, value: 0.01 },
} as const);

/** 0 to 200 in: percent of span and distance differ. */
const wide: Loop = frozen({
  ...loop,
  characteristics: {
    signal: { ...loop.characteristics.signal, rangeUpper: 200 },
    counts: { rangeLower: 0, rangeUpper: 200, outputAtLower: 27648, outputAtUpper: 0 },
  },
});

const readings = frozen([
  curveReading(0, 0.25, "rising", 1),
  curveReading(0, 0.75, "rising", 2),
  curveReading(0, 0.5, "rising", 3),
  curveReading(0, 1, "falling", 1),
]);
const judged: JudgedCurve = frozen({ stage: "signal", curve: errorCurve(readings), readings });

test("1 mA is 112.5 mm on 200 to 2000 mm, 4 to 20 mA", () => {
  const basis = budgetBasis(
    {
      instrument: {
        tag: "LT-1",
        rangeLower: 200,
        rangeUpper: 2000,
        distanceUnit: "mm",
        signalLower: 4,
        signalUpper: 20,
        signalUnit: "mA",
        tolerance: 1,
        toleranceBasis: "percent of span",
      },
      calibration: { calibration: "C-1", tag: "LT-1" },
      standards: [],
      steps: { reference: 0.1, signal: 0.001, counts: 1, value: 0.1 },
    },
    { stage: "signal", curve: [], readings: [] },
    {
      characteristics: { signal: { rangeLower: 200, rangeUpper: 2000, outputAtLower: 4, outputAtUpper: 20 } },
      toleranceTerms: [],
      faultLevels: {},
      signalUnit: "mA",
    },
  );
  expect(basis.distancePerOutput).toBe(112.5);
});

test("scatter and hysteresis come over from percent of span into distance", () => {
  const { repeatability, hysteresis } = budgetBasis(rows, judged, wide);
  // Errors 0.25, 0.75, 0.5 % scatter by 0.25 %, that is 0.5 in; 0.5 % rising and 1 % falling part by 1 in.
  if (!isDetermined(repeatability) || !isDetermined(hysteresis)) throw new Error("not determined");
  expectNear(repeatability.pooledStdDev, 0.5, rounding);
  expect(repeatability.degreesOfFreedom).toBe(2);
  expectNear(hysteresis.width, 1, rounding);
});

test("what the readings do not allow keeps its reason", () => {
  const one = [curveReading(0, 1)];
  const { repeatability, hysteresis } = budgetBasis(
    rows,
    { stage: "signal", curve: errorCurve(one), readings: one },
    wide,
  );
  expect(repeatability).toEqual({ notDetermined: "one cycle only" });
  expect(hysteresis).toEqual({ notDetermined: "no test point was read in both directions" });
  const none = budgetBasis(rows, { stage: "signal", curve: [], readings: [] }, wide);
  expect(none.repeatability).toEqual({ notDetermined: "no usable reading" });
});

test("the sensitivity is the same for a reverse-acting output, and each stage has its own step", () => {
  expectNear(budgetBasis(rows, { ...judged, stage: "counts" }, wide).distancePerOutput, 200 / 27648, 1e-17);
  expect(budgetBasis(rows, { ...judged, stage: "counts" }, wide).steps).toEqual({ reference: 0.1, output: 1 });
  expect(budgetBasis(rows, judged, wide).steps).toEqual({ reference: 0.1, output: 0.001 });
});

test("what the rows do not state stays absent, and nothing is taken for a temperature of 0", () => {
  const { performedOn, airTemperatureCelsius, alignmentAngleDegrees, principle, isTemperatureCompensated } =
    budgetBasis(rows, judged, wide);
  expect([performedOn, airTemperatureCelsius, alignmentAngleDegrees, principle]).toEqual(Array(4).fill(undefined));
  expect(isTemperatureCompensated).toBe(false);
  const stated = budgetBasis(
    {
      ...rows,
      instrument: { ...rows.instrument, principle: "ultrasonic", temperatureCompensated: true },
      calibration: { ...rows.calibration, performedOn: "2026-03-04", airTemperature: 0, alignmentAngle: 0.5 },
    },
    judged,
    wide,
  );
  expect(stated).toMatchObject({
    performedOn: "2026-03-04",
    airTemperatureCelsius: 0,
    alignmentAngleDegrees: 0.5,
    principle: "ultrasonic",
    isTemperatureCompensated: true,
    distanceUnit: "in",
    signalUnit: "mA",
    standards: [rail],
  });
});
