import type { FileDescription } from "../../model/calibration-case.ts";
import type { AnyTableName, TableName } from "../../model/table-names.ts";
import type { DecimalMark } from "../../units/read-number.ts";

/** A file of a workbook by its name in it, such as "readings.csv", with its bytes: nothing of the machine is in a record. */
export type SourceFile = { name: string; bytes: Uint8Array };

export type { FileDescription } from "../../model/calibration-case.ts";

export type Delimiter = NonNullable<FileDescription["delimiter"]>;

/** One row that is not empty; `line` counts from 1, as an editor or a spreadsheet shows it. */
export type RawRow = { line: number; cells: readonly string[] };

/** Rows in their order: an array, or what holds them smaller and makes each anew when it is asked for. */
export type RawRows = Iterable<RawRow> & { readonly length: number; at(index: number): RawRow | undefined };

/** A sheet by its name, with the letters of the column of each place in the header; nothing for one that was added. */
export type RawSheet = { name: string; letters: readonly string[] };

/** A table as text. `file`, and `sheet` in a spreadsheet, say where it stands. */
export type RawTable<Table extends AnyTableName = TableName> = {
  table: Table;
  file: string;
  sheet?: RawSheet;
  header: readonly string[];
  headerLine: number;
  rows: RawRows;
  decimalMark: DecimalMark;
  description: FileDescription;
};
