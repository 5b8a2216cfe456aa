import type { Cell, CellValue, Sheet } from "hucre/xlsx";
import type { RawRow } from "./raw-table.ts";
import type { DoubtfulCell, SheetText } from "./sheet-text.ts";
import { dateText, isScaledFormat, numberText } from "./spreadsheet-text.ts";

/** The sheets of an .xlsx file. The library that reads them is loaded here. Throws what it throws of a broken file. */
export async function xlsxSheets(bytes: Uint8Array): Promise<readonly SheetText[]> {
  const { sheets, dateSystem } = await (await import("hucre/xlsx")).readXlsx(bytes, { readStyles: true });
  return sheets.map((sheet) => sheetText(sheet, dateSystem === "1904" ? 1904 : 1900));
}

function sheetText(sheet: Sheet, firstYear: 1900 | 1904): SheetText {
  const doubtful: DoubtfulCell[] = [];
  const rows = sheet.rows.flatMap((values, row): RawRow[] => {
    if (values.every((value) => value === null) && !hasFormulaIn(sheet, row)) return [];
    const line = row + 1;
    const cells = values.map((value, index) => {
      const cell = sheet.cells?.get(`${row},${index}`);
      const doubt = doubtOf(value, cell);
      if (doubt !== undefined) doubtful.push({ line, index, ...doubt });
      return cellText(value, cell, firstYear);
    });
    return cells.some((cell) => cell.trim() !== "") ? [{ line, cells }] : [];
  });
  const hiddenRows = [...(sheet.rowDefs ?? [])].filter(([, { hidden }]) => hidden === true);
  const hiddenColumns = [...(sheet.columns ?? []).entries()].filter(([, { hidden }]) => hidden === true);
  return {
    name: sheet.name,
    isHidden: sheet.hidden === true || sheet.veryHidden === true,
    rows,
    hiddenLines: new Set(hiddenRows.map(([row]) => row + 1)),
    hiddenColumns: new Set(hiddenColumns.map(([index]) => index)),
    merged: (sheet.merges ?? []).map(({ startRow, startCol, endRow, endCol }) => ({
      first: { line: startRow + 1, index: startCol },
      last: { line: endRow + 1, index: endCol },
    })),
    doubtful,
  };
}

function hasFormulaIn(sheet: Sheet, row: number): boolean {
  return (sheet.rows[row] ?? []).some((_, index) => sheet.cells?.get(`${row},${index}`)?.formula !== undefined);
}

type Doubt = { why: "uncalculated"; formula: string } | { why: "shown otherwise"; shown: string; holds: string };

function doubtOf(value: CellValue, cell: Cell | undefined): Doubt | undefined {
  if (cell === undefined) return undefined;
  if (cell.formula !== undefined && value === null) return { why: "uncalculated", formula: cell.formula };
  if (typeof value !== "number" || !isScaledFormat(cell.style?.numFmt ?? "")) return undefined;
  return { why: "shown otherwise", shown: "in thousands or millions", holds: numberText(value) };
}

function cellText(value: CellValue, cell: Cell | undefined, firstYear: 1900 | 1904): string {
  if (value === null) return "";
  if (typeof value === "number") return numberText(value, cell?.style?.numFmt);
  return value instanceof Date ? dateText(value, firstYear) : String(value);
}
