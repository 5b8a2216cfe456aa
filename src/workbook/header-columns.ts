import type { Column } from "../model/column.ts";
import { tableColumns } from "../model/table-columns.ts";
import type { AnyTableName } from "../model/table-names.ts";
import { unitOf } from "../units/unit-table.ts";

const columnsByName = new Map<AnyTableName, ReadonlyMap<string, Column>>();

/** "Reference (mm)" is the column reference; what stands in the brackets is the unit of its numbers. */
const inBrackets = /\s*[([]\s*([^)\]]*?)\s*[)\]]\s*$/u;

/** "Range lower" and "range-lower" are range_lower. */
export function foldedColumnName(header: string): string {
  return header
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/gu, "_");
}

/** A header without what stands in brackets behind it. */
export function withoutBrackets(header: string): string {
  return header.replace(inBrackets, "");
}

/** The column that a header names, with or without a unit in brackets, if the table has one of that name. */
export function columnNamed(table: AnyTableName, header: string): Column | undefined {
  let known = columnsByName.get(table);
  if (known === undefined) {
    known = new Map(tableColumns(table).map((column) => [column.name, column]));
    columnsByName.set(table, known);
  }
  return known.get(foldedColumnName(header)) ?? known.get(foldedColumnName(withoutBrackets(header)));
}

/** The unit that a header gives to the numbers under it; what stands behind the name of a column of words is a remark. */
export function unitInHeader(header: string, column: Column): string | undefined {
  const unit = inBrackets.exec(header)?.[1] ?? "";
  if (column.reads !== "number" || unit === "" || foldedColumnName(header) === column.name) return undefined;
  return column.unit === "none" && unitOf(unit) === undefined ? undefined : unit;
}

/** The column of each place in the header; nothing where it names none, or one that stands further left already. */
export function headerColumns(table: AnyTableName, header: readonly string[]): readonly (Column | undefined)[] {
  const seen = new Set<Column>();
  return header.map((text) => {
    const column = columnNamed(table, text);
    if (column === undefined || seen.has(column)) return undefined;
    seen.add(column);
    return column;
  });
}
