import { fitLine } from "../../numeric/fit-line.ts";
import { fitLineErrorsInBoth } from "../../numeric/fit-line-errors-in-both.ts";
import { fitLineWeighted } from "../../numeric/fit-line-weighted.ts";
import { lineInverse } from "../../numeric/line-inverse.ts";
import { type Comparison, comparisons, type PublishedExample, printedTo } from "./published-example.ts";

/** ISO/TS 28037:2010, 6.3: every ordinate is good to 0.5. */
export const weighted = { x: [1, 2, 3, 4, 5, 6], y: [3.3, 5.6, 7.1, 9.3, 10.7, 12.1] } as const;

/** ISO/TS 28037:2010, 7.4: uncertain along both axes. */
export const uncertainBoth = {
  abscissas: [1.2, 1.9, 2.9, 4, 4.7, 5.9],
  ordinates: [3.4, 4.4, 7.2, 8.5, 10.8, 13.5],
  abscissaUncertainties: [0.2, 0.2, 0.2, 0.2, 0.2, 0.2],
  ordinateUncertainties: [0.2, 0.2, 0.2, 0.4, 0.4, 0.4],
} as const;

/** ISO/TS 28037:2010, annex E: how uncertain, the scatter has to tell. */
export const unknownUncertainty = { x: [1, 2, 3, 4, 5, 6], y: [3.014, 5.225, 7.004, 9.061, 11.201, 12.762] } as const;

const thirdDecimal = () => printedTo(0.001);

function weightedLine(): readonly Comparison[] {
  const line = fitLineWeighted(weighted.x, weighted.y, [0.5, 0.5, 0.5, 0.5, 0.5, 0.5]);
  const backwards = lineInverse(line, 10.5, 0.5);
  const published = {
    ...{ intercept: 1.867, interceptStandardUncertainty: 0.465, slope: 1.757, slopeStandardUncertainty: 0.12 },
    ...{ covariance: -0.05, chiSquared: 1.665 },
  };
  return [
    ...comparisons(published, line, thirdDecimal),
    ...comparisons({ abscissa: 4.913, standardUncertainty: 0.322 }, backwards, thirdDecimal),
  ];
}

function lineOfBoth(): readonly Comparison[] {
  const published = {
    ...{ intercept: 0.5788, interceptStandardUncertainty: 0.4764, slopeStandardUncertainty: 0.1355 },
    ...{ covariance: -0.0577 },
  };
  const line = fitLineErrorsInBoth(uncertainBoth);
  return [
    ...comparisons(published, line, () => printedTo(0.0001)),
    // The slope is quoted cut off at three decimals, not rounded.
    ...comparisons({ slope: 2.159, chiSquared: 2.743 }, line, (_, figure) => (figure === "slope" ? 0.001 : 0.0005001)),
  ];
}

function lineOfScatter(): readonly Comparison[] {
  const published = {
    ...{ intercept: 1.172, interceptStdError: 0.159, slope: 1.964, slopeStdError: 0.041 },
    ...{ covariance: -0.006, residualStdDev: 0.171 },
  };
  return comparisons(published, fitLine(unknownUncertainty.x, unknownUncertainty.y), thirdDecimal);
}

/** Straight lines for calibration, with what is known of their points. */
export const lineExamples: readonly PublishedExample[] = [
  { name: "weighted line, and read backwards", source: "ISO/TS 28037:2010, 6.3", compare: weightedLine },
  { name: "line with uncertainties along both axes", source: "ISO/TS 28037:2010, 7.4", compare: lineOfBoth },
  { name: "line of unknown uncertainty", source: "ISO/TS 28037:2010, annex E", compare: lineOfScatter },
];
