/**
 * Gives the least of any number of values; `Math.min(...values)` fails where there are more than fit on the stack.
 *
 * @param values array of n numbers in any order, all in one unit
 * @returns the least, same unit, exact; `Infinity` of none, `NaN` where one is
 * Source: own choice, for any number of values.
 * @example leastOf([3, 1, 2]) // 1
 */
export function leastOf(values: readonly number[] | Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (const value of values) least = Math.min(least, value);
  return least;
}

/**
 * Gives the greatest of any number of values; `Math.max(...values)` fails where there are more than fit on the stack.
 *
 * @param values array of n numbers in any order, all in one unit
 * @returns the greatest, same unit, exact; `-Infinity` of none, `NaN` where one is
 * Source: own choice, for any number of values.
 * @example greatestOf([3, 1, 2]) // 3
 */
export function greatestOf(values: readonly number[] | Float64Array): number {
  let greatest = Number.NEGATIVE_INFINITY;
  for (const value of values) greatest = Math.max(greatest, value);
  return greatest;
}
