import { type UnitSymbol, unitTable } from "./unit-table.ts";

/**
 * A value in another unit of the same kind.
 *
 * @param value in `from`
 * @param from unit that the value is in
 * @param to unit that is asked for
 * @returns the same quantity in `to`; unchanged, to the last bit, where the units are the same
 * @throws RangeError where the units are of different kinds
 * Source: factors of `unit-table.ts`.
 * @example convert(2, "in", "mm") // 50.8
 */
export function convert(value: number, from: UnitSymbol, to: UnitSymbol): number {
  if (from === to) return value;
  const source = unitTable[from];
  const target = unitTable[to];
  if (source.kind !== target.kind) throw new RangeError(`convert: ${from} and ${to} are different kinds of unit`);
  return (value * source.factor + source.offset - target.offset) / target.factor;
}

/**
 * A difference of two values, such as an uncertainty or a drift, in another unit of the same kind.
 *
 * @param difference in `from`
 * @param from unit that the difference is in
 * @param to unit that is asked for
 * @returns the same difference in `to`: the zero points of the scales do not count, so 0.5 K is 0.5 °C
 * @throws RangeError where the units are of different kinds
 * Source: factors of `unit-table.ts`.
 * @example convertDifference(1.8, "°F", "K") // 1
 */
export function convertDifference(difference: number, from: UnitSymbol, to: UnitSymbol): number {
  if (from === to) return difference;
  const source = unitTable[from];
  const target = unitTable[to];
  if (source.kind !== target.kind) {
    throw new RangeError(`convertDifference: ${from} and ${to} are different kinds of unit`);
  }
  return (difference * source.factor) / target.factor;
}
