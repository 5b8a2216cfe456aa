import type { RawRow } from "./raw-table.ts";

/** A cell by its row, from 1, and its column, from 0. */
export type CellPlace = { line: number; index: number };

/** Cells that are one, from the first to the last of them. */
export type MergedCells = { first: CellPlace; last: CellPlace };

/** A cell that does not say what it shows. */
export type DoubtfulCell = CellPlace &
  ({ why: "uncalculated"; formula: string } | { why: "shown otherwise"; shown: string; holds: string });

/** A sheet as text, and what its cells do not say by their text. */
export type SheetText = {
  name: string;
  isHidden: boolean;
  /** Rows in which anything stands. */
  rows: readonly RawRow[];
  hiddenLines: ReadonlySet<number>;
  hiddenColumns: ReadonlySet<number>;
  merged: readonly MergedCells[];
  doubtful: readonly DoubtfulCell[];
};
