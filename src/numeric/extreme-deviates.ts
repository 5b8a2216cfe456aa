import { mean } from "./mean.ts";
import { sampleStandardDeviation } from "./sample-standard-deviation.ts";
import { studentTQuantile } from "./student-t-quantile.ts";

/** One step of the test: the value farthest from the mean of those left, how far, and how far noise would reach. */
export type ExtremeDeviate = { readonly index: number; readonly statistic: number; readonly critical: number };

/** The values that do not belong to the others, and the steps by which they were found. */
export type ExtremeDeviates = { readonly outliers: readonly number[]; readonly steps: readonly ExtremeDeviate[] };

const FEWEST = 3;

/**
 * Finds the values of a sample that lie too far out for a normal distribution: the generalised extreme Studentised
 * deviate test, in which a second wild value does not hide the first.
 *
 * @param values array of n >= 3 finite numbers
 * @param most greatest number of wild values that is looked for, 1 to n - 2
 * @param significance chance that noise alone gives one, 0 < α < 1, two-sided
 * @returns indexes of the wild values, the farthest first, none where noise explains all; each step with its statistic and
 * its critical value
 * Faults: `RangeError` for fewer than three values, a number that is not finite, or a `most` that is not from 1 to n − 2.
 * Source: B. Rosner, Technometrics 25, 165 (1983); NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.3.
 * @example extremeDeviates([0, 1, 2, 1, 0, 2, 1, 9], 1, 0.05).outliers // [7]
 */
export function extremeDeviates(values: readonly number[], most: number, significance: number): ExtremeDeviates {
  if (values.length < FEWEST) throw new RangeError(`${values.length} values, at least ${FEWEST} are needed`);
  if (!values.every(Number.isFinite)) throw new RangeError("a value is not finite");
  if (!Number.isInteger(most) || most < 1 || most > values.length - 2) {
    throw new RangeError(`${most} is not a whole number from 1 to ${values.length - 2}`);
  }
  const steps: ExtremeDeviate[] = [];
  let left = values.map((value, index) => ({ value, index }));
  for (let step = 1; step <= most; step++) {
    const farthest = farthestOf(left);
    if (farthest === undefined) break;
    steps.push({ ...farthest, critical: criticalDeviate(values.length, step, significance) });
    left = left.filter(({ index }) => index !== farthest.index);
  }
  const last = steps.findLastIndex(({ statistic, critical }) => statistic > critical);
  return { outliers: steps.slice(0, last + 1).map(({ index }) => index), steps };
}

/**
 * Gives the deviation, in standard deviations, that the farthest value of a normal sample exceeds by chance only so often.
 *
 * @param count n of the whole sample, n >= 3
 * @param step which removal, 1 for the first, at most n − 2
 * @param significance α of the test, two-sided
 * @returns λ, no unit
 * Faults: `RangeError` as `studentTQuantile`.
 * Source: B. Rosner, Technometrics 25, 165 (1983), equation 2.5; NIST/SEMATECH e-Handbook 1.3.5.17.3.
 * @example criticalDeviate(54, 1, 0.05) // 3.158793940887
 */
export function criticalDeviate(count: number, step: number, significance: number): number {
  const left = count - step + 1;
  const quantile = studentTQuantile(1 - significance / (2 * left), left - 2);
  return ((left - 1) * quantile) / Math.sqrt((left - 2 + quantile ** 2) * left);
}

function farthestOf(left: readonly { value: number; index: number }[]): Omit<ExtremeDeviate, "critical"> | undefined {
  const values = left.map(({ value }) => value);
  const middle = mean(values);
  const deviation = sampleStandardDeviation(values);
  // What is left when all values are equal has no farthest one.
  if (!(deviation > 0)) return undefined;
  const [first, ...others] = left.map(({ value, index }) => ({
    index,
    statistic: Math.abs(value - middle) / deviation,
  }));
  return others.reduce((most, one) => (one.statistic > most.statistic ? one : most), first!);
}
