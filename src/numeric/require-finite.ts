/**
 * Refuses a list that holds anything but finite numbers, so that no figure is ever made from a missing reading.
 *
 * @param name what the list is called in the fault, plural ("abscissas")
 * @param values array of n numbers, any unit
 * Faults: `RangeError` naming the list and the position (counted from 1) of the first value that is NaN or infinite.
 * Source: own choice; a NaN would otherwise pass silently through every sum.
 * @example requireFinite("ordinates", [1, Number.NaN]) // RangeError: ordinates: value 2 is not a finite number
 */
export function requireFinite(name: string, values: readonly number[] | Float64Array): void {
  const position = values.findIndex((value) => !Number.isFinite(value));
  if (position >= 0) throw new RangeError(`${name}: value ${position + 1} is not a finite number`);
}

/**
 * Refuses pairs of lists that do not belong together, or too few of them, or values that are not finite.
 *
 * @param abscissas array of n numbers
 * @param ordinates array of n numbers
 * @param least fewest points that the caller can use
 * Faults: `RangeError` when the lengths differ, when n < least, or when a value is NaN or infinite.
 * Source: own choice.
 * @example requirePoints([1, 2], [1], 2) // RangeError: 2 abscissas but 1 ordinates
 */
export function requirePoints(abscissas: readonly number[], ordinates: readonly number[], least: number): void {
  if (abscissas.length !== ordinates.length)
    throw new RangeError(`${abscissas.length} abscissas but ${ordinates.length} ordinates`);
  if (abscissas.length < least) throw new RangeError(`${abscissas.length} points, at least ${least} are needed`);
  requireFinite("abscissas", abscissas);
  requireFinite("ordinates", ordinates);
}
