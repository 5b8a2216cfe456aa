import { fQuantile } from "../../numeric/f-quantile.ts";
import { fitLineErrorsInBoth, type UncertainPoints } from "../../numeric/fit-line-errors-in-both.ts";
import { fitLineWeighted, type WeightedLineFit } from "../../numeric/fit-line-weighted.ts";
import { lineInverse } from "../../numeric/line-inverse.ts";
import { mean } from "../../numeric/mean.ts";
import { requirePoints } from "../../numeric/require-finite.ts";
import { type Figure, notDetermined } from "../figures/figure.ts";
import { type LackOfFitLimit, lackOfFitLimit, type ScatteringMean } from "./lack-of-fit-limit.ts";

/** The readings of one phase with what is known of each on its own, and what all of them share. */
export type UncertainReadings = {
  references: readonly number[];
  outputs: readonly number[];
  /** Standard uncertainty of one reference position that the others do not share, distance; 0 where none is stated. */
  referenceUncertainty: number;
  /** Standard uncertainty of one output that the others do not share, in its unit. */
  outputUncertainty: number;
  /** The same of each output given, where they are means; that of one output where it is left out. */
  meanUncertainties?: readonly number[];
  /** How well these are known: left out where they are stated, and not estimated from a scatter. */
  outputDegreesOfFreedom?: number;
  /** Of each output given, where they scatter by more or less than the uncertainties above say; units of the output. */
  ownScatters?: readonly OwnScatter[];
  /** Standard uncertainties that all readings share: of the reference in distance, of the output in its unit. */
  commonReferenceUncertainty: number;
  commonOutputUncertainty: number;
};

/** What a mean scatters by, and which part of it the repeats of its test point tell. */
export type OwnScatter = Pick<ScatteringMean, "uncertainty" | "ofScatter" | "degreesOfFreedom" | "point">;

/** The distance that an output stands for by the fitted line, with its standard uncertainty. */
export type CalibratedValue = { output: number; reference: number; standardUncertainty: number };

/** A line whose uncertainties come from what was known before the fit, and whether the readings lie on a line. */
export type LineUnderUncertainty = WeightedLineFit & {
  method: "errors in both" | "weighted";
  /** F where the scatter is an estimate, chi-squared where all uncertainties are stated. */
  test: "F" | "chi-squared";
  /** Degrees of freedom of the uncertainties, where they are estimated. */
  scatterDegreesOfFreedom?: number;
  /** 95 % limit of chi-squared; above it a straight line and the uncertainties do not agree. */
  chiSquaredLimit: number;
  isStraight: boolean;
  /** Empty where the readings do not lie on a straight line: the line says nothing of a distance then. */
  inverse: readonly CalibratedValue[];
};

const significance = 0.95;
/** A slope within so many of its standard uncertainties of zero is no slope (about 95 %): own choice. */
const leastSlope = 2;

/**
 * The straight line through readings of known uncertainty, the test of that model, and the inverse.
 *
 * Errors in both where the reference positions have an uncertainty of their own, weighted least squares where they
 * have none. A slope that its own uncertainty does not tell from zero is no line: its inverse to first order would mean
 * nothing. Chi-squared is held against its own 95 % limit where the uncertainties are stated; where they are estimated
 * with ν degrees of freedom, against (n − 2)·F(95 %, n − 2, ν), or where each scatters by its own, `lackOfFitLimit`. The
 * inverse adds what all readings share: u² = u²(fit, one output) + u²(reference) + (u(output)/b)².
 *
 * The abscissas are shifted to their mean before the fit, so that distances far from zero cost no digits.
 *
 * @param readings n >= 3 readings at two or more distances, with their uncertainties
 * @param outputs where the inverse is asked for, in the unit of the output
 * @returns the line, chi-squared with its 95 % limit, and the calibrated values; or the reason why there is none
 * Faults: `RangeError` for lists that differ in length or a value that is not finite.
 * Source: ISO/TS 28037:2010, clauses 6 and 7 and their inverse evaluation; JCGM 100:2008, H.3.6, for what is shared; F
 *   for estimated variances: N. Draper, H. Smith, Applied Regression Analysis, 2.1 (lack of fit and pure error).
 * @example lineUnderUncertainty({ references: [1, 2, 3, 4, 5, 6], outputs: [3.3, 5.6, 7.1, 9.3, 10.7, 12.1],
 *   referenceUncertainty: 0, outputUncertainty: 0.5, commonReferenceUncertainty: 0, commonOutputUncertainty: 0 }, [10.5])
 *   // slope 1.757, chiSquared 1.665 of 9.488, inverse 4.913 with 0.322
 */
export function lineUnderUncertainty(
  readings: UncertainReadings,
  outputs: readonly number[],
): Figure<LineUnderUncertainty> {
  const { references, outputs: read } = readings;
  requirePoints(references, read, 0);
  if (new Set(references).size < 2 || references.length < 3)
    return notDetermined("fewer than three readings at two distances");
  if (!(readings.outputUncertainty > 0)) return notDetermined("the readings of one test point do not scatter");
  const middle = mean(references);
  // Far from zero the terms of the inverse cancel, and with them its digits: the line is fitted about the middle.
  const fitted = fittedLine({ ...readings, references: references.map((reference) => reference - middle) });
  if (fitted === undefined) return notDetermined("the output does not follow the distance");
  const { limit: chiSquaredLimit, scatterDegreesOfFreedom } = limitOf(readings, fitted);
  const isEstimated = Number.isFinite(scatterDegreesOfFreedom);
  const isStraight = fitted.chiSquared <= chiSquaredLimit;
  return {
    ...fitted,
    ...interceptAtZero(fitted, middle),
    method: readings.referenceUncertainty > 0 ? "errors in both" : "weighted",
    test: isEstimated ? "F" : "chi-squared",
    ...(isEstimated && { scatterDegreesOfFreedom }),
    chiSquaredLimit,
    isStraight,
    inverse: isStraight ? outputs.map((output) => calibratedValue(fitted, middle, output, readings)) : [],
  };
}

function limitOf(readings: UncertainReadings, { degreesOfFreedom, slope }: WeightedLineFit): LackOfFitLimit {
  const { ownScatters, referenceUncertainty, outputUncertainty, meanUncertainties } = readings;
  const { outputDegreesOfFreedom = Number.POSITIVE_INFINITY } = readings;
  if (ownScatters === undefined) {
    const limit = degreesOfFreedom * fQuantile(significance, degreesOfFreedom, outputDegreesOfFreedom);
    return { limit, scatterDegreesOfFreedom: outputDegreesOfFreedom };
  }
  const ofReference = slope * referenceUncertainty;
  return lackOfFitLimit(
    ownScatters.map((own, index) => ({
      ...own,
      abscissa: readings.references[index] as number,
      weightedBy: Math.hypot(meanUncertainties?.[index] ?? outputUncertainty, ofReference),
      uncertainty: Math.hypot(own.uncertainty, ofReference),
    })),
  );
}

function fittedLine(readings: UncertainReadings): WeightedLineFit | undefined {
  const { references, outputs, referenceUncertainty, outputUncertainty } = readings;
  const ordinateUncertainties = readings.meanUncertainties ?? outputs.map(() => outputUncertainty);
  const abscissaUncertainties = references.map(() => referenceUncertainty);
  const fitted =
    referenceUncertainty > 0
      ? lineOrNone({ abscissas: references, ordinates: outputs, abscissaUncertainties, ordinateUncertainties })
      : fitLineWeighted(references, outputs, ordinateUncertainties);
  if (fitted === undefined) return undefined;
  return Math.abs(fitted.slope) > leastSlope * fitted.slopeStandardUncertainty ? fitted : undefined;
}

/** Points that hold no line at all, as of a sensor that stands still, let the iteration find no end. */
function lineOrNone(points: UncertainPoints): WeightedLineFit | undefined {
  try {
    return fitLineErrorsInBoth(points);
  } catch (fault) {
    if (fault instanceof RangeError) return undefined;
    throw fault;
  }
}

/** The intercept of a line that was fitted with its abscissas less the middle, and its covariance with the slope. */
function interceptAtZero(fitted: WeightedLineFit, middle: number) {
  const { slope, intercept, slopeStandardUncertainty, interceptStandardUncertainty, covariance } = fitted;
  const ofSlope = middle * slopeStandardUncertainty;
  const variance = interceptStandardUncertainty ** 2 + ofSlope ** 2 - 2 * middle * covariance;
  return {
    intercept: intercept - slope * middle,
    interceptStandardUncertainty: Math.sqrt(Math.max(0, variance)),
    covariance: covariance - middle * slopeStandardUncertainty ** 2,
  };
}

function calibratedValue(
  fitted: WeightedLineFit,
  middle: number,
  output: number,
  readings: UncertainReadings,
): CalibratedValue {
  const inverse = lineInverse(fitted, output, readings.outputUncertainty);
  const standardUncertainty = Math.hypot(
    inverse.standardUncertainty,
    readings.commonReferenceUncertainty,
    readings.commonOutputUncertainty / fitted.slope,
  );
  return { output, reference: middle + inverse.abscissa, standardUncertainty };
}
