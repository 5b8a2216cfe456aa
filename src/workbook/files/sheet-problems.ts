import type { TableName } from "../../model/table-names.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { columnLetters } from "../../units/column-letters.ts";
import { headerColumns } from "../header-columns.ts";
import { placeOfCell, placeOfTable } from "./place-of-table.ts";
import type { RawSheet } from "./raw-table.ts";
import type { CellPlace, MergedCells, SheetText } from "./sheet-text.ts";

/** What a cell shows where its formula came to no result. */
const errorWord = /^(?:#(?:N\/A|REF!|VALUE!|DIV\/0!|NAME\?|NUM!|NULL!|SPILL!|CALC!|GETTING_DATA)|Err:\d{3})$/u;

/** Whoever is told of so many merged cells needs no more of them. */
const mostTold = 10_000;

/** As many rows a sentence names before it only counts. */
const mostNamed = 6;

type TableOfSheet = { table: TableName; file: string; sheet: RawSheet };

/** Tells what the texts of a sheet do not say: formulas without result, errors, merged and hidden cells. */
export function tellSheet(text: SheetText, table: TableOfSheet, problems: ProblemList): void {
  const header = text.rows[0]?.cells ?? [];
  const columns = headerColumns(table.table, header);
  const place = ({ line, index }: CellPlace) => placeOfCell(table, line, index, columns[index]?.name);
  for (const cell of text.doubtful) {
    if (cell.why === "uncalculated") {
      problems.add("tables/formula-uncalculated", place(cell), { read: `=${cell.formula}` });
    } else {
      const values = { shown: cell.shown };
      problems.add("tables/cell-shown-otherwise", place(cell), { read: cell.holds, values });
    }
  }
  for (const { line, cells } of text.rows) {
    for (const [index, read] of cells.entries()) {
      // In every other column this is no number, no day or no word of it, and told so.
      const takesText = ["text", "list", "numberOrWords"].includes(columns[index]?.reads ?? "");
      if (takesText && errorWord.test(read)) problems.add("tables/cell-error", place({ line, index }), { read });
    }
  }
  const rowAt = new Map(text.rows.map(({ line, cells }) => [line, cells]));
  const covering = text.merged.slice(0, mostTold).filter((merged) => coversOthers(merged, header));
  for (const merged of covering) {
    const read = rowAt.get(merged.first.line)?.[merged.first.index]?.trim() ?? "";
    if (read === "") continue;
    problems.add("tables/cell-merged", place(merged.first), { read, values: { range: rangeText(merged) } });
  }
  tellHidden(text, table, problems);
}

/** More than one row, or a second column that has a name. */
function coversOthers({ first, last }: MergedCells, header: readonly string[]): boolean {
  if (last.line > first.line) return true;
  return header.slice(first.index + 1, last.index + 1).some((name) => name.trim() !== "");
}

function rangeText({ first, last }: MergedCells): string {
  return `${columnLetters(first.index)}${first.line}:${columnLetters(last.index)}${last.line}`;
}

/** What nobody sees is read like the rest, and told. */
function tellHidden(text: SheetText, table: TableOfSheet, problems: ProblemList): void {
  if (text.isHidden) problems.add("tables/hidden-sheet", placeOfTable(table));
  const [header, ...rows] = text.rows;
  for (const [index, name] of (header?.cells ?? []).entries()) {
    const isFilled = name.trim() !== "" && rows.some(({ cells }) => (cells[index] ?? "").trim() !== "");
    if (!text.hiddenColumns.has(index) || !isFilled) continue;
    problems.add("tables/hidden-column", placeOfCell(table, header?.line ?? 1, index, name.trim()));
  }
  const hidden = rows.map(({ line }) => line).filter((line) => text.hiddenLines.has(line));
  if (hidden.length === 0) return;
  const more = hidden.length > mostNamed ? ` and ${hidden.length - mostNamed} more` : "";
  const values = { rows: `${hidden.slice(0, mostNamed).join(", ")}${more}` };
  problems.add("tables/hidden-row", placeOfTable(table, hidden[0]), { values });
}
