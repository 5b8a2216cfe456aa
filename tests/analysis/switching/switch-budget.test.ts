import { expect, test } from "vitest";
import { notDetermined } from "../../../src/analysis/figures/figure.ts";
import { type SwitchBudgetBasis, switchBudget } from "../../../src/analysis/switching/switch-budget.ts";
import type { TripMean } from "../../../src/analysis/switching/switched-output.ts";
import { frozen } from "../../charts/frozen.ts";
import quantiles from "../../published/gum-table-g2/quantiles.json" with { type: "json" };
import { expectNear } from "../sample-loop.ts";

const basis: SwitchBudgetBasis = frozen({
  standards: [
    {
      standard: "GB-1",
      certificate: "EX-1",
      calibratedOn: "2026-01-14",
      dueOn: "2027-01-14",
      expandedUncertainty: 0.2,
      uncertaintyUnit: "mm",
      coverageFactor: 2,
      resolution: 0.1,
      driftPerYear: 0,
    },
  ],
  performedOn: "2026-03-04",
  distanceUnit: "mm",
  principle: "laser",
  isTemperatureCompensated: false,
  airTemperatureCelsius: 20,
  alignmentAngleDegrees: 0,
  typedStep: 0.01,
} as const);
const four: TripMean = frozen({
  mean: 100.15,
  least: 99.9,
  greatest: 100.5,
  count: 4,
  standardDeviation: Math.sqrt(0.07),
});

test("without a standard the step that was typed and the scatter are left: √(0.1² + 0.05²/3) = 0.1041", () => {
  const alone = { ...basis, standards: [], typedStep: 0.1 };
  const { budget, missing } = switchBudget(alone, { ...four, count: 9, standardDeviation: 0.3 });
  expectNear(budget.combinedUncertainty, Math.sqrt(0.01 + 0.0025 / 3), 1e-15);
  expectNear(budget.combinedUncertainty, 0.1041, 0.00005);
  expect(missing).toEqual(["reference distance: no standard with an uncertainty in mm is named"]);
});

test("certificate 0.1, resolution 0.05/√3, scatter √0.07/2 with 3 degrees of freedom: worked by hand", () => {
  const { budget, missing } = switchBudget(basis, four);
  expect(missing).toEqual([]);
  expect(budget.lines.map(({ source }) => source)).toEqual([
    "GB-1: certificate",
    "GB-1: resolution",
    "repeatability, mean of 4 trips",
  ]);
  // 0.01 + 0.0025/3 + 0.0175; ν = u⁴ / ((0.0175)² / 3) = 7.86, of which 7 are taken.
  const variance = 0.01 + 0.0025 / 3 + 0.0175;
  expectNear(budget.combinedUncertainty, Math.sqrt(variance), 1e-15);
  expectNear(budget.effectiveDegreesOfFreedom, (3 * variance ** 2) / 0.0175 ** 2, 1e-10);
  // k of 7 degrees of freedom at 95.45 %, GUM table G.2, recomputed to 20 digits in tests/published/gum-table-g2.
  expectNear(budget.coverageFactor, Number(quantiles["7|0.9545"]), 1e-9);
  expectNear(budget.expandedUncertainty, Number(quantiles["7|0.9545"]) * Math.sqrt(variance), 1e-9);
});

test("one trip gives no repeatability, and says so", () => {
  const one = { ...four, count: 1, standardDeviation: notDetermined("one trip on approach only") };
  const { budget, missing } = switchBudget(basis, one);
  expect(budget.lines.map(({ source }) => source)).not.toContain("repeatability, mean of 1 trips");
  expect(missing).toEqual(["repeatability: one trip on approach only"]);
});

test("alignment and air take part at the mean distance", () => {
  const ultrasonic = {
    ...basis,
    principle: "ultrasonic" as const,
    alignmentAngleDegrees: 60,
    standards: [
      ...basis.standards,
      {
        standard: "AIR-1",
        certificate: "EX-2",
        calibratedOn: "2026-01-14",
        dueOn: "2027-01-14",
        expandedUncertainty: 0.4,
        uncertaintyUnit: "°C" as const,
        coverageFactor: 2,
        resolution: 0.1,
        driftPerYear: 0,
      },
    ],
  };
  const { lines } = switchBudget(ultrasonic, four).budget;
  const uncertaintyOf = (source: string) => lines.find((line) => line.source === source)?.standardUncertainty;
  // x (1 − cos 60°) = x/2, rectangular; 0.2 °C of air move x by x/(2 T) for a kelvin.
  expectNear(uncertaintyOf("reference alignment"), 100.15 / 2 / Math.sqrt(3), 1e-12);
  expectNear(uncertaintyOf("AIR-1: certificate"), (0.2 * 100.15) / (2 * 293.15), 1e-12);
});
