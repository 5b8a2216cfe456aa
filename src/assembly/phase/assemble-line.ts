import type { PhaseAnalysis } from "../../analysis/figures/analyse-phase.ts";
import { type Figure, isDetermined, notDetermined } from "../../analysis/figures/figure.ts";
import type { Loop } from "../../analysis/readings/loop.ts";
import { lineUnderUncertainty, type OwnScatter } from "../../analysis/uncertainty/line-under-uncertainty.ts";
import { type BudgetBasis, outputContributions } from "../../analysis/uncertainty/point-budget.ts";
import type { ReadingScatter } from "../../analysis/uncertainty/reading-scatter.ts";
import type { ReadingUncertainties } from "../../analysis/uncertainty/shared-uncertainty.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { mean } from "../../numeric/mean.ts";
import type { PhaseRecord } from "../../record/record-schema.ts";

/** Where along the output the inverse is given. */
const quarters = [0, 0.25, 0.5, 0.75, 1];

/**
 * The line through readings of known uncertainty, with the inverse at the quarters of the output.
 *
 * Through the means of each test point and direction. Own uncertainty of a mean: the pooled standard deviation over √n, and
 * the step of the output, which repeats with the readings. Own uncertainty of a reference: its resolution. Shared: the
 * certificates and drifts of the standards, and what the cycles differ by. The scatter about a line cannot tell whether
 * the readings lie on one, so it has to be that of repeats. Where it changes along the range, the line is the same, and the
 * limit of its test takes the scatter of each test point.
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
  const { repeatability: scatter, distancePerOutput } = basis;
  const ends = loop.characteristics[analysis.judged];
  if (!isDetermined(uncertainties)) return uncertainties;
  if (!isDetermined(scatter)) return scatter;
  if (scatter.isAboutLine) {
    const { repeatability } = analysis.figures;
    return isDetermined(repeatability) ? notDetermined("too little was repeated") : repeatability;
  }
  if (ends === undefined) return notDetermined("the ends of the output are not stated");
  const means = outputMeans(analysis);
  const step = Math.hypot(...outputContributions(basis).own.map(({ standardUncertainty }) => standardUncertainty));
  const { pooledStdDev, betweenCycles, leftOpen } = scatter;
  const between = (betweenCycles ?? leftOpen)?.standardDeviation ?? 0;
  const ofMean = means.map(({ count }) => Math.hypot(pooledStdDev / Math.sqrt(count), step));
  const line = lineUnderUncertainty(
    {
      references: means.map(({ reference }) => reference),
      outputs: means.map(({ output }) => output),
      referenceUncertainty: uncertainties.ownReference,
      outputUncertainty: Math.hypot(pooledStdDev, step, between) / distancePerOutput,
      meanUncertainties: ofMean.map((uncertainty) => uncertainty / distancePerOutput),
      outputDegreesOfFreedom: degreesOfMeans(means, ofMean, scatter),
      ...ownScattersOf(means, scatter, step, distancePerOutput),
      commonReferenceUncertainty: uncertainties.sharedReference,
      commonOutputUncertainty:
        Math.hypot(uncertainties.sharedOutput, between / Math.sqrt(analysis.cycles)) / distancePerOutput,
    },
    quarters.map((part) => ends.outputAtLower + part * (ends.outputAtUpper - ends.outputAtLower)),
  );
  if (!isDetermined(line)) return line;
  const { n: _, inverse, ...figures } = line;
  return { ...figures, inverse: inverse.map((value) => ({ ...value })) };
}

type OutputMean = { point: number; reference: number; output: number; count: number };

/** What each mean scatters by where the scatter changes along the range, in the unit of the output. */
function ownScattersOf(
  means: readonly OutputMean[],
  { ofPoints }: ReadingScatter,
  step: number,
  distancePerOutput: number,
): { ownScatters?: readonly OwnScatter[] } {
  const ownScatters = means.flatMap(({ point, count }) => {
    const known = ofPoints?.get(point);
    if (known === undefined) return [];
    const ofScatter = known.standardDeviation / Math.sqrt(count) / distancePerOutput;
    const uncertainty = Math.hypot(ofScatter, step / distancePerOutput);
    return [{ point, ofScatter, uncertainty, degreesOfFreedom: known.degreesOfFreedom }];
  });
  return ownScatters.length === means.length ? { ownScatters } : {};
}

/** The mean of what was read of the judged output at each test point in each direction. */
function outputMeans({ readings, judged }: PhaseAnalysis): readonly OutputMean[] {
  const used = readings.filter(({ leftOut, reading }) => leftOut === undefined && reading[judged] !== undefined);
  return [...groupedBy(used, ({ point, reading }) => `${point} ${reading.direction}`).values()].map((group) => ({
    point: group[0]!.point,
    reference: mean(group.map(({ reading }) => reading.reference)),
    output: mean(group.map(({ reading }) => reading[judged] as number)),
    count: group.length,
  }));
}

/** Degrees of freedom of the variance of a mean, on the average: those of the scatter, for the part that it has. */
function degreesOfMeans(means: readonly OutputMean[], ofMean: readonly number[], scatter: ReadingScatter): number {
  if (means.length === 0 || scatter.pooledStdDev === 0) return Number.POSITIVE_INFINITY;
  const parts = means.map(({ count }, index) => scatter.pooledStdDev ** 2 / count / (ofMean[index] as number) ** 2);
  return scatter.degreesOfFreedom / mean(parts) ** 2;
}
