import { groupedBy } from "../../model/grouped-by.ts";
import { centre, sumOfProducts } from "../../numeric/centre.ts";
import { fitLine } from "../../numeric/fit-line.ts";
import { lineStandardUncertainty, lineValue } from "../../numeric/line-value.ts";
import { mean } from "../../numeric/mean.ts";
import { studentTQuantile } from "../../numeric/student-t-quantile.ts";
import type { CurveReading } from "../figures/error-curve.ts";
import type { KnownDeviation } from "./cycle-differences.ts";

/** Two-sided chance of finding growth where there is none. */
const growthChance = 0.05;
/** Fewer test points show no growth: own choice. */
const fewestPoints = 5;
/** A reading that alone decides the line has no residual, whatever it is divided by. */
const leastLeft = 1e-9;
/** Mean of |z| of a normal quantity of standard deviation 1. */
const meanSize = Math.sqrt(2 / Math.PI);
/** Standard deviation of |z| over its mean. */
const spreadOfSize = Math.sqrt(Math.PI / 2 - 1);

/**
 * What one reading scatters by at each test point where nothing was repeated, from the sizes of the residuals about the line
 * of error on distance, where they are shown to grow or to shrink along the range.
 *
 * |r|/√(1 − h) on distance by least squares, h the leverage; shown where its slope is beyond Student's t at 95 %. Then
 * s(x) = √(π/2) · (a + b·x), no less than its standard error, with ν = (s/u(s))²/2, at least 1; u(s) is that of the fit,
 * or what sizes of normal residuals vary by, s · √(π/2 − 1) · √(1/n + (x − x̄)²/Sxx), where that is more.
 *
 * @param readings errors in percent of span
 * @returns standard deviation of one reading at each test point, percent of span; undefined where no growth is shown, or
 *   fewer than five test points were read
 * Source: H. Glejser (1969), J. Am. Stat. Assoc. 64, 316; JCGM 100:2008, E.4.3, for ν from the uncertainty of s; √(2/π) is
 *   E|z| of a normal quantity.
 * @example growingScatter([0, 0, 1, -1, 2, -2, 3, -3, 4, -4].map((error, index) => ({ point: Math.floor(index / 2),
 *   reference: Math.floor(index / 2), error, direction: "rising", cycle: 1 }))).get(4).degreesOfFreedom // 2.920
 */
export function growingScatter(readings: readonly CurveReading[]): ReadonlyMap<number, KnownDeviation> | undefined {
  const points = groupedBy(readings, ({ point }) => point);
  const references = readings.map(({ reference }) => reference);
  // Points that were all read at one or two distances tell nothing of the range.
  if (Math.min(points.size, new Set(references).size) < fewestPoints) return undefined;
  const errors = readings.map(({ error }) => error);
  const { deviations } = centre(references);
  const squares = sumOfProducts(deviations, deviations);
  const line = fitLine(references, errors);
  const sizes = errors.map((error, index) => {
    const left = Math.max(leastLeft, 1 - 1 / errors.length - (deviations[index] as number) ** 2 / squares);
    return Math.abs(error - lineValue(line, references[index] as number)) / Math.sqrt(left);
  });
  const growth = fitLine(references, sizes);
  const limit = studentTQuantile(1 - growthChance / 2, growth.degreesOfFreedom);
  if (!(Math.abs(growth.slope) > limit * (growth.slopeStdError as number))) return undefined;
  const atPoint = (own: readonly CurveReading[]): KnownDeviation => {
    const at = mean(own.map(({ reference }) => reference));
    const found = (lineStandardUncertainty(growth, at) as number) / meanSize;
    const standardDeviation = Math.max(found, lineValue(growth, at) / meanSize);
    const lever = 1 / growth.n + (at - growth.abscissaMean) ** 2 / squares;
    const uncertainty = Math.max(found, standardDeviation * spreadOfSize * Math.sqrt(lever));
    const freedom = uncertainty === 0 ? growth.degreesOfFreedom : (standardDeviation / uncertainty) ** 2 / 2;
    return { standardDeviation, degreesOfFreedom: Math.max(1, freedom) };
  };
  return new Map([...points].map(([point, own]) => [point, atPoint(own)]));
}
