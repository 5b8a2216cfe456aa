import { groupedBy } from "../../model/grouped-by.ts";

/**
 * How many pairs there are among so many things.
 *
 * @param count of things
 * @returns count · (count − 1)/2
 * Source: NIST/SEMATECH e-Handbook 1.3.6.6.18, the binomial coefficient.
 * @example pairsAmong(4) // 6
 */
export function pairsAmong(count: number): number {
  return (count * (count - 1)) / 2;
}

/**
 * How many pairs of values are equal: counted, not compared, for a thousand values have half a million pairs.
 *
 * @param values of any kind that is the same or not
 * @returns count of pairs
 * Source: own choice.
 * @example equalPairs([7, 7, 7, 8]) // 3
 */
export function equalPairs(values: readonly (string | number | undefined)[]): number {
  let pairs = 0;
  for (const { length } of groupedBy(values, (value) => value).values()) pairs += pairsAmong(length);
  return pairs;
}
