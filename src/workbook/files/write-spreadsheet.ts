/** A cell of a table that is written: a number stays one. */
export type WrittenCell = string | number;

/** One fixed moment, so that the same tables are the same bytes. */
const moment = new Date(Date.UTC(2026, 0, 1));

/** Tables as the sheets of an .xlsx file. The library that writes them is loaded here. */
export async function writeSpreadsheet(
  sheets: Readonly<Record<string, readonly (readonly WrittenCell[])[]>>,
): Promise<Uint8Array> {
  const { writeXlsx } = await import("hucre/xlsx");
  return writeXlsx({
    sheets: Object.entries(sheets).map(([name, rows]) => ({ name, rows: rows.map((row) => [...row]) })),
    properties: { creator: "spanwright", created: moment, modified: moment },
  });
}
