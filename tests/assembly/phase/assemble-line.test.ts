import { describe, expect, test } from "vitest";
import { analysePhase } from "../../../src/analysis/figures/analyse-phase.ts";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import type { Loop } from "../../../src/analysis/readings/loop.ts";
import type { BudgetBasis } from "../../../src/analysis/uncertainty/point-budget.ts";
import { assembleLine } from "../../../src/assembly/phase/assemble-line.ts";
import { fitLineErrorsInBoth } from "../../../src/numeric/fit-line-errors-in-both.ts";
import { lineInverse } from "../../../src/numeric/line-inverse.ts";
import { emptyAnalysis } from "../../analysis/sample-analysis.ts";
import { basis as anyBasis } from "../../analysis/sample-basis.ts";
import { expectNear, loop, reading, rounding, signalLoop } from "../../analysis/sample-loop.ts";
import { frozen } from "../../charts/frozen.ts";

const shared = Object.freeze({ sharedReference: 0.1, sharedOutput: 0.05, ownReference: 0.03 });
const basis: BudgetBasis = frozen({
  ...anyBasis,
  distancePerOutput: 6.25,
  repeatability: { pooledStdDev: 0.2, degreesOfFreedom: 8 },
});

const signals = [4.02, 8.05, 11.97, 16.04, 19.98, 4.01, 8.02];
const readings = frozen(signals.map((signal, index) => reading((index % 5) * 25, { signal })));

function analysed(of: Loop = signalLoop, more: readonly ReturnType<typeof reading>[] = []) {
  const analysis = analysePhase([...readings, ...more], of);
  if (!isDetermined(analysis)) throw new Error(analysis.notDetermined);
  return analysis;
}

test("one cycle has no scatter to weigh by", () => {
  expect(
    assembleLine(
      emptyAnalysis,
      {
        standards: [],
        performedOn: "2026-03-04",
        distanceUnit: "mm",
        signalUnit: "mA",
        principle: "laser",
        isTemperatureCompensated: false,
        airTemperatureCelsius: 20,
        alignmentAngleDegrees: 0,
        judged: "signal",
        distancePerOutput: 6.25,
        steps: { reference: 0.1, output: 0.001 },
        repeatability: { notDetermined: "one cycle only" },
        hysteresis: { width: 0 },
      },
      { sharedReference: 0.1, sharedOutput: 0, ownReference: 0 },
      {
        characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
        toleranceTerms: [{ basis: "distance", plus: 1, minus: 1 }],
        faultLevels: {},
        signalUnit: "mA",
      },
    ),
  ).toEqual({ notDetermined: "one cycle only" });
});

test("the line is that of signal on reference, with scatter and shared parts in the unit of the signal", () => {
  const line = assembleLine(analysed(), basis, shared, signalLoop);
  if (!isDetermined(line)) throw new Error(line.notDetermined);
  const expected = fitLineErrorsInBoth({
    abscissas: readings.map(({ reference }) => reference),
    ordinates: signals,
    abscissaUncertainties: signals.map(() => 0.03),
    ordinateUncertainties: signals.map(() => 0.2 / 6.25),
  });
  const { n: _, ...figures } = expected;
  expect(line).toMatchObject({ ...figures, method: "errors in both" });
  expect(line.inverse.map(({ output }) => output)).toEqual([4, 8, 12, 16, 20]);
  for (const { output, reference, standardUncertainty } of line.inverse) {
    const { abscissa, standardUncertainty: ofFit } = lineInverse(expected, output, 0.2 / 6.25);
    // Fitted about another middle: some roundings of numbers near 100.
    expectNear(reference, abscissa, rounding);
    // 0.05 mm of the meter is 0.008 mA, read back with the fitted slope.
    expectNear(standardUncertainty, Math.hypot(ofFit, 0.1, 0.05 / 6.25 / expected.slope), 1e-15);
  }
});

test("readings that are left out take no part", () => {
  const more = [reading(50, { signal: 3.5 }), reading(50, { signal: 19, rejected: "slipped" })];
  expect(assembleLine(analysed(signalLoop, more), basis, shared, signalLoop)).toEqual(
    assembleLine(analysed(), basis, shared, signalLoop),
  );
});

test("a reading of the controller's value alone takes no part in the line of the signal", () => {
  expect(assembleLine(analysed(loop, [reading(50, { value: 5 })]), basis, shared, loop)).toEqual(
    assembleLine(analysed(loop), basis, shared, loop),
  );
});

describe("there is none", () => {
  test.each<[string, Parameters<typeof assembleLine>[1], Parameters<typeof assembleLine>[2], string]>([
    ["without standards", basis, { notDetermined: "no standard" }, "no standard"],
    ["without scatter", { ...basis, repeatability: { notDetermined: "one cycle only" } }, shared, "one cycle only"],
    [
      "with a scatter of nothing",
      { ...basis, repeatability: { pooledStdDev: 0, degreesOfFreedom: 8 } },
      shared,
      "the readings of one test point do not scatter",
    ],
  ])("%s", (_, of, uncertainties, reason) => {
    expect(assembleLine(analysed(), of, uncertainties, signalLoop)).toEqual({ notDetermined: reason });
  });
});
