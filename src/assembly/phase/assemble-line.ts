import type { PhaseAnalysis } from "../../analysis/figures/analyse-phase.ts";
import { type Figure, isDetermined, notDetermined } from "../../analysis/figures/figure.ts";
import type { Loop } from "../../analysis/readings/loop.ts";
import { lineUnderUncertainty } from "../../analysis/uncertainty/line-under-uncertainty.ts";
import type { BudgetBasis } from "../../analysis/uncertainty/point-budget.ts";
import type { ReadingUncertainties } from "../../analysis/uncertainty/shared-uncertainty.ts";
import type { PhaseRecord } from "../../record/record-schema.ts";

/** Where along the output the inverse is given. */
const quarters = [0, 0.25, 0.5, 0.75, 1];

/**
 * The line through readings of known uncertainty, with the inverse at the quarters of the output.
 *
 * Own uncertainty of an output: the pooled standard deviation of one reading. Own uncertainty of a reference: its
 * resolution. Shared: the certificates and drifts of the standards.
 *
 * @param analysis of the phase
 * @param basis of its budgets, distance
 * @param uncertainties what readings share and what each has of its own, distance
 * @param loop for the ends of the output
 * @returns the line in the unit of the output; or the reason why the workbook does not allow it
 * Source: ISO/TS 28037:2010.
 * @example assembleLine(emptyAnalysis, basis, { sharedReference: 0.1, sharedOutput: 0, ownReference: 0 }, loop) // {
 *   notDetermined: "fewer than three readings at two distances" }
 */
export function assembleLine(
  analysis: PhaseAnalysis,
  basis: BudgetBasis,
  uncertainties: Figure<ReadingUncertainties>,
  loop: Loop,
): Figure<NonNullable<PhaseRecord["uncertainLine"]>> {
  const { repeatability, distancePerOutput } = basis;
  const ends = loop.characteristics[analysis.judged];
  if (!isDetermined(uncertainties)) return uncertainties;
  if (!isDetermined(repeatability)) return repeatability;
  if (ends === undefined) return notDetermined("the ends of the output are not stated");
  const used = analysis.readings.flatMap(({ reading, leftOut }) => {
    const output = reading[analysis.judged];
    return leftOut === undefined && output !== undefined ? [{ reference: reading.reference, output }] : [];
  });
  const line = lineUnderUncertainty(
    {
      references: used.map(({ reference }) => reference),
      outputs: used.map(({ output }) => output),
      referenceUncertainty: uncertainties.ownReference,
      outputUncertainty: repeatability.pooledStdDev / distancePerOutput,
      commonReferenceUncertainty: uncertainties.sharedReference,
      commonOutputUncertainty: uncertainties.sharedOutput / distancePerOutput,
    },
    quarters.map((part) => ends.outputAtLower + part * (ends.outputAtUpper - ends.outputAtLower)),
  );
  if (!isDetermined(line)) return line;
  const { n: _, inverse, ...figures } = line;
  return { ...figures, inverse: inverse.map((value) => ({ ...value })) };
}
