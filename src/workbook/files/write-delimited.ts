import Papa from "papaparse";
import type { DecimalMark } from "../../units/read-number.ts";
import { markedText } from "./marked-text.ts";

/**
 * Rows as the text of a .csv file that a spreadsheet opens: numbers stay numbers, and a text that a spreadsheet would
 * take for a formula is marked as text.
 */
export function writeDelimited(
  rows: readonly (readonly (string | number)[])[],
  { newline = "\r\n", mark = "point" }: { newline?: string; mark?: DecimalMark | undefined } = {},
): string {
  const safe = rows.map((row) => row.map((cell) => (typeof cell === "string" ? markedText(cell) : told(cell, mark))));
  return `${Papa.unparse(safe, { newline, delimiter: mark === "comma" ? ";" : "," })}${newline}`;
}

function told(number: number, mark: DecimalMark): string {
  return mark === "comma" ? String(number).replace(".", ",") : String(number);
}
