import { isDetermined } from "../figures/figure.ts";
import { combineBudget, contribution } from "../uncertainty/budget.ts";
import {
  airContribution,
  alignmentContribution,
  type BudgetBasis,
  type PointBudget,
} from "../uncertainty/point-budget.ts";
import { type FoundContributions, standardContributions } from "../uncertainty/standard-contributions.ts";
import type { TripMean } from "./switched-output.ts";

/** What the budget of a switching distance rests on: the workbook's rows, and the smallest step that was typed. */
export type SwitchBudgetBasis = Pick<
  BudgetBasis,
  | "standards"
  | "performedOn"
  | "distanceUnit"
  | "principle"
  | "isTemperatureCompensated"
  | "airTemperatureCelsius"
  | "otherGas"
  | "alignmentAngleDegrees"
> & { typedStep: number };

/**
 * The uncertainty of a mean operating or release distance.
 *
 * Reference standard, its drift and resolution; repeatability s/√n with n − 1 degrees of freedom; reference alignment;
 * air temperature for an ultrasonic sensor that does not correct for it. No signal meter: an output is on or off.
 *
 * @param basis standards, conditions, step of the references of the trips
 * @param trips mean of one direction
 * @returns the budget in distance, and what is missing, in words
 * Faults: `RangeError` where every contribution is zero.
 * Source: JCGM 100:2008, 4.2.3 (s/√n), 4.3, 5.1.2; EA-4/02 M:2022.
 * @example switchBudget({ standards: [], performedOn: undefined, distanceUnit: "mm", principle: "laser",
 *   isTemperatureCompensated: false, airTemperatureCelsius: undefined, alignmentAngleDegrees: 0, typedStep: 0.1 },
 *   { mean: 100, least: 99.7, greatest: 100.3, count: 9, standardDeviation: 0.3 }).budget.combinedUncertainty
 *   // 0.1041 = √(0.1² + 0.05²/3)
 */
export function switchBudget(basis: SwitchBudgetBasis, trips: TripMean): PointBudget {
  const parts = [
    standardContributions(basis.standards, {
      role: "reference distance",
      kind: "distance",
      unit: basis.distanceUnit,
      sensitivity: 1,
      typedStep: basis.typedStep,
      performedOn: basis.performedOn,
    }),
    repeatabilityOf(basis, trips),
    alignmentContribution(basis, { reference: trips.mean }),
    airContribution(basis, { reference: trips.mean }),
  ];
  const contributions = parts
    .flatMap(({ shared, own }) => [...shared, ...own])
    .filter(({ standardUncertainty }) => standardUncertainty > 0);
  return { budget: combineBudget(contributions), missing: parts.flatMap(({ missing }) => missing) };
}

function repeatabilityOf(
  { distanceUnit }: SwitchBudgetBasis,
  { count, standardDeviation }: TripMean,
): FoundContributions {
  if (!isDetermined(standardDeviation)) {
    return { shared: [], own: [], missing: [`repeatability: ${standardDeviation.notDetermined}`] };
  }
  const scatter = contribution({
    source: `repeatability, mean of ${count} trips`,
    value: standardDeviation,
    unit: distanceUnit,
    distribution: "normal",
    divisor: Math.sqrt(count),
    degreesOfFreedom: count - 1,
  });
  return { shared: [], own: [scatter], missing: [] };
}
