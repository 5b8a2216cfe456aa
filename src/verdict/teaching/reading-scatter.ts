import { groupedBy } from "../../model/grouped-by.ts";
import { chiSquaredQuantile } from "../../numeric/chi-squared-quantile.ts";
import { mean } from "../../numeric/mean.ts";
import { pooledStandardDeviation } from "../../numeric/pooled-standard-deviation.ts";
import { sampleStandardDeviation } from "../../numeric/sample-standard-deviation.ts";
import type { ReadingError } from "./judged-errors.ts";

/** Standard deviation of a reading over the tolerance, 1 for the whole of it, and how well it is known. */
export type Scatter = { part: number; degreesOfFreedom: number };

/** Chance that the scatter is in truth less than its lower bound. */
const boundChance = 0.05;
const fewestGaps = 3;

/**
 * How far readings of one part of the loop repeat, over the tolerance.
 *
 * Pooled over the repeats of each point and direction; with one cycle from how unevenly rising and falling readings lie
 * apart, which a hysteresis that is the same everywhere does not widen.
 *
 * @param readings errors with their tolerances
 * @returns standard deviation over the tolerance; undefined where nothing tells it
 * Source: GUM (JCGM 100:2008) 4.2.4; a difference of two readings scatters √2 times as much as one.
 * @example readingScatter([1, 3].map((indicated) => ({ point: 0, direction: "rising", reference: 0, indicated, tolerance:
 *   { low: -2, high: 2 } }))) // { part: 0.7071, degreesOfFreedom: 1 }
 */
export function readingScatter(readings: readonly ReadingError[]): Scatter | undefined {
  const groups = [...groupedBy(readings, ({ point, direction }) => `${point} ${direction}`).values()].map((group) =>
    group.map(partOf),
  );
  const repeated = groups.filter(({ length }) => length > 1);
  if (repeated.length > 0) {
    const { standardDeviation, degreesOfFreedom } = pooledStandardDeviation(repeated);
    return { part: standardDeviation, degreesOfFreedom };
  }
  const gaps = [...groupedBy(readings, ({ point }) => point).values()].flatMap(gapOf);
  if (gaps.length < fewestGaps) return undefined;
  return { part: sampleStandardDeviation(gaps) / Math.SQRT2, degreesOfFreedom: gaps.length - 1 };
}

/**
 * The least that the scatter may be for the readings that there are.
 *
 * @param scatter of `readingScatter`
 * @returns lower bound of the standard deviation over the tolerance, 95 % one-sided
 * Source: chi-squared distribution of a sample variance, NIST/SEMATECH e-Handbook 7.2.3.1.
 * @example leastScatter({ part: 1, degreesOfFreedom: 4 }) // 0.6493
 */
export function leastScatter({ part, degreesOfFreedom }: Scatter): number {
  return part * Math.sqrt(degreesOfFreedom / chiSquaredQuantile(1 - boundChance, degreesOfFreedom));
}

function partOf({ reference, indicated, tolerance: { low, high } }: ReadingError): number {
  const room = (high - low) / 2;
  return room > 0 ? (indicated - reference) / room : 0;
}

function gapOf(group: readonly ReadingError[]): readonly number[] {
  const of = (wanted: string) => group.filter(({ direction }) => direction === wanted).map(partOf);
  const [rising, falling] = [of("rising"), of("falling")];
  return rising.length === 0 || falling.length === 0 ? [] : [mean(rising) - mean(falling)];
}
