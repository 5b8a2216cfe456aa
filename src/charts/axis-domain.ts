import { greatestOf, leastOf } from "../numeric/least-and-greatest.ts";

/**
 * The stretch of an axis that shows all of some values, with room at both ends so that no mark is cut.
 * Never shorter than `shortest`, so that the rounding of a computer is not blown up into a curve.
 */
export function axisDomain(
  values: readonly number[],
  room: { below: number; above: number },
  shortest = 0,
): readonly [number, number] {
  if (values.length === 0 || !values.every(Number.isFinite)) {
    throw new RangeError(`axisDomain: requires finite values, got ${values.length === 0 ? "none" : values.join(", ")}`);
  }
  const middle = (leastOf(values) + greatestOf(values)) / 2;
  const length = Math.max(greatestOf(values) - leastOf(values), shortest);
  if (length === 0) throw new RangeError(`axisDomain: requires two different values, got ${middle}`);
  return [middle - (0.5 + room.below) * length, middle + (0.5 + room.above) * length];
}
