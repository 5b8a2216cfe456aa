import { type UnitKind, unitTable } from "../../units/unit-table.ts";
import { type Figure, isDetermined, notDetermined } from "../figures/figure.ts";
import type { LineError } from "../figures/zero-and-span-error.ts";
import type { Contribution } from "./budget.ts";
import { type BudgetBasis, outputContributions, referenceContributions } from "./point-budget.ts";
import { standardsOf } from "./standard-contributions.ts";

/** Standard uncertainties in distance: what all readings of a phase share, and what each has of its own. */
export type ReadingUncertainties = {
  sharedReference: number;
  sharedOutput: number;
  ownReference: number;
};

/**
 * What all readings of a phase share through the certificates and drifts of their standards, and what each reference
 * position has of its own through the resolution of the reference.
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
export function readingUncertainties(basis: BudgetBasis): Figure<ReadingUncertainties> {
  const reason =
    whyNotKnown(basis, "distance", "distance") ??
    (basis.judged === "signal" ? whyNotKnown(basis, unitTable[basis.signalUnit].kind, "the signal") : undefined);
  if (reason !== undefined) return notDetermined(reason);
  const reference = referenceContributions(basis);
  const output = outputContributions(basis);
  return {
    sharedReference: combined(reference.shared),
    sharedOutput: combined(output.shared),
    ownReference: combined(reference.own),
  };
}

/**
 * Zero and span error with the uncertainty of the fit and of the standards together.
 *
 * Zero error: u² = u²(fit) + u²(shared). Span error: u² = u²(fit) + 2 · u²(shared): what the readings share may differ
 * from one end of the range to the other, and no certificate says by how much, so the two ends are taken as not
 * correlated (own choice, the greater value; a shift that is the same everywhere would leave the span error alone).
 *
 * @param error zero or span error in percent of span, with the standard uncertainty of the fit
 * @param which of the two it is
 * @param uncertainties of `readingUncertainties`, distance
 * @param span of the range, distance
 * @returns combined standard uncertainty, percent of span; or the reason why there is none
 * Source: JCGM 100:2008, H.3.6, for a systematic effect on a fitted line.
 * @example combinedLineUncertainty({ percentSpan: 0.1, standardUncertainty: 0.3 }, "zero", { sharedReference: 0.4,
 *   sharedOutput: 0, ownReference: 0 }, 100) // 0.5
 */
export function combinedLineUncertainty(
  error: LineError,
  which: "zero" | "span",
  uncertainties: Figure<ReadingUncertainties>,
  span: number,
): Figure<number> {
  if (!isDetermined(uncertainties)) return uncertainties;
  if (error.standardUncertainty === null) return notDetermined("two readings only");
  const shared = (100 * Math.hypot(uncertainties.sharedReference, uncertainties.sharedOutput)) / span;
  return Math.hypot(error.standardUncertainty, which === "zero" ? shared : Math.SQRT2 * shared);
}

/**
 * What the standards add to a zero or span error over what its fit has: all readings share it.
 *
 * @param error with the standard uncertainty of the fit and the combined one; null where they are not known
 * @returns standard uncertainty, percent of span; 0 where it is not known
 * Source: the square root of the difference of the two squares, the inverse of `combinedLineUncertainty`.
 * @example sharedPartOf({ standardUncertainty: 0.3, combinedStandardUncertainty: 0.5 }) // 0.4
 */
export function sharedPartOf(error: {
  standardUncertainty: number | null;
  combinedStandardUncertainty: number | null;
}): number {
  const [ofFit, combined] = [error.standardUncertainty ?? 0, error.combinedStandardUncertainty ?? 0];
  return Math.sqrt(Math.max(0, combined ** 2 - ofFit ** 2));
}

function whyNotKnown({ standards }: BudgetBasis, kind: UnitKind, of: string): string | undefined {
  const fitting = standardsOf(standards, kind);
  if (fitting.length === 0) return `no standard of ${of} states its uncertainty`;
  const silent = fitting.find(({ expandedUncertainty }) => expandedUncertainty === undefined);
  return silent && `${silent.standard} states no uncertainty`;
}

function combined(contributions: readonly Contribution[]): number {
  return Math.hypot(...contributions.map(({ standardUncertainty }) => standardUncertainty));
}
