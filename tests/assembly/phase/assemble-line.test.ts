import { describe, expect, test } from "vitest";
import { analysePhase } from "../../../src/analysis/figures/analyse-phase.ts";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import type { Loop } from "../../../src/analysis/readings/loop.ts";
import { lackOfFitLimit } from "../../../src/analysis/uncertainty/lack-of-fit-limit.ts";
import type { BudgetBasis } from "../../../src/analysis/uncertainty/point-budget.ts";
import { assembleLine } from "../../../src/assembly/phase/assemble-line.ts";
import { chiSquaredQuantile } from "../../../src/numeric/chi-squared-quantile.ts";
import { fQuantile } from "../../../src/numeric/f-quantile.ts";
import { fitLineErrorsInBoth } from "../../../src/numeric/fit-line-errors-in-both.ts";
import { lineInverse } from "../../../src/numeric/line-inverse.ts";
import { emptyAnalysis } from "../../analysis/sample-analysis.ts";
import { basis as anyBasis } from "../../analysis/sample-basis.ts";
import { expectNear, loop, reading, signalLoop } from "../../analysis/sample-loop.ts";
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

function determined(of: BudgetBasis) {
  const line = assembleLine(analysed(), of, shared, signalLoop);
  if (!isDetermined(line)) throw new Error(line.notDetermined);
  return line;
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

/** 0 and 25 mm were read twice: their means, and half a step of 0.001 mA which is the same in both readings. */
const step = 0.0005 / Math.sqrt(3);
const expected = fitLineErrorsInBoth({
  abscissas: [0, 25, 50, 75, 100],
  ordinates: [4.015, 8.035, 11.97, 16.04, 19.98],
  abscissaUncertainties: [0.03, 0.03, 0.03, 0.03, 0.03],
  ordinateUncertainties: [2, 2, 1, 1, 1].map((count) => Math.hypot(0.2 / 6.25 / Math.sqrt(count), step)),
});

test("the line is that of the mean signals on the references, with scatter, step and shared parts in its unit", () => {
  const line = determined(basis);
  const { n: _, ...figures } = expected;
  for (const [name, value] of Object.entries(figures))
    expectNear(line[name as keyof typeof figures], value, 1e-12 * Math.max(1, Math.abs(value)));
  expect(line.method).toBe("errors in both");
  expect(line.inverse.map(({ output }) => output)).toEqual([4, 8, 12, 16, 20]);
  for (const { output, reference, standardUncertainty } of line.inverse) {
    const { abscissa, standardUncertainty: ofFit } = lineInverse(expected, output, Math.hypot(0.2 / 6.25, step));
    expectNear(reference, abscissa, 1e-11);
    // 0.05 mm of the meter is 0.008 mA, read back with the fitted slope.
    expectNear(standardUncertainty, Math.hypot(ofFit, 0.1, 0.05 / 6.25 / expected.slope), 1e-12);
  }
});

test("a scatter that is an estimate is tested with F, on the degrees of freedom of its part of the variance", () => {
  const line = determined(basis);
  const part = [2, 2, 1, 1, 1].map((count) => 0.04 / count / (0.04 / count + (6.25 * step) ** 2));
  const freedom = 8 / (part.reduce((sum, one) => sum + one) / 5) ** 2;
  expect(line.test).toBe("F");
  expectNear(line.scatterDegreesOfFreedom, freedom, 1e-12);
  expectNear(line.chiSquaredLimit, 3 * fQuantile(0.95, 3, freedom), 1e-12);
});

test("where the scatter changes along the range the line stays, and its limit takes the scatter of each test point", () => {
  const deviations = [0.1, 0.15, 0.2, 0.25, 0.3];
  const ofPoints = new Map(
    deviations.map((standardDeviation, index) => [25 * index, { standardDeviation, degreesOfFreedom: 4 }]),
  );
  const line = determined({ ...basis, repeatability: { pooledStdDev: 0.2, degreesOfFreedom: 8, ofPoints } });
  const ofReference = 0.03 * expected.slope;
  const { limit, scatterDegreesOfFreedom } = lackOfFitLimit(
    [2, 2, 1, 1, 1].map((count, index) => {
      const ofScatter = deviations[index]! / 6.25 / Math.sqrt(count);
      const weightedBy = Math.hypot(0.2 / 6.25 / Math.sqrt(count), step, ofReference);
      const uncertainty = Math.hypot(ofScatter, step, ofReference);
      return { abscissa: 25 * index, point: 25 * index, weightedBy, uncertainty, ofScatter, degreesOfFreedom: 4 };
    }),
  );
  expectNear(line.slope, expected.slope, 1e-12);
  expectNear(line.chiSquared, expected.chiSquared, 1e-9);
  expectNear(line.chiSquaredLimit, limit, 1e-9);
  expectNear(line.scatterDegreesOfFreedom, scatterDegreesOfFreedom, 1e-9);
});

test("what the cycles differ by is common to the line, and in full in one further output", () => {
  const betweenCycles = { standardDeviation: 0.3, degreesOfFreedom: 2 };
  const scatter = { pooledStdDev: 0.2, degreesOfFreedom: 8, betweenCycles };
  const line = determined({ ...basis, repeatability: scatter });
  const { cycles } = analysed();
  for (const { output, standardUncertainty } of line.inverse) {
    const { standardUncertainty: ofFit } = lineInverse(expected, output, Math.hypot(0.2 / 6.25, step, 0.3 / 6.25));
    const common = Math.hypot(0.05, 0.3 / Math.sqrt(cycles)) / 6.25 / expected.slope;
    expectNear(standardUncertainty, Math.hypot(ofFit, 0.1, common), 1e-12);
  }
});

test("no distance is read off a line on which the readings do not lie", () => {
  const line = determined({ ...basis, repeatability: { pooledStdDev: 0.01, degreesOfFreedom: 8 } });
  expect(line).toMatchObject({ isStraight: false, inverse: [] });
});

test("readings that do not scatter are tested by chi-squared on the step of the output alone", () => {
  const line = determined({ ...basis, repeatability: { pooledStdDev: 0, degreesOfFreedom: 8 } });
  expect(line.test).toBe("chi-squared");
  expect(line.scatterDegreesOfFreedom).toBeUndefined();
  expectNear(line.chiSquaredLimit, chiSquaredQuantile(0.95, 3), 1e-12);
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
      "with the scatter about the line alone",
      { ...basis, repeatability: { pooledStdDev: 0.2, degreesOfFreedom: 8, isAboutLine: true } },
      shared,
      "too little was repeated",
    ],
    [
      "with neither scatter nor step",
      {
        ...basis,
        steps: { reference: 0.1, output: 0 },
        repeatability: { pooledStdDev: 0, degreesOfFreedom: 8 },
      },
      shared,
      "the readings of one test point do not scatter",
    ],
  ])("%s", (_, of, uncertainties, reason) => {
    expect(assembleLine(analysed(), of, uncertainties, signalLoop)).toEqual({ notDetermined: reason });
  });
});
