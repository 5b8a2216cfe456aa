import type { BudgetBasis } from "../../src/analysis/uncertainty/point-budget.ts";
import type { Standard } from "../../src/model/calibration.ts";
import { frozen } from "../charts/frozen.ts";

const certified = { calibratedOn: "2026-01-14", dueOn: "2027-01-14" };

/** Everything stated: 0.2 mm with k = 2, a step of 0.1 mm, a drift of 0.05 mm a year. */
export const rail: Standard = frozen({
  ...certified,
  standard: "GB-1",
  quantity: "distance",
  certificate: "EX-1",
  expandedUncertainty: 0.2,
  uncertaintyUnit: "mm",
  coverageFactor: 2,
  resolution: 0.1,
  driftPerYear: 0.05,
});

export const meter: Standard = frozen({
  ...certified,
  standard: "MM-1",
  quantity: "current",
  certificate: "EX-2",
  expandedUncertainty: 2,
  uncertaintyUnit: "µA",
  coverageFactor: 2,
  resolution: 1,
  driftPerYear: 1,
});

export const thermometer: Standard = frozen({
  ...certified,
  standard: "TH-1",
  quantity: "temperature",
  certificate: "EX-3",
  expandedUncertainty: 0.54,
  uncertaintyUnit: "°F",
  coverageFactor: 2,
  resolution: 0.18,
  driftPerYear: 0,
});

/** A laser over 1600 mm on 4 to 20 mA, read both ways in three cycles, aligned exactly; no standard. */
export const basis: BudgetBasis = frozen({
  standards: [],
  performedOn: "2026-03-04",
  distanceUnit: "mm",
  signalUnit: "mA",
  principle: "laser",
  isTemperatureCompensated: false,
  airTemperatureCelsius: 20,
  alignmentAngleDegrees: 0,
  judged: "signal",
  distancePerOutput: 100,
  steps: { reference: 0.1, output: 0.001 },
  repeatability: { pooledStdDev: 0.3, degreesOfFreedom: 20 },
  hysteresis: { width: 0.4 },
} as const);
