import { greatestOf } from "../numeric/least-and-greatest.ts";

/** A wider cell would push the others out of sight. */
const widestColumn = 100;

/** Rows as aligned columns with a line under the first; the last column is not padded. */
export function alignedTable(table: readonly (readonly (string | number)[])[]): string {
  const texts = table.map((row) => row.map((cell) => inOneLine(String(cell))));
  const rows = texts.map((row) => row.map((cell, column) => (column === row.length - 1 ? cell : shortened(cell))));
  const widths = (rows[0] ?? []).map((_, column) => greatestOf(rows.map((row) => [...(row[column] ?? "")].length)));
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => (column === row.length - 1 ? cell : cell.padEnd(widths[column] ?? 0)))
      .join("  ")
      .trimEnd();
  const [head, ...body] = rows.map(line);
  const rule = widths.map((width) => "─".repeat(width)).join("  ");
  return [head, rule, ...body].join("\n");
}

/** A cell with a line break in it cannot pretend to be a row of its own. */
function inOneLine(text: string): string {
  return text.replace(/[\r\n\u0085\u2028\u2029]+/gu, " ");
}

function shortened(text: string): string {
  const characters = [...text];
  return characters.length > widestColumn ? `${characters.slice(0, widestColumn - 1).join("")}…` : text;
}
