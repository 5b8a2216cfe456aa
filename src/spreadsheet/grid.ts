import type { Cell } from "./cell.ts";

/** How a row is written: over a part of the sheet, over columns, or like any other. */
export type RowKind = "title" | "heading" | "plain";

/** A sheet that grows by rows; a formula names a cell of it by the number that `add` gave back, from 1 as a spreadsheet counts. */
export class Grid {
  readonly name: string;
  readonly rows: { kind: RowKind; cells: readonly Cell[] }[] = [];

  constructor(name: string) {
    this.name = name;
  }

  /** The number of the row that is added next. */
  get next(): number {
    return this.rows.length + 1;
  }

  add(cells: readonly Cell[], kind: RowKind = "plain"): number {
    this.rows.push({ kind, cells });
    return this.rows.length;
  }

  /** An empty row, then a title. */
  begin(title: string): void {
    if (this.rows.length > 0) this.add([]);
    this.add([title], "title");
  }

  /** A cell of it as a formula of any sheet names it. */
  at(letter: string, row: number): string {
    return `${this.name}!$${letter}$${row}`;
  }

  /** A column of rows, both ends included. */
  range(letter: string, first: number, last: number): string {
    return `${this.name}!$${letter}$${first}:$${letter}$${last}`;
  }
}
