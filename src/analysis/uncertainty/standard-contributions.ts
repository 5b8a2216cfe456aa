import type { Standard } from "../../model/calibration.ts";
import { certificateSource } from "../../model/certificate-source.ts";
import { convertDifference } from "../../units/convert.ts";
import { type UnitKind, type UnitSymbol, unitOf, unitTable } from "../../units/unit-table.ts";
import { daysBetween, daysPerYear } from "../years/day-number.ts";
import { type Contribution, contribution } from "./budget.ts";

/** What a budget could take from the workbook, and in words what the workbook does not give. */
export type FoundContributions = {
  /** What all readings of a phase share: a certificate, a drift. */
  shared: readonly Contribution[];
  /** What each reading, or each mean, has of its own. */
  own: readonly Contribution[];
  missing: readonly string[];
};

/** How a standard enters a budget: which kind it is of, in which unit, and what one unit of it does to the distance. */
export type StandardUse = {
  role: string;
  kind: UnitKind;
  unit: UnitSymbol;
  sensitivity: number;
  /** Smallest step that was typed, for a standard that states no resolution; in `unit`. */
  typedStep: number;
  performedOn: string | undefined;
  /** What is measured, in `unit`, for a standard whose uncertainty grows with it; 0 where it is left out. */
  measured?: number;
};

/**
 * The standards whose uncertainty, resolution and drift are in a unit of one kind.
 *
 * @param standards every standard that the calibration names
 * @param kind kind of unit
 * @returns those of that kind; one that names no unit, or states percent, is of none of the kinds that are measured
 * Source: own choice: the unit decides, not the word in the column quantity.
 * @example standardsOf([{ standard: "GB-1", certificate: "EX-1", calibratedOn: "2026-01-14", dueOn: "2027-01-14",
 *   expandedUncertainty: 0.2, uncertaintyUnit: "mm" }], "distance").length // 1
 */
export function standardsOf(standards: readonly Standard[], kind: UnitKind): readonly Standard[] {
  return standards.filter(({ uncertaintyUnit }) => {
    const unit = unitOf(uncertaintyUnit ?? "");
    return unit !== undefined && unitTable[unit].kind === kind;
  });
}

/**
 * The contributions of the standards of one kind: certificate, drift since the certificate, resolution.
 *
 * Certificate: U/k, normal (k = 2 where it is not stated, and that is said), U = a + b·|measured| where the standard
 * states a relative part too. Drift: the greatest drift since the day of
 * the certificate, rectangular. Resolution: half a step, rectangular; the step that was typed where none is stated.
 * All standards of the kind take part, as if each had been used for every reading.
 *
 * @param standards every standard that the calibration names
 * @param use kind, unit and sensitivity
 * @returns contributions in distance, and what is missing, in words
 * Source: JCGM 100:2008, 4.3.3, 4.3.7 and F.2.2.1; EA-4/02 M:2022 for drift as a contribution.
 * @example standardContributions([{ standard: "GB-1", certificate: "EX-1", calibratedOn: "2026-01-14",
 *   dueOn: "2027-01-14", expandedUncertainty: 0.2, uncertaintyUnit: "mm", coverageFactor: 2 }],
 *   { role: "reference distance", kind: "distance", unit: "mm", sensitivity: 1, typedStep: 0.1,
 *   performedOn: "2026-03-04" }).shared[0].standardUncertainty // 0.1
 */
export function standardContributions(standards: readonly Standard[], use: StandardUse): FoundContributions {
  const fitting = standardsOf(standards, use.kind);
  const unfit = standards
    .filter((standard) => standard.quantity === use.kind && !fitting.includes(standard))
    .map(({ standard }) => `${standard}: its uncertainty is not stated in a unit of ${use.kind}`);
  if (fitting.length === 0) {
    const none = `${use.role}: no standard with an uncertainty in ${use.unit} is named`;
    return { shared: [], own: [typedStepOf(use)], missing: [...unfit, none] };
  }
  const found = fitting.map((standard) => contributionsOf(standard, use));
  return {
    shared: found.flatMap(({ shared }) => shared),
    own: found.flatMap(({ own }) => own),
    missing: [...unfit, ...found.flatMap(({ missing }) => missing)],
  };
}

function contributionsOf(standard: Standard, use: StandardUse): FoundContributions {
  const { standard: name, expandedUncertainty, coverageFactor, resolution } = standard;
  const missing: string[] = [];
  const shared: Contribution[] = [];
  if (expandedUncertainty === undefined) missing.push(`${name}: no expanded uncertainty is stated`);
  else {
    if (coverageFactor === undefined) missing.push(`${name}: no coverage factor is stated; 2 is taken`);
    const divisor = coverageFactor ?? 2;
    const form = { distribution: "normal", divisor } as const;
    shared.push(line(certificateSource(name), expandedUncertainty, form, relativePartOf(standard, use)));
  }
  const drift = driftOf(standard, use.performedOn);
  if (drift === undefined) missing.push(`${name}: ${whyNoDrift(standard)}`);
  else if (drift > 0) shared.push(line(`${name}: drift since the certificate`, drift, { distribution: "rectangular" }));
  if (resolution === undefined) missing.push(`${name}: no resolution is stated; the step of the readings is taken`);
  const own =
    resolution === undefined
      ? typedStepOf(use)
      : line(`${name}: resolution`, resolution / 2, { distribution: "rectangular" });
  return { shared, own: [own], missing };

  function line(source: string, stated: number, form: LineForm, more = 0) {
    const value = convertDifference(stated, unitOf(standard.uncertaintyUnit ?? "") ?? use.unit, use.unit) + more;
    return contribution({ source, value, unit: use.unit, sensitivity: use.sensitivity, ...form });
  }
}

type LineForm = { distribution: "normal" | "rectangular"; divisor?: number };

/** b·|measured|, in the unit of the use. */
function relativePartOf({ relativeUncertainty = 0 }: Standard, { measured = 0 }: StandardUse): number {
  return (relativeUncertainty / 100) * Math.abs(measured);
}

function driftOf({ driftPerYear, calibratedOn }: Standard, performedOn: string | undefined): number | undefined {
  if (driftPerYear === undefined || performedOn === undefined) return undefined;
  return (driftPerYear * Math.max(0, daysBetween(calibratedOn, performedOn))) / daysPerYear;
}

function whyNoDrift({ driftPerYear }: Standard): string {
  return driftPerYear === undefined
    ? "no drift is stated"
    : "the drift is not known: the day of the work is not stated";
}

function typedStepOf({ role, typedStep, unit, sensitivity }: StandardUse): Contribution {
  const source = `${role}: step of the readings`;
  return contribution({ source, value: typedStep / 2, unit, distribution: "rectangular", sensitivity });
}
