import { type UnitKind, unitTable } from "../../units/unit-table.ts";
import { type Figure, notDetermined } from "../figures/figure.ts";
import type { Contribution } from "./budget.ts";
import { outputContributions, referenceContributions, type StandardsBasis } from "./point-budget.ts";
import { standardsOf } from "./standard-contributions.ts";

/** Standard uncertainties in distance: what all readings of a phase share, and what each has of its own. */
export type ReadingUncertainties = {
  sharedReference: number;
  sharedOutput: number;
  ownReference: number;
};

/**
 * What all readings of a phase share through the certificates and drifts of their standards, and what each reference
 * position has of its own through the resolution of the reference. Where a standard's uncertainty grows with what it
 * measures, it is that at the upper end of the range.
 *
 * @param basis of the phase
 * @returns standard uncertainties in distance; or the reason why the shared part is not known: it is only where each
 *   standard of distance, and of the signal where that is judged, states its uncertainty
 * Source: JCGM 100:2008, 5.1.2; F.2.4.5 for effects that are common to all readings.
 * @example readingUncertainties({ standards: [{ standard: "GB-1", certificate: "EX-1", calibratedOn: "2026-01-14",
 *   dueOn: "2027-01-14", expandedUncertainty: 0.2, uncertaintyUnit: "mm", coverageFactor: 2 }],
 *   performedOn: "2026-03-04", distanceUnit: "mm", signalUnit: "mA", principle: "laser",
 *   isTemperatureCompensated: false, airTemperatureCelsius: 20, alignmentAngleDegrees: 0, judged: "value",
 *   distancePerOutput: 10, steps: { reference: 0.2, output: 0.01 },
 *   repeatability: { pooledStdDev: 0.3, degreesOfFreedom: 20 }, hysteresis: { width: 0.4 } })
 *   // { sharedReference: 0.1, sharedOutput: 0, ownReference: 0.05773502691896258 }
 */
export function readingUncertainties(basis: StandardsBasis): Figure<ReadingUncertainties> {
  const reason =
    whyNotKnown(basis, "distance", "distance") ??
    (basis.judged === "signal" ? whyNotKnown(basis, unitTable[basis.signalUnit].kind, "the signal") : undefined);
  if (reason !== undefined) return notDetermined(reason);
  const far = basis.ends?.rangeUpper;
  const reference = referenceContributions(basis, far);
  const output = outputContributions(basis, far);
  return {
    sharedReference: combined(reference.shared),
    sharedOutput: combined(output.shared),
    ownReference: combined(reference.own),
  };
}

/**
 * What the standards add to a zero or span error over what its line has: all readings share it.
 *
 * @param error as a record has it; records before 0.3.0 do not tell this part
 * @returns standard uncertainty, percent of span; 0 where it is not known
 * Source: `zeroAndSpanUncertainty`.
 * @example sharedPartOf({ standardsUncertainty: 0.4 }) // 0.4
 */
export function sharedPartOf({ standardsUncertainty = 0 }: { standardsUncertainty?: number | undefined }): number {
  return standardsUncertainty;
}

function whyNotKnown({ standards }: StandardsBasis, kind: UnitKind, of: string): string | undefined {
  const fitting = standardsOf(standards, kind);
  if (fitting.length === 0) return `no standard of ${of} states its uncertainty`;
  const silent = fitting.find(({ expandedUncertainty }) => expandedUncertainty === undefined);
  return silent && `${silent.standard} states no uncertainty`;
}

function combined(contributions: readonly Contribution[]): number {
  return Math.hypot(...contributions.map(({ standardUncertainty }) => standardUncertainty));
}
