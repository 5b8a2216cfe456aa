import type { TableName } from "../model/table-names.ts";
import { typedTables } from "../record/typed-entries.ts";
import type { DecimalMark } from "../units/read-number.ts";
import type { TextTable } from "../workbook/text-rows.ts";

/** What an entry sheet says that it is; a later program reads what was typed into an earlier one. */
export const sheetForm = "spanwright-sheet/1";

/** Texts of one row by the names of their columns, as they are typed. */
export type Cells = Readonly<Record<string, string>>;

/** The tables into which a technician types. */
export { typedTables };
export type TypedTableName = (typeof typedTables)[number];

/** Everything else that a record rests on: it comes with the sheet and is not changed in it. */
export const carriedTables = [
  "instruments",
  "outputs",
  "standards",
  "controller_limits",
  "candidates",
] as const satisfies TableName[];
export type CarriedTableName = (typeof carriedTables)[number];

/** A row to be filled in. What stands in the workbook already is given: it is shown, and changed there alone. */
export type PlannedRow = { id: string; table: TypedTableName; cells: Cells; isGiven?: boolean };

/** One calibration as its entry sheet carries it. */
export type SheetData = {
  form: typeof sheetForm;
  /** Number of the sheet: the same for the same calibration of the same workbook, whatever program made it. */
  sheet: string;
  program: string;
  madeOn: string;
  calibration: string;
  tag: string;
  /** The decimal mark of what is handed back; both are understood when typed. */
  mark: DecimalMark;
  carried: readonly TextTable<CarriedTableName>[];
  planned: readonly PlannedRow[];
  /** Names that the workbook knows, offered where one is asked for. */
  people: readonly string[];
};
