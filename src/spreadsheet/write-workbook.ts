import type { CellStyle, SheetChart, WriteSheet } from "hucre";
import { type Cell, isFormula } from "./cell.ts";
import type { Grid, RowKind } from "./grid.ts";

/** One sheet to be written: its cells, and its native charts. */
export type WrittenSheet = { grid: Grid; charts?: readonly SheetChart[] };

/** One fixed moment, so that the same record gives the same bytes. */
const moment = new Date(Date.UTC(2026, 0, 1));

/** Numbers that are no formula: typed, or values of the record. */
const valueStyle: CellStyle = { fill: { type: "pattern", pattern: "solid", fgColor: { rgb: "FFF4D6" } } };
const styleOfKind: Readonly<Record<RowKind, CellStyle | undefined>> = {
  title: { font: { bold: true, size: 13 } },
  heading: { font: { bold: true } },
  plain: undefined,
};

/** Sheets as the bytes of an .xlsx file. The library that writes them is loaded here. */
export async function writeWorkbook(sheets: readonly WrittenSheet[]): Promise<Uint8Array> {
  const { writeXlsx } = await import("hucre/xlsx");
  return writeXlsx({
    sheets: sheets.map(writtenSheet),
    properties: { creator: "spanwright", created: moment, modified: moment },
  });
}

function writtenSheet({ grid, charts = [] }: WrittenSheet): WriteSheet {
  const cells: NonNullable<WriteSheet["cells"]> = new Map();
  for (const [row, { kind, cells: some }] of grid.rows.entries()) {
    for (const [column, cell] of some.entries()) {
      if (cell !== null) cells.set(`${row},${column}`, writtenCell(cell, styleOfKind[kind]));
    }
  }
  const width = grid.rows.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  return {
    name: grid.name,
    rows: [],
    cells,
    pageSetup: { orientation: "landscape", fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
    columns: Array.from({ length: width }, () => ({ width: 13 })),
    ...(charts.length > 0 && { charts: [...charts] }),
  };
}

/** Text is written as text whatever it begins with, and what the record says is kept beside a formula. */
function writtenCell(cell: Cell, style: CellStyle | undefined) {
  if (isFormula(cell))
    return { formula: cell.formula, ...(cell.is !== undefined && { formulaResult: cell.is }), ...(style && { style }) };
  if (typeof cell === "number") return { value: cell, type: "number" as const, style: { ...valueStyle, ...style } };
  return { value: cellText(cell), type: "string" as const, ...(style && { style }) };
}

/** Most characters of a cell; what is longer would make other programs offer a repair. */
const longestText = 32_767;

/** As it was typed: what a file of this kind would read as the code of a letter, such as _x0041_, is written so that it is not. */
function cellText(text: string | null): string {
  const plain = (text ?? "").replace(/_(?=x[0-9A-Fa-f]{4}_)/gu, "_x005F_").replace(/[\uFFFE\uFFFF]/gu, "\uFFFD");
  return plain.length <= longestText ? plain : `${plain.slice(0, longestText - 1)}…`;
}
