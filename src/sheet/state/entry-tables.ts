import { groupedBy } from "../../model/grouped-by.ts";
import { tableColumns } from "../../model/table-columns.ts";
import type { DecimalMark } from "../../units/read-number.ts";
import type { RawTable } from "../../workbook/files/raw-table.ts";
import { writeTyped } from "../../workbook/files/write-typed.ts";
import { remarkedTable, type TextTable } from "../../workbook/text-rows.ts";
import { type PlannedRow, type SheetData, type TypedTableName, typedTables } from "../sheet-data.ts";
import { type Change, type Entries, textAt } from "./entries.ts";

/** Where and when a cell was typed; the record keeps it with the row. */
export type TypedWhere = { typedIn: string };

/** What makes a row of a table one that was filled in. */
const measuredColumns: Readonly<Record<TypedTableName, readonly string[]>> = Object.freeze({
  calibrations: ["calibration"],
  readings: ["signal", "signal_at_card", "counts", "value"],
  trips: ["reference"],
  loop_checks: ["result", "measured", "remark"],
});

/**
 * Whether something was filled into a row.
 *
 * @param entries of the sheet
 * @param row planned or added
 * @returns true where it belongs into its table
 * Source: own choice.
 */
export function isFilled(entries: Entries, row: PlannedRow): boolean {
  return measuredColumns[row.table].some((column) => textAt(entries, row, column).trim() !== "");
}

/** Every row of a table of the sheet, planned and added. */
export function rowsOf(data: SheetData, entries: Entries, table: TypedTableName): readonly PlannedRow[] {
  const planned = data.planned.filter((row) => row.table === table);
  return [...planned, ...entries.added.filter((row) => row.table === table)];
}

/**
 * The tables of a sheet as they are checked and handed back: what was typed, and what came with it.
 *
 * @param data of the sheet
 * @param entries what was typed
 * @param where number of the sheet on this device
 * @returns a table a name, numbers with the decimal mark of the sheet; empty ones are left out but for the readings
 * Source: own choice.
 */
export function entryTables(data: SheetData, entries: Entries, where: TypedWhere): readonly TextTable[] {
  const typed = typedTables.map((table) => typedTable(data, entries, table, where));
  const carried = data.carried.map((table) => remarkedTable(table, data.mark));
  return [...carried, ...typed].filter(({ table, rows }) => rows.length > 0 || table === "readings");
}

/** The same as raw tables, as the reader of files would give them. */
export function rawTables(tables: readonly TextTable[], mark: DecimalMark): readonly RawTable[] {
  return tables.map(({ table, columns, rows }) => ({
    table,
    file: `${table}.csv`,
    header: columns,
    headerLine: 1,
    rows: rows.map((cells, place) => ({ line: place + 2, cells })),
    decimalMark: mark,
    description: { name: `${table}.csv`, encoding: "utf-8", delimiter: delimiterOf(mark), decimalMark: mark },
  }));
}

/** The same as the text of a .csv file. */
export function csvText({ table, columns, rows }: TextTable, mark: DecimalMark): string {
  const known = new Map(tableColumns(table).map((column) => [column.name, column]));
  const typed = columns.map((name) => ({ name, reads: known.get(name)?.reads ?? ("text" as const) }));
  return writeTyped({ columns: typed, rows, delimiter: delimiterOf(mark) });
}

/** The rows of a typed table that go into it, in its order; the line of each is its place, from 2. */
export function filledRows(data: SheetData, entries: Entries, table: TypedTableName): readonly PlannedRow[] {
  return rowsOf(data, entries, table).filter((row) => isFilled(entries, row));
}

function delimiterOf(mark: DecimalMark): ";" | "," {
  return mark === "comma" ? ";" : ",";
}

function typedTable(
  data: SheetData,
  entries: Entries,
  table: TypedTableName,
  { typedIn }: TypedWhere,
): TextTable<TypedTableName> {
  const changes = groupedBy(entries.log, ({ row }) => row);
  const rows = filledRows(data, entries, table).map((row) => ({
    ...row.cells,
    ...entries.cells[row.id],
    ...whatWasSaid(row, entries),
    ...whenTyped(changes.get(row.id) ?? [], typedIn),
  }));
  const known = tableColumns(table);
  const used = known.filter(({ name, required }) => required || rows.some((cells) => (cells[name] ?? "") !== ""));
  const columns = used.map(({ name }) => name);
  const texts = rows.map((cells: Readonly<Record<string, string>>) =>
    columns.map((name) => (cells[name] ?? "").trim()),
  );
  return remarkedTable({ table, columns, rows: texts }, data.mark);
}

/** A reading is taken at its point unless another reference was typed; a day that nobody typed is that of the first entry. */
function whatWasSaid(row: PlannedRow, entries: Entries): Record<string, string> {
  const text = (column: string) => textAt(entries, row, column).trim();
  if (row.table === "readings" && text("reference") === "") return { reference: text("point") };
  if (row.table === "calibrations" && text("performed_on") === "") {
    const [first] = entries.log;
    return first === undefined ? {} : { performed_on: first.at.slice(0, 10) };
  }
  return {};
}

function whenTyped(changes: readonly Change[], typedIn: string): Record<string, string> {
  const last = changes.at(-1);
  if (last === undefined) return {};
  const again = changes.filter(({ column, before }) => before.trim() !== "" && column !== "standards");
  return {
    typed_at: last.at,
    typed_in: typedIn,
    ...(again.length > 0 && {
      typed_before: again.map(({ column, before, at }) => `${column} ${before.trim()} until ${at}`).join(" | "),
    }),
  };
}
