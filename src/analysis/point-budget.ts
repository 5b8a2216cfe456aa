import type { Standard } from "../model/calibration.ts";
import type { DistanceUnit, Instrument, SignalUnit } from "../model/instrument.ts";
import { unitTable } from "../units/unit-table.ts";
import { type Budget, combineBudget, contribution } from "./budget.ts";
import { type Figure, isDetermined } from "./figure.ts";
import type { Stage } from "./loop.ts";
import { type FoundContributions, standardContributions } from "./standard-contributions.ts";

/** What the budgets of one phase rest on; distances in the instrument's unit. */
export type BudgetBasis = {
  standards: readonly Standard[];
  performedOn: string | undefined;
  distanceUnit: DistanceUnit;
  signalUnit: SignalUnit;
  principle: Instrument["principle"];
  isTemperatureCompensated: boolean;
  airTemperatureCelsius: number | undefined;
  alignmentAngleDegrees: number | undefined;
  judged: Stage;
  /** Distance for one unit of the judged output: one over the slope of the fitted line. */
  distancePerOutput: number;
  /** Smallest steps that were typed: of the reference in distance, of the judged output in its own unit. */
  steps: { reference: number; output: number };
  repeatability: Figure<{ pooledStdDev: number; degreesOfFreedom: number }>;
  hysteresis: Figure<{ width: number }>;
};

/** The mean that a budget is for: where, of how many readings, and whether the other direction was read there too. */
export type BudgetPoint = { reference: number; readings: number; isReadBothWays: boolean };

/** A budget, and in words what it could not take in. */
export type PointBudget = { budget: Budget; missing: readonly string[] };

/**
 * The uncertainty of the mean error of one direction at one test point.
 *
 * Reference standard, its drift and resolution; signal meter likewise, turned into distance with the loop's own slope,
 * or half a step of the counts or the displayed value; repeatability s/√n of the pooled standard deviation; reference
 * alignment x(1 − cos θ); air temperature for an ultrasonic sensor that does not correct for it; hysteresis only where
 * one direction was read: where both were, rising and falling are judged apart, and their difference is in the errors.
 *
 * @param basis of the phase
 * @param point reference in distance, number of readings in the mean
 * @returns the budget in distance, and what is missing
 * Source: JCGM 100:2008; EA-4/02 M:2022; ILAC-P14:09/2020 (the item's own repeatability and resolution take part).
 * @example pointBudget(basis, { reference: 1000, readings: 3, isReadBothWays: true }).budget.expandedUncertainty
 */
export function pointBudget(basis: BudgetBasis, point: BudgetPoint): PointBudget {
  const parts = [
    referenceContributions(basis),
    outputContributions(basis),
    repeatabilityContribution(basis, point),
    hysteresisContribution(basis, point),
    alignmentContribution(basis, point),
    airContribution(basis, point),
  ];
  const contributions = parts
    .flatMap(({ shared, own }) => [...shared, ...own])
    .filter(({ standardUncertainty }) => standardUncertainty > 0);
  return { budget: combineBudget(contributions), missing: parts.flatMap((part) => part.missing) };
}

/**
 * The contributions of the reference distance: its standards, their drift and resolution.
 *
 * @param basis of the phase
 * @returns contributions in distance, those that all readings share apart from those of each reading
 * Source: JCGM 100:2008, 4.3; EA-4/02 M:2022.
 * @example referenceContributions(basis).shared.length // 2: certificate and drift
 */
export function referenceContributions(basis: BudgetBasis): FoundContributions {
  return standardContributions(basis.standards, {
    role: "reference distance",
    kind: "distance",
    unit: basis.distanceUnit,
    sensitivity: 1,
    typedStep: basis.steps.reference,
    performedOn: basis.performedOn,
  });
}

/**
 * The contributions of the judged output: the signal meter, turned into distance, or half a step of what was displayed.
 *
 * @param basis of the phase
 * @returns contributions in distance, those that all readings share apart from those of each reading
 * Source: JCGM 100:2008, 4.3 and 5.1.3.
 * @example outputContributions(basis).own.length // 1: the resolution
 */
export function outputContributions(basis: BudgetBasis): FoundContributions {
  const { judged, signalUnit, steps, distancePerOutput } = basis;
  if (judged === "signal") {
    return standardContributions(basis.standards, {
      role: "signal meter",
      kind: unitTable[signalUnit].kind,
      unit: signalUnit,
      sensitivity: distancePerOutput,
      typedStep: steps.output,
      performedOn: basis.performedOn,
    });
  }
  const source = judged === "counts" ? "resolution of the counts" : "resolution of the displayed value";
  return only({
    source,
    value: steps.output / 2,
    unit: judged,
    distribution: "rectangular",
    sensitivity: distancePerOutput,
  });
}

function repeatabilityContribution(
  { repeatability, distanceUnit }: BudgetBasis,
  { readings }: BudgetPoint,
): FoundContributions {
  if (!isDetermined(repeatability)) return onlyMissing(`repeatability: ${repeatability.notDetermined}`);
  return only({
    source: `repeatability, mean of ${readings}`,
    value: repeatability.pooledStdDev,
    unit: distanceUnit,
    distribution: "normal",
    divisor: Math.sqrt(readings),
    degreesOfFreedom: repeatability.degreesOfFreedom,
  });
}

function hysteresisContribution(
  { hysteresis, distanceUnit }: BudgetBasis,
  { isReadBothWays }: BudgetPoint,
): FoundContributions {
  if (isReadBothWays) return only();
  if (!isDetermined(hysteresis)) return onlyMissing(`hysteresis: ${hysteresis.notDetermined}`);
  return only({
    source: "hysteresis, one direction read",
    value: hysteresis.width / 2,
    unit: distanceUnit,
    distribution: "rectangular",
  });
}

function alignmentContribution(
  { alignmentAngleDegrees, distanceUnit }: BudgetBasis,
  { reference }: BudgetPoint,
): FoundContributions {
  if (alignmentAngleDegrees === undefined) return onlyMissing("reference alignment: no alignment_angle is stated");
  const angle = (alignmentAngleDegrees * Math.PI) / 180;
  const value = Math.abs(reference) * 2 * Math.sin(angle / 2) ** 2;
  return only({ source: "reference alignment", value, unit: distanceUnit, distribution: "rectangular" });
}

function airContribution(basis: BudgetBasis, { reference }: BudgetPoint): FoundContributions {
  if (basis.principle !== "ultrasonic" || basis.isTemperatureCompensated) return only();
  if (basis.airTemperatureCelsius === undefined) return onlyMissing("air temperature: not stated");
  const thermometers = basis.standards.filter(({ quantity }) => quantity === "temperature");
  if (thermometers.length === 0) return onlyMissing("air temperature: no thermometer is among the standards");
  return standardContributions(thermometers, {
    role: "air temperature",
    kind: "temperature",
    unit: "°C",
    sensitivity: Math.abs(reference) / (2 * (basis.airTemperatureCelsius + 273.15)),
    typedStep: 0,
    performedOn: basis.performedOn,
  });
}

function only(parts?: Parameters<typeof contribution>[0]): FoundContributions {
  return { shared: [], own: parts === undefined ? [] : [contribution(parts)], missing: [] };
}

function onlyMissing(why: string): FoundContributions {
  return { shared: [], own: [], missing: [why] };
}
