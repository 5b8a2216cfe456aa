import { type Figure, isDetermined } from "../figures/figure.ts";
import { type BudgetBasis, outputContributions, referenceContributions } from "./point-budget.ts";
import { readingUncertainties } from "./shared-uncertainty.ts";

const coverageFactor = 2;

/**
 * What the standards alone leave open of an error, whatever sensor hangs there: U = 2 · √(Σ u²) over certificates, drifts
 * and resolutions of the reference and of the signal meter.
 *
 * @param basis of a phase; the sensor's own repeatability, hysteresis and air play no part
 * @returns expanded uncertainty with k = 2, distance; or why it is not known
 * Source: JCGM 100:2008, 5.1.2 and 6.2.1; k = 2 is own choice, for such contributions have unlimited degrees of freedom.
 * @example standardsUncertainty({ standards: [{ standard: "GB-1", certificate: "EX-1", calibratedOn: "2026-01-14",
 *   dueOn: "2027-01-14", expandedUncertainty: 0.8, uncertaintyUnit: "mm", coverageFactor: 2 }],
 *   performedOn: "2026-03-04", distanceUnit: "mm", signalUnit: "mA", principle: "laser",
 *   isTemperatureCompensated: false, airTemperatureCelsius: 20, alignmentAngleDegrees: 0, judged: "value",
 *   distancePerOutput: 10, steps: { reference: 0, output: 0.06 }, repeatability: { pooledStdDev: 9,
 *   degreesOfFreedom: 20 }, hysteresis: { width: 9 } }) // 0.8718
 */
export function standardsUncertainty(basis: BudgetBasis): Figure<number> {
  const known = readingUncertainties(basis);
  if (!isDetermined(known)) return known;
  const found = [referenceContributions(basis), outputContributions(basis)];
  const all = found.flatMap(({ shared, own }) => [...shared, ...own]);
  return coverageFactor * Math.hypot(...all.map(({ standardUncertainty }) => standardUncertainty));
}
