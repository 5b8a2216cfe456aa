import { expect, test } from "vitest";
import type { BudgetBasis } from "../../../src/analysis/uncertainty/point-budget.ts";
import { standardsUncertainty } from "../../../src/analysis/uncertainty/standards-uncertainty.ts";
import { frozen } from "../../charts/frozen.ts";
import { expectNear } from "../sample-loop.ts";

const rail = {
  standard: "GB-1",
  certificate: "EX-1",
  calibratedOn: "2026-01-14",
  dueOn: "2027-01-14",
  expandedUncertainty: 0.8,
  uncertaintyUnit: "mm",
  coverageFactor: 2,
} as const;

/** A display that steps by 0.06, each of them 10 mm; a sensor that scatters by 9 mm. */
const basis: BudgetBasis = frozen({
  standards: [rail],
  performedOn: "2026-03-04",
  distanceUnit: "mm",
  signalUnit: "mA",
  principle: "laser",
  isTemperatureCompensated: false,
  airTemperatureCelsius: 20,
  alignmentAngleDegrees: 0,
  judged: "value",
  distancePerOutput: 10,
  steps: { reference: 0, output: 0.06 },
  repeatability: { pooledStdDev: 9, degreesOfFreedom: 20 },
  hysteresis: { width: 9 },
} as const);

// Certificate 0.8/2 = 0.4; half a step 0.03 · 10 / √3 = 0.1732; 2 · √(0.16 + 0.03) = 0.871780.
test("U is twice the root of the squares of what the standards and the display leave open", () => {
  expectNear(standardsUncertainty(basis) as number, 0.87178, 1e-6); // the digits worked out above
  expectNear(standardsUncertainty(basis) as number, 2 * Math.sqrt(0.19), 1e-15); // a rounding or two
});

test("the sensor's own scatter and hysteresis play no part", () => {
  const steady = { ...basis, repeatability: { pooledStdDev: 0, degreesOfFreedom: 20 }, hysteresis: { width: 0 } };
  expect(standardsUncertainty(steady)).toBe(standardsUncertainty(basis));
});

test("a signal meter joins in where the signal is judged: 0.01 mA of k = 2 at 10 mm/mA is 0.05 mm", () => {
  const meter = { ...rail, standard: "M-1", expandedUncertainty: 0.01, uncertaintyUnit: "mA" } as const;
  const found = standardsUncertainty({
    ...basis,
    judged: "signal",
    steps: { reference: 0, output: 0 },
    standards: [rail, meter],
  });
  expectNear(found as number, 2 * Math.hypot(0.4, 0.05), 1e-15);
});

test("a standard that states no uncertainty leaves it unknown", () => {
  expect(standardsUncertainty({ ...basis, standards: [] })).toEqual({
    notDetermined: "no standard of distance states its uncertainty",
  });
});
