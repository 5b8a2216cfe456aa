/** Rows as aligned columns with a line under the first; the last column is not padded. */
export function alignedTable(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => [...(row[column] ?? "")].length)));
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => (column === row.length - 1 ? cell : cell.padEnd(widths[column] ?? 0)))
      .join("  ")
      .trimEnd();
  const [head, ...body] = rows.map(line);
  const rule = widths.map((width) => "─".repeat(width)).join("  ");
  return [head, rule, ...body].join("\n");
}
