import type { Calibration, LoopCheck, Reading, Standard, Trip } from "../model/calibration.ts";
import type { InputFile, TableRow } from "../model/calibration-case.ts";
import type { ControllerLimit } from "../model/controller-limit.ts";
import { groupedBy } from "../model/grouped-by.ts";
import type { Candidate, Instrument, Output } from "../model/instrument.ts";
import { tableColumns } from "../model/table-columns.ts";
import { requiredTables, type TableName, tableNames } from "../model/table-names.ts";
import type { RowOf } from "../model/tables.ts";
import { ProblemList } from "../problems/problem-list.ts";
import { visibleText } from "../problems/visible-text.ts";
import type { DecimalMark } from "../units/read-number.ts";
import { nameColumns } from "./belonging.ts";
import { UnitRows } from "./cells/unit-rows.ts";
import { checkHeader } from "./check-header.ts";
import { checkWorkbook } from "./check-workbook.ts";
import { checkContext } from "./checks/check-context.ts";
import { sheetOfTable } from "./files/place-of-table.ts";
import type { RawRow, RawTable } from "./files/raw-table.ts";
import { headerColumns } from "./header-columns.ts";
import { KeptRows } from "./kept-rows.ts";
import { type RowReader, rowReader } from "./read-rows.ts";
import { RowsByOwner } from "./rows-by-owner.ts";
import type { DraftRow, DraftTables } from "./table-row.ts";

/** Every table of a workbook, checked; rows with a problem of severity stop are left out. */
export type Workbook = {
  instruments: KeptRows<Instrument>;
  outputs: KeptRows<Output>;
  standards: KeptRows<Standard>;
  calibrations: KeptRows<Calibration>;
  readings: KeptRows<Reading>;
  trips: KeptRows<Trip>;
  loopChecks: KeptRows<LoopCheck>;
  controllerLimits: KeptRows<ControllerLimit>;
  candidates: KeptRows<Candidate>;
  files: readonly InputFile[];
};

/**
 * `today` is an ISO date; a first look does without what only a whole workbook can hold. A decimal mark asked for stands
 * for what the rows of the instruments say.
 */
export type BuildOptions = { today: string; firstLook?: boolean; decimalMark?: DecimalMark | undefined };

/**
 * Turns raw tables into a checked workbook. What is wrong goes to `problems`, all of it in one run: columns, cells,
 * and what the tables say of each other. No row is held by what comes out: the readings are read one calibration after
 * the other while they are checked, and every row once more when it is asked for.
 */
export function buildWorkbook(
  tables: readonly RawTable[],
  { today, firstLook = false, decimalMark }: BuildOptions,
  problems: ProblemList,
): Workbook {
  reportMissingTables(tables, problems);
  const { sources, drafts, stopped } = readHeld(tables, firstLook);
  const context = checkContext({ tables, drafts, stopped, today, firstLook, problems });
  const readings = sources.get("readings");
  const { ofCells, ofChecks, kept } = checkWorkbook({
    ...{ context, stopped },
    readings: readings && {
      rows: byCalibration(readings.raw),
      read: (place, list) =>
        readings.read(rowAt(readings.raw, place), list) as { draft: DraftRow<"readings">; isStopped: boolean },
    },
  });
  for (const table of tableNames) {
    problems.append(sources.get(table)?.told.all ?? []);
    if (table === "readings") problems.append(ofCells.all);
  }
  problems.append(ofChecks.all);
  const rowsOf = <Table extends TableName>(table: Table) =>
    keptRows<Table>(sources.get(table), table === "readings" ? kept : byOwner(table, drafts, stopped));
  const instruments = rowsOf("instruments");
  return {
    instruments: decimalMark === undefined ? instruments : instruments.with((one) => withMark(one, decimalMark)),
    outputs: rowsOf("outputs"),
    standards: rowsOf("standards"),
    calibrations: rowsOf("calibrations"),
    readings: rowsOf("readings"),
    trips: rowsOf("trips"),
    loopChecks: rowsOf("loop_checks"),
    controllerLimits: rowsOf("controller_limits"),
    candidates: rowsOf("candidates"),
    files: descriptionsOf(tables),
  };
}

function withMark(instrument: TableRow<Instrument>, decimalMark: DecimalMark): TableRow<Instrument> {
  return { ...instrument, row: { ...instrument.row, decimalMark } };
}

/** A table whose rows can be read, with what was told of its header, and of its rows where they are held. */
type Source = { raw: RawTable; read: RowReader<TableName>; told: ProblemList };
type HeldDrafts = Omit<DraftTables, "readings">;

/** Reads the rows of every table but that of the readings, which are many times more. */
function readHeld(tables: readonly RawTable[], firstLook: boolean) {
  const sources = new Map<TableName, Source>();
  const rowsByTable = new Map<TableName, readonly DraftRow[]>();
  const stopped = new Set<DraftRow>();
  const unitRows = new UnitRows();
  for (const table of tableNames) {
    const raw = tables.find((one) => one.table === table);
    if (raw === undefined || raw.header.length === 0) continue;
    const told = new ProblemList();
    checkHeader(raw, firstLook, told);
    const read = rowReader(raw, unitRows.finderFor(table), firstLook);
    sources.set(table, { raw, read, told });
    if (table === "readings") continue;
    const rows = Array.from(raw.rows, (rawRow) => {
      const { draft, isStopped } = read(rawRow, told);
      if (isStopped) stopped.add(draft);
      return draft;
    });
    unitRows.learn(table, rows);
    rowsByTable.set(table, rows);
  }
  const drafts = Object.fromEntries(tableNames.map((table) => [table, rowsByTable.get(table) ?? []]));
  return { sources, drafts: drafts as unknown as HeldDrafts, stopped };
}

/** The readings by the calibration that they name, of which no other cell is read. */
function byCalibration({ table, header, rows }: RawTable): RowsByOwner {
  const index = headerColumns(table, header).findIndex((column) => column?.name === "calibration");
  const found = new RowsByOwner();
  let place = 0;
  for (const { cells } of rows) {
    const name = visibleText((cells[index] ?? "").trim());
    found.add(name === "" ? undefined : name, place);
    place += 1;
  }
  return found;
}

function byOwner(
  table: Exclude<TableName, "readings">,
  drafts: HeldDrafts,
  stopped: ReadonlySet<DraftRow>,
): RowsByOwner {
  const [owner] = nameColumns[table];
  const found = new RowsByOwner();
  for (const [place, draft] of drafts[table].entries()) {
    if (!stopped.has(draft)) found.add(draft.cells[owner], place);
  }
  return found;
}

function keptRows<Table extends TableName>(source: Source | undefined, rows: RowsByOwner): KeptRows<RowOf<Table>> {
  const unheard = new ProblemList();
  return new KeptRows(rows, (place) => {
    if (source === undefined) throw new TypeError(`keptRows: a row ${place} of a table that is not there`);
    return source.read(rowAt(source.raw, place), unheard).draft as TableRow<RowOf<Table>>;
  });
}

function rowAt({ table, rows }: RawTable, place: number): RawRow {
  const row = rows.at(place);
  if (row === undefined) throw new TypeError(`rowAt: ${table} has no row ${place}`);
  return row;
}

/** A spreadsheet that could not be opened may hold any of the tables. */
function reportMissingTables(tables: readonly RawTable[], problems: ProblemList): void {
  if (problems.all.some(({ code }) => code.startsWith("tables/spreadsheet"))) return;
  for (const table of requiredTables) {
    if (tables.some((raw) => raw.table === table)) continue;
    const required = tableColumns(table).filter((column) => column.required);
    const columns = required.map(({ name }) => name).join(", ");
    problems.add("tables/missing", { file: `${table}.csv` }, { values: { table, columns } });
  }
}

/** Sheets of one file that were read alike are described once. */
function descriptionsOf(tables: readonly RawTable[]): readonly InputFile[] {
  const alike = groupedBy(tables, ({ description }) => JSON.stringify(description));
  return [...alike.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const sheets = group.flatMap((raw) => {
      const sheet = sheetOfTable(raw);
      return sheet === undefined ? [] : [{ table: raw.table, ...sheet }];
    });
    const tables = group.map(({ table }) => table);
    return [{ ...first.description, tables, ...(sheets.length > 0 && { sheets }) }];
  });
}
