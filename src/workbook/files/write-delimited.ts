import Papa from "papaparse";
import type { DecimalMark } from "../../units/read-number.ts";

/**
 * Rows as the text of a .csv file that a spreadsheet opens: numbers stay numbers, and a text that a spreadsheet would
 * take for a formula is marked as text with an apostrophe, also where it would begin behind another country's separator.
 */
export function writeDelimited(
  rows: readonly (readonly (string | number)[])[],
  { newline = "\r\n", mark = "point" }: { newline?: string; mark?: DecimalMark | undefined } = {},
): string {
  const safe = rows.map((row) =>
    row.map((cell) => (typeof cell === "string" ? withoutFormula(cell) : told(cell, mark))),
  );
  return `${Papa.unparse(safe, { newline, delimiter: mark === "comma" ? ";" : "," })}${newline}`;
}

function told(number: number, mark: DecimalMark): string {
  return mark === "comma" ? String(number).replace(".", ",") : String(number);
}

/** What begins a formula in spreadsheets, also behind signs that they pass over. */
const formulaStart = /^[\s\p{Cc}\p{Cf}]*[=+\-@\t\r]/u;

/** The same behind a separator of another country: a spreadsheet set to that one begins a cell there. */
const formulaAfterSeparator = /(?<=\S.*)([;,\t|]["\s\p{Cc}\p{Cf}]*)(?=[=+\-@])/gsu;

function withoutFormula(text: string): string {
  const inside = text.replace(formulaAfterSeparator, "$1'");
  return formulaStart.test(text) ? `'${inside}` : inside;
}
