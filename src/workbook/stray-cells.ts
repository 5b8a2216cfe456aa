import type { Column } from "../model/column.ts";
import type { AnyTableName } from "../model/table-names.ts";
import { visibleText } from "../problems/visible-text.ts";
import type { RawTable } from "./files/raw-table.ts";
import type { Finding } from "./table-row.ts";

/**
 * What shows that the cells of a row do not stand under their names: a text under no name, more cells than names, or
 * fewer. The rows of a spreadsheet end where their texts end, so that those are never too short.
 */
export function strayCells(
  { header, description: { delimiter } }: RawTable<AnyTableName>,
  columns: readonly (Column | undefined)[],
  texts: readonly string[],
): readonly Finding[] {
  const counts = { cells: texts.length, columns: header.length };
  const named = lengthOf(header);
  const glued = delimiter === "," && texts.length !== header.length ? gluedPair(columns, texts) : undefined;
  const values = { ...counts, glued: glued === undefined ? "" : `; ${glued}` };
  const stray = texts.findIndex((cell, index) => cell.trim() !== "" && (header[index] ?? "") === "");
  if (stray !== -1) {
    const read = visibleText((texts[stray] ?? "").trim());
    if (stray < header.length) return [{ code: "tables/column-unnamed", index: stray, read }];
    return [{ code: "tables/row-long", index: stray, read, values }];
  }
  if (texts.length > header.length && glued !== undefined) return [{ code: "tables/row-long", values }];
  return delimiter !== null && texts.length < named ? [{ code: "tables/row-short", values }] : [];
}

/** Without the empty cells at its end. */
function lengthOf(cells: readonly string[]): number {
  return cells.findLastIndex((cell) => cell.trim() !== "") + 1;
}

const wholePart = /^[+\-\u2212]?\d+$/u;
const fraction = /^\d+$/u;

/**
 * Two neighbours that are a number with a decimal comma when they are glued, of which the first stands in a column of
 * numbers: the last such pair, for behind it stand words or nothing.
 */
function gluedPair(columns: readonly (Column | undefined)[], texts: readonly string[]): string | undefined {
  for (let index = texts.length - 1; index > 0; index -= 1) {
    const [whole, rest] = [texts[index - 1]?.trim() ?? "", texts[index]?.trim() ?? ""];
    if (columns[index - 1]?.reads !== "number" || !wholePart.test(whole) || !fraction.test(rest)) continue;
    return `${whole} and ${rest} glued are ${whole},${rest}, a number with a decimal comma`;
  }
  return undefined;
}
