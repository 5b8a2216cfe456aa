import type { Column } from "../model/column.ts";
import { type AnyTableName, tableColumns } from "../model/tables.ts";

const columnsByName = new Map<AnyTableName, ReadonlyMap<string, Column>>();

/** "Range lower" and "range-lower" are range_lower. */
export function foldedColumnName(header: string): string {
  return header
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/gu, "_");
}

/** The column that a header names, if the table has one of that name. */
export function columnNamed(table: AnyTableName, header: string): Column | undefined {
  let known = columnsByName.get(table);
  if (known === undefined) {
    known = new Map(tableColumns(table).map((column) => [column.name, column]));
    columnsByName.set(table, known);
  }
  return known.get(foldedColumnName(header));
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
