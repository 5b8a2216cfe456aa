import type { Column, NumberBounds } from "../../model/column.ts";
import { convert, convertDifference } from "../../units/convert.ts";
import { type DecimalMark, readNumber } from "../../units/read-number.ts";
import { unitOf } from "../../units/unit-table.ts";
import type { CellResult } from "./cell-result.ts";
import { expectedUnit, type UnitRow } from "./expected-unit.ts";

type NumberColumn = Extract<Column, { reads: "number" }>;

/** No distance, signal or count of this trade is beyond it, and squares of such numbers still can be summed. */
const greatest = 1e12;
const least = 1e-12;

/** A number cell in the unit of its column; a unit behind the number is converted where it is of the same kind. */
export function readQuantity(
  text: string,
  column: NumberColumn,
  mark: DecimalMark,
  unitRow: UnitRow | undefined,
): CellResult<number> {
  const written = readNumber(text, mark);
  if (written === undefined) {
    return { code: "tables/cell-not-number", values: { example: mark === "comma" ? "12,02" : "12.02" } };
  }
  if (written.unit === null) return withinBounds(written.value, column);
  const converted = inColumnUnit(written.value, written.unit, column, unitRow);
  return "value" in converted ? withinBounds(converted.value, column) : converted;
}

function inColumnUnit(
  value: number,
  unit: string,
  column: NumberColumn,
  unitRow: UnitRow | undefined,
): CellResult<number> {
  const expected = expectedUnit(column.unit, unitRow);
  if (unit === expected) return { value };
  const from = unitOf(unit);
  const named = { unit, expected: expected ?? (column.unit === "none" ? "nothing behind it" : "the unit of the row") };
  if (from === undefined) return { code: "tables/cell-unit-unknown", values: named };
  if (expected === undefined) return unitNotNamed(value, unit, column);
  const to = expected === null ? undefined : unitOf(expected);
  if (to === undefined) return { code: "tables/cell-unit-kind", values: named };
  try {
    return { value: column.unit === "stated by row" ? convertDifference(value, from, to) : convert(value, from, to) };
  } catch {
    return { code: "tables/cell-unit-kind", values: named };
  }
}

/** The row that should name the unit has a problem of its own; only a controller value may go without a unit. */
function unitNotNamed(value: number, unit: string, column: NumberColumn): CellResult<number> {
  if (column.unit !== "controller value") return { value };
  return { code: "tables/cell-unit-unknown", values: { unit, expected: "the value_unit of the table instruments" } };
}

/** The number, where it has a size that this trade knows and lies inside the bounds of its column. */
export function withinBounds(value: number, { above, atLeast, atMost, isWhole }: NumberBounds): CellResult<number> {
  const size = Math.abs(value);
  if (size > greatest || (size < least && size > 0)) {
    return { code: "tables/cell-out-of-bounds", values: { bounds: "0, or a size from 1e-12 to 1e12" } };
  }
  if (isWhole && !Number.isInteger(value)) return { code: "tables/cell-not-whole", values: {} };
  const isInside =
    (above === undefined || value > above) &&
    (atLeast === undefined || value >= atLeast) &&
    (atMost === undefined || value <= atMost);
  return isInside
    ? { value }
    : { code: "tables/cell-out-of-bounds", values: { bounds: inWords(above, atLeast, atMost) } };
}

function inWords(above?: number, atLeast?: number, atMost?: number): string {
  const lower = above !== undefined ? [`above ${above}`] : atLeast !== undefined ? [`${atLeast} or more`] : [];
  return [...lower, ...(atMost !== undefined ? [`at most ${atMost}`] : [])].join(", ");
}
