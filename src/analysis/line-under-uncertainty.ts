import { chiSquaredQuantile } from "../numeric/chi-squared-quantile.ts";
import { fitLineErrorsInBoth } from "../numeric/fit-line-errors-in-both.ts";
import { fitLineWeighted, type WeightedLineFit } from "../numeric/fit-line-weighted.ts";
import { lineInverse } from "../numeric/line-inverse.ts";
import { type Figure, notDetermined } from "./figure.ts";

/** The readings of one phase with what is known of each on its own, and what all of them share. */
export type UncertainReadings = {
  references: readonly number[];
  outputs: readonly number[];
  /** Standard uncertainty of one reference position that the others do not share, distance; 0 where none is stated. */
  referenceUncertainty: number;
  /** Standard uncertainty of one output that the others do not share, in its unit. */
  outputUncertainty: number;
  /** Standard uncertainties that all readings share: of the reference in distance, of the output in its unit. */
  commonReferenceUncertainty: number;
  commonOutputUncertainty: number;
};

/** The distance that an output stands for by the fitted line, with its standard uncertainty. */
export type CalibratedValue = { output: number; reference: number; standardUncertainty: number };

/** A line whose uncertainties come from what was known before the fit, and whether the readings lie on a line. */
export type LineUnderUncertainty = WeightedLineFit & {
  method: "errors in both" | "weighted";
  /** 95 % limit of chi-squared; above it a straight line and the stated uncertainties do not agree. */
  chiSquaredLimit: number;
  isStraight: boolean;
  inverse: readonly CalibratedValue[];
};

const significance = 0.95;

/**
 * The straight line through readings of known uncertainty, the chi-squared test of that model, and the inverse.
 *
 * Errors in both where the reference positions have an uncertainty of their own, weighted least squares where they
 * have none. The inverse adds what all readings share: u² = u²(fit, one output) + u²(reference) + (u(output)/b)².
 *
 * @param readings n >= 3 readings at two or more distances, with their uncertainties
 * @param outputs where the inverse is asked for, in the unit of the output
 * @returns the line, chi-squared with its 95 % limit, and the calibrated values; or the reason why there is none
 * Source: ISO/TS 28037:2010, clauses 6 and 7 and their inverse evaluation; JCGM 100:2008, H.3.6, for what is shared.
 * @example lineUnderUncertainty({ references: [1, 2, 3, 4, 5, 6], outputs: [3.3, 5.6, 7.1, 9.3, 10.7, 12.1],
 *   referenceUncertainty: 0, outputUncertainty: 0.5, commonReferenceUncertainty: 0, commonOutputUncertainty: 0 }, [10.5])
 *   // slope 1.757, chiSquared 1.665 of 9.488, inverse 4.913 with 0.322
 */
export function lineUnderUncertainty(
  readings: UncertainReadings,
  outputs: readonly number[],
): Figure<LineUnderUncertainty> {
  const { references } = readings;
  if (new Set(references).size < 2 || references.length < 3)
    return notDetermined("fewer than three readings at two distances");
  if (!(readings.outputUncertainty > 0)) return notDetermined("the readings of one test point do not scatter");
  const fitted = fittedLine(readings);
  if (fitted === undefined) return notDetermined("the readings hold no line");
  const chiSquaredLimit = chiSquaredQuantile(significance, fitted.degreesOfFreedom);
  return {
    ...fitted,
    method: readings.referenceUncertainty > 0 ? "errors in both" : "weighted",
    chiSquaredLimit,
    isStraight: fitted.chiSquared <= chiSquaredLimit,
    inverse: outputs.map((output) => calibratedValue(fitted, output, readings)),
  };
}

function fittedLine(readings: UncertainReadings): WeightedLineFit | undefined {
  const { references, outputs, referenceUncertainty, outputUncertainty } = readings;
  const ordinateUncertainties = outputs.map(() => outputUncertainty);
  const fitted =
    referenceUncertainty > 0
      ? fitLineErrorsInBoth({
          abscissas: references,
          ordinates: outputs,
          abscissaUncertainties: references.map(() => referenceUncertainty),
          ordinateUncertainties,
        })
      : fitLineWeighted(references, outputs, ordinateUncertainties);
  return Math.abs(fitted.slope) > 0 ? fitted : undefined;
}

function calibratedValue(fitted: WeightedLineFit, output: number, readings: UncertainReadings): CalibratedValue {
  const inverse = lineInverse(fitted, output, readings.outputUncertainty);
  const standardUncertainty = Math.hypot(
    inverse.standardUncertainty,
    readings.commonReferenceUncertainty,
    readings.commonOutputUncertainty / fitted.slope,
  );
  return { output, reference: inverse.abscissa, standardUncertainty };
}
