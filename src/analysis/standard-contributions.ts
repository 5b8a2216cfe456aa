import type { Standard } from "../model/calibration.ts";
import { convertDifference } from "../units/convert.ts";
import { type UnitKind, type UnitSymbol, unitOf, unitTable } from "../units/unit-table.ts";
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
};

const daysPerYear = 365.25;

/**
 * The contributions of the standards of one kind: certificate, drift since the certificate, resolution.
 *
 * Certificate: U/k, normal (k = 2 where it is not stated, and that is said). Drift: the greatest drift since the day of
 * the certificate, rectangular. Resolution: half a step, rectangular; the step that was typed where none is stated.
 *
 * @param standards every standard that the calibration names
 * @param use kind, unit and sensitivity
 * @returns contributions in distance, and what is missing, in words
 * Source: JCGM 100:2008, 4.3.3, 4.3.7 and F.2.2.1; EA-4/02 M:2022 for drift as a contribution.
 * @example standardContributions([{ …, expandedUncertainty: 0.2, uncertaintyUnit: "mm", coverageFactor: 2 }], …)
 *   .shared[0].standardUncertainty // 0.1
 */
export function standardContributions(standards: readonly Standard[], use: StandardUse): FoundContributions {
  const fitting = standards.filter((standard) => kindOf(standard) === use.kind);
  if (fitting.length === 0) {
    return {
      shared: [],
      own: [typedStepOf(use)],
      missing: [`${use.role}: no standard with an uncertainty in ${use.unit} is named`],
    };
  }
  const found = fitting.map((standard) => contributionsOf(standard, use));
  return {
    shared: found.flatMap(({ shared }) => shared),
    own: found.flatMap(({ own }) => own),
    missing: found.flatMap(({ missing }) => missing),
  };
}

function kindOf({ uncertaintyUnit }: Standard): UnitKind | undefined {
  const unit = unitOf(uncertaintyUnit ?? "");
  return unit === undefined ? undefined : unitTable[unit].kind;
}

function contributionsOf(standard: Standard, use: StandardUse): FoundContributions {
  const { standard: name, expandedUncertainty, coverageFactor, resolution } = standard;
  const missing: string[] = [];
  const shared: Contribution[] = [];
  if (expandedUncertainty === undefined) missing.push(`${name}: no expanded uncertainty is stated`);
  else {
    if (coverageFactor === undefined) missing.push(`${name}: no coverage factor is stated; 2 is taken`);
    shared.push(line("certificate", expandedUncertainty, { distribution: "normal", divisor: coverageFactor ?? 2 }));
  }
  const drift = driftOf(standard, use.performedOn);
  if (drift === undefined) missing.push(`${name}: no drift is stated, or the day of the work is not`);
  else if (drift > 0) shared.push(line("drift since the certificate", drift, { distribution: "rectangular" }));
  const own =
    resolution === undefined ? typedStepOf(use) : line("resolution", resolution / 2, { distribution: "rectangular" });
  return { shared, own: [own], missing };

  function line(what: string, stated: number, form: { distribution: "normal" | "rectangular"; divisor?: number }) {
    const value = convertDifference(stated, unitOf(standard.uncertaintyUnit ?? "") ?? use.unit, use.unit);
    return contribution({ source: `${name}: ${what}`, value, unit: use.unit, sensitivity: use.sensitivity, ...form });
  }
}

function driftOf({ driftPerYear, calibratedOn }: Standard, performedOn: string | undefined): number | undefined {
  if (driftPerYear === undefined || performedOn === undefined) return undefined;
  const days = (Date.parse(performedOn) - Date.parse(calibratedOn)) / 86_400_000;
  return (driftPerYear * Math.max(0, days)) / daysPerYear;
}

function typedStepOf({ role, typedStep, unit, sensitivity }: StandardUse): Contribution {
  const source = `${role}: step of the readings`;
  return contribution({ source, value: typedStep / 2, unit, distribution: "rectangular", sensitivity });
}
