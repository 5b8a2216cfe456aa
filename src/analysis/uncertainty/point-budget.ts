import type { Standard } from "../../model/calibration.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { DistanceUnit, SignalUnit } from "../../model/instrument-words.ts";
import { unitTable } from "../../units/unit-table.ts";
import { type Figure, isDetermined } from "../figures/figure.ts";
import { type Characteristic, idealOutput } from "../readings/ideal-characteristic.ts";
import type { Stage } from "../readings/loop.ts";
import { type Budget, combineBudget, contribution } from "./budget.ts";
import type { ReadingScatter } from "./reading-scatter.ts";
import { type Sharing, scatterContributions, sharingOf } from "./scatter-contributions.ts";
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
  /** The medium, where it is a gas of which the speed of sound is not that of air. */
  otherGas?: string | undefined;
  alignmentAngleDegrees: number | undefined;
  judged: Stage;
  /** Distance for one unit of the judged output, as the ideal line turns it into the indicated distance; above zero. */
  distancePerOutput: number;
  /** Smallest steps that were typed: of the reference in distance, of the judged output in its own unit. */
  steps: { reference: number; output: number };
  /** What turns a distance into the judged output; a standard whose uncertainty grows with what it measures needs it. */
  ends?: Characteristic;
  /** Distance. */
  repeatability: Figure<ReadingScatter>;
  hysteresis: Figure<{ width: number }>;
};

/** The mean that a budget is for: where, of how many readings, and whether the other direction was read there too. */
export type BudgetPoint = {
  reference: number;
  readings: number;
  isReadBothWays: boolean;
  /** Nominal position; only where the scatter differs from point to point. */
  point?: number;
  /** Cycles that the readings are of; as many as readings where it is left out. */
  cycles?: number;
};

/** What of a basis the standards' contributions rest on. */
export type StandardsBasis = Omit<BudgetBasis, "repeatability" | "hysteresis"> & Partial<BudgetBasis>;

/** A budget, and in words what it could not take in. */
export type PointBudget = { budget: Budget; missing: readonly string[] };

/**
 * The uncertainty of the mean error of one direction at one test point.
 *
 * Reference standard, its drift and resolution; signal meter likewise, turned into distance by the line that turns the
 * signal into the indicated distance, or half a step of the counts or the displayed value; repeatability s/√n, pooled,
 * of the point, or about the line (`readingScatter`); what the cycles differ by, where they are shown to; reference alignment
 * x(1 − cos θ); air temperature for an ultrasonic sensor that does not correct for it; hysteresis only where one direction
 * was read: where both were, rising and falling are judged apart, and their difference is in the errors.
 *
 * @param basis of the phase
 * @param point reference in distance, number of readings in the mean
 * @returns the budget in distance, what is missing, and which part of it who shares
 * Faults: `RangeError` where nothing at all is above zero: steps of 0 and no standard.
 * Source: JCGM 100:2008; EA-4/02 M:2022; ILAC-P14:09/2020 (the item's own repeatability and resolution take part).
 * @example pointBudget({ standards: [], performedOn: "2026-03-04", distanceUnit: "mm", signalUnit: "mA",
 *   principle: "laser", isTemperatureCompensated: false, airTemperatureCelsius: 20, alignmentAngleDegrees: 0,
 *   judged: "signal", distancePerOutput: 100, steps: { reference: 0.1, output: 0.001 },
 *   repeatability: { pooledStdDev: 0.3, degreesOfFreedom: 20 }, hysteresis: { width: 0.4 } },
 *   { reference: 1000, readings: 9, isReadBothWays: true }).budget.combinedUncertainty // 0.10801234497346433
 */
export function pointBudget(basis: BudgetBasis, point: BudgetPoint): PointBudget & { sharing: Sharing } {
  const parts = [
    referenceContributions(basis, point.reference),
    outputContributions(basis, point.reference),
    scatterContributions(basis, point),
    hysteresisContribution(basis, point),
    alignmentContribution(basis, point),
    airContribution(basis, point),
  ];
  const contributions = parts
    .flatMap(({ shared, own }) => [...shared, ...own])
    .filter(({ standardUncertainty }) => standardUncertainty > 0);
  return {
    budget: combineBudget(contributions),
    missing: parts.flatMap((part) => part.missing),
    sharing: sharingOf(parts, basis, point),
  };
}

/**
 * The contributions of the reference distance: its standards, their drift and resolution.
 *
 * @param basis of the phase
 * @param reference distance that is measured; 0 where it is left out: what grows with the distance is then not in
 * @returns contributions in distance, those that all readings share apart from those of each reading
 * Source: JCGM 100:2008, 4.3; EA-4/02 M:2022.
 * @example referenceContributions({ standards: [], performedOn: "2026-03-04", distanceUnit: "mm", signalUnit: "mA",
 *   principle: "laser", isTemperatureCompensated: false, airTemperatureCelsius: 20, alignmentAngleDegrees: 0,
 *   judged: "signal", distancePerOutput: 100, steps: { reference: 0.1, output: 0.001 },
 *   repeatability: { pooledStdDev: 0.3, degreesOfFreedom: 20 }, hysteresis: { width: 0.4 } }).own[0].source
 *   // "reference distance: step of the readings"
 */
export function referenceContributions(basis: StandardsBasis, reference = 0): FoundContributions {
  return standardContributions(basis.standards, {
    role: "reference distance",
    kind: "distance",
    unit: basis.distanceUnit,
    sensitivity: 1,
    typedStep: basis.steps.reference,
    performedOn: basis.performedOn,
    measured: reference,
  });
}

/**
 * The contributions of the judged output: the signal meter, turned into distance, or half a step of what was displayed.
 *
 * @param basis of the phase
 * @param reference distance whose ideal signal is measured; without it what grows with the signal is not in
 * @returns contributions in distance, those that all readings share apart from those of each reading
 * Source: JCGM 100:2008, 4.3 and 5.1.3.
 * @example outputContributions({ standards: [], performedOn: "2026-03-04", distanceUnit: "mm", signalUnit: "mA",
 *   principle: "laser", isTemperatureCompensated: false, airTemperatureCelsius: 20, alignmentAngleDegrees: 0,
 *   judged: "counts", distancePerOutput: 0.1, steps: { reference: 0.1, output: 1 },
 *   repeatability: { pooledStdDev: 0.3, degreesOfFreedom: 20 }, hysteresis: { width: 0.4 } }).own[0].source
 *   // "resolution of the counts"
 */
export function outputContributions(basis: StandardsBasis, reference?: number): FoundContributions {
  const { judged, signalUnit, steps, distancePerOutput, ends } = basis;
  if (judged === "signal") {
    return standardContributions(basis.standards, {
      role: "signal meter",
      kind: unitTable[signalUnit].kind,
      unit: signalUnit,
      sensitivity: distancePerOutput,
      typedStep: steps.output,
      performedOn: basis.performedOn,
      measured: ends === undefined || reference === undefined ? 0 : idealOutput(ends, reference),
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

/**
 * The contribution of a reference that does not lie on the axis of the sensor: x(1 − cos θ), rectangular.
 *
 * @param basis alignment angle in degrees, unit of distances
 * @param point reference in distance
 * @returns the contribution in distance, or that no angle is stated
 * Source: JCGM 100:2008, F.2.4.4 (the cosine error); the rectangular shape is own choice.
 * @example alignmentContribution({ alignmentAngleDegrees: 60, distanceUnit: "mm" }, { reference: 100 }).own[0].value // 50
 */
export function alignmentContribution(
  { alignmentAngleDegrees, distanceUnit }: Pick<BudgetBasis, "alignmentAngleDegrees" | "distanceUnit">,
  { reference }: Pick<BudgetPoint, "reference">,
): FoundContributions {
  if (alignmentAngleDegrees === undefined) return onlyMissing("reference alignment: no alignment_angle is stated");
  const angle = (alignmentAngleDegrees * Math.PI) / 180;
  const value = Math.abs(reference) * 2 * Math.sin(angle / 2) ** 2;
  return only({ source: "reference alignment", value, unit: distanceUnit, distribution: "rectangular" });
}

/** What the sensor and the day's air have to do with each other. */
type AirBasis = Pick<
  BudgetBasis,
  "principle" | "isTemperatureCompensated" | "airTemperatureCelsius" | "otherGas" | "standards" | "performedOn"
>;

/**
 * The contribution of the air temperature, for an ultrasonic sensor that does not correct for it: x/(2 T) for a kelvin.
 *
 * @param basis principle, air temperature in °C, standards
 * @param point reference in distance
 * @returns contributions of the thermometers in distance; none for another sensor; or what is not stated
 * Source: the speed of sound goes with √T (ISO 9613-1); JCGM 100:2008, 5.1.3 for the sensitivity.
 * @example airContribution({ principle: "laser", isTemperatureCompensated: false, airTemperatureCelsius: undefined,
 *   standards: [], performedOn: undefined }, { reference: 1000 }).own // []
 */
export function airContribution(basis: AirBasis, { reference }: Pick<BudgetPoint, "reference">): FoundContributions {
  if (basis.principle !== "ultrasonic" || basis.isTemperatureCompensated) return only();
  if (basis.otherGas !== undefined) {
    return onlyMissing(`speed of sound: the medium is ${basis.otherGas}, and its speed of sound is not known`);
  }
  if (basis.airTemperatureCelsius === undefined) return onlyMissing("air temperature: not stated");
  return standardContributions(basis.standards, {
    role: "air temperature",
    kind: "temperature",
    unit: "°C",
    sensitivity: Math.abs(reference) / (2 * (basis.airTemperatureCelsius + 273.15)),
    typedStep: 0,
    performedOn: basis.performedOn,
    measured: basis.airTemperatureCelsius,
  });
}

function only(parts?: Parameters<typeof contribution>[0]): FoundContributions {
  return { shared: [], own: parts === undefined ? [] : [contribution(parts)], missing: [] };
}

function onlyMissing(why: string): FoundContributions {
  return { shared: [], own: [], missing: [why] };
}
