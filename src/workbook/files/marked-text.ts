/** What begins a formula in spreadsheets, also behind signs that they pass over; an apostrophe before it marks a text. */
const formulaStart = /^'*[\s\p{Cc}\p{Cf}]*[=+\-@\t\r]/u;
const markedStart = /^'+[\s\p{Cc}\p{Cf}]*[=+\-@\t\r]/u;

/** The same behind a separator of another country: a spreadsheet set to that one begins a cell there. */
const formulaAfterSeparator = /([;,\t|]["\s\p{Cc}\p{Cf}]*)('*[=+\-@])/gsu;
const markAfterSeparator = /([;,\t|]["\s\p{Cc}\p{Cf}]*)'('*[=+\-@])/gsu;

/**
 * A text as it stands in a cell of a .csv file: what a spreadsheet would take for a formula is marked as text with an
 * apostrophe, also where it would begin behind another country's separator.
 */
export function markedText(text: string): string {
  const inside = text.replace(formulaAfterSeparator, "$1'$2");
  return formulaStart.test(text) ? `'${inside}` : inside;
}

/** The text of a cell that was written so, or that somebody typed with an apostrophe before it for the same reason. */
export function unmarkedText(cell: string): string {
  const text = markedStart.test(cell) ? cell.slice(1) : cell;
  return text.includes("'") ? text.replace(markAfterSeparator, "$1$2") : text;
}
