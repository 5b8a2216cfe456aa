import type { RawRow, RawRows } from "./raw-table.ts";

/** The same rows with other cells, each changed anew when it is asked for. */
export function changedRows(
  rows: RawRows,
  change: (cells: readonly string[], index: number) => readonly string[],
): RawRows {
  const changed = ({ line, cells }: RawRow, index: number): RawRow => ({ line, cells: change(cells, index) });
  return {
    length: rows.length,
    at(index) {
      const row = rows.at(index);
      return row && changed(row, index);
    },
    *[Symbol.iterator]() {
      let index = 0;
      for (const row of rows) {
        yield changed(row, index);
        index += 1;
      }
    },
  };
}
