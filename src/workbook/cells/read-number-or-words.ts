import { convert } from "../../units/convert.ts";
import { type DecimalMark, readNumber } from "../../units/read-number.ts";
import { unitOf, unitTable } from "../../units/unit-table.ts";
import type { CellResult } from "./cell-result.ts";
import { withinBounds } from "./read-quantity.ts";

/** Whether a text is a number alone or with a unit that the unit table knows; "2 of 3 cores" is words. */
export function isQuantity(text: string, mark: DecimalMark): boolean {
  const written = readNumber(text, mark);
  return written !== undefined && (written.unit === null || unitOf(written.unit) !== undefined);
}

/**
 * A cell that may hold a number or words. A number is kept in the unit that the row's column unit names, so that it can
 * be compared; a unit behind it is converted, and refused where the row names none or one of another kind.
 */
export function readNumberOrWords(
  text: string,
  mark: DecimalMark,
  rowUnit: string | undefined,
): CellResult<number | string> {
  const written = readNumber(text, mark);
  if (written === undefined) return { value: text };
  if (written.unit === null || written.unit === rowUnit) return withinBounds(written.value, {});
  const from = unitOf(written.unit);
  if (from === undefined) return { value: text };
  if (rowUnit === undefined) {
    return { code: "tables/cell-unit-unknown", values: { unit: from, expected: "its unit in the column unit" } };
  }
  const to = unitOf(rowUnit);
  if (to === undefined || unitTable[to].kind !== unitTable[from].kind) {
    return { code: "tables/cell-unit-kind", values: { unit: from, expected: rowUnit } };
  }
  return withinBounds(convert(written.value, from, to), {});
}
