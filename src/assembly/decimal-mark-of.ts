import type { CalibrationRows } from "../model/calibration-case.ts";
import type { TableName } from "../model/table-names.ts";
import type { DecimalMark } from "../units/read-number.ts";

/**
 * The decimal mark that the numbers of a table were typed with.
 *
 * @param rows of a calibration, with the files that they came from
 * @param table whose rows are asked about; two sheets of one spreadsheet may differ
 * @returns the mark by the name of a file; a point where the file was not described
 * Source: own choice.
 * @example decimalMarkOf({ files: [{ name: "a.csv", encoding: "utf-8", delimiter: ";", decimalMark: "comma",
 *   tables: ["readings"] }] }, "readings")("a.csv") // "comma"
 */
export function decimalMarkOf(
  { files }: Pick<CalibrationRows, "files">,
  table: TableName,
): (file: string) => DecimalMark {
  return (file) => files.find(({ name, tables }) => name === file && tables.includes(table))?.decimalMark ?? "point";
}
