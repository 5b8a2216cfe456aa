import { fQuantile } from "../../numeric/f-quantile.ts";

/** Whether one mean square is greater than another by more than chance makes it. */
export type VarianceRatio = {
  ratio: number;
  /** 95 % limit of the ratio, where both are of the same scatter. */
  ratioLimit: number;
  isShown: boolean;
};

const significance = 0.95;
/** Scatter below this, percent of span, is how a number is stored: own choice. */
export const leastScatter = 1e-10;

/**
 * F test of what groups of readings differ by against the scatter within them: F = MS(between)/MS(within).
 *
 * @param between mean square of the groups, with its degrees of freedom and the readings that each mean rests on; where
 *   the effect of one is below what storing a number makes, the ratio is 0
 * @param within mean square of the scatter, with its degrees of freedom, in the same unit squared (percent of span)
 * Source: analysis of variance, NIST/SEMATECH e-Handbook, 7.4.3.4; JCGM 100:2008, H.5.2.2.
 * @example varianceRatio({ square: 12, freedom: 2, readings: 3 }, { square: 1, freedom: 2 }).ratio // 12
 */
export function varianceRatio(
  between: { square: number; freedom: number; readings: number },
  within: { square: number; freedom: number },
): VarianceRatio {
  const isMeasurable = Math.sqrt(between.square / between.readings) > leastScatter;
  const ratio = isMeasurable ? between.square / Math.max(within.square, leastScatter ** 2) : 0;
  const ratioLimit = fQuantile(significance, between.freedom, within.freedom);
  return { ratio, ratioLimit, isShown: ratio > ratioLimit };
}
