import type { Calibration, LoopCheck, Reading, Standard, Trip } from "../model/calibration.ts";
import type { InputFile, TableRow } from "../model/calibration-case.ts";
import type { ControllerLimit } from "../model/controller-limit.ts";
import { groupedBy } from "../model/grouped-by.ts";
import type { Candidate, Instrument, Output } from "../model/instrument.ts";
import { tableColumns } from "../model/table-columns.ts";
import { requiredTables, type TableName, tableNames } from "../model/table-names.ts";
import type { RowOf } from "../model/tables.ts";
import type { ProblemList } from "../problems/problem-list.ts";
import type { DecimalMark } from "../units/read-number.ts";
import { UnitRows } from "./cells/unit-rows.ts";
import { checkHeader } from "./check-header.ts";
import { checkContext } from "./checks/check-context.ts";
import { everyCheck } from "./checks/every-check.ts";
import { sheetOfTable } from "./files/place-of-table.ts";
import type { RawTable } from "./files/raw-table.ts";
import { type ReadRows, readRows } from "./read-rows.ts";
import type { DraftRow, DraftTables } from "./table-row.ts";

export type { TableRow } from "../model/calibration-case.ts";

/** Every table of a workbook, checked; rows with a problem of severity stop are left out. */
export type Workbook = {
  instruments: readonly TableRow<Instrument>[];
  outputs: readonly TableRow<Output>[];
  standards: readonly TableRow<Standard>[];
  calibrations: readonly TableRow<Calibration>[];
  readings: readonly TableRow<Reading>[];
  trips: readonly TableRow<Trip>[];
  loopChecks: readonly TableRow<LoopCheck>[];
  controllerLimits: readonly TableRow<ControllerLimit>[];
  candidates: readonly TableRow<Candidate>[];
  files: readonly InputFile[];
};

/**
 * `today` is an ISO date; a first look does without what only a whole workbook can hold. A decimal mark asked for stands
 * for what the rows of the instruments say.
 */
export type BuildOptions = { today: string; firstLook?: boolean; decimalMark?: DecimalMark | undefined };

/**
 * Turns raw tables into a checked workbook. What is wrong goes to `problems`, all of it in one run: columns, cells,
 * and what the tables say of each other.
 */
export function buildWorkbook(
  tables: readonly RawTable[],
  { today, firstLook = false, decimalMark }: BuildOptions,
  problems: ProblemList,
): Workbook {
  reportMissingTables(tables, problems);
  const { drafts, stopped } = readAll(tables, firstLook, problems);
  const context = checkContext({ tables, drafts, stopped, today, firstLook, problems });
  for (const check of everyCheck) check(context);
  const kept = <Table extends TableName>(table: Table) =>
    drafts[table].filter((draft) => !stopped.has(draft)) as TableRow<RowOf<Table>>[];
  return {
    instruments: kept("instruments").map((one) => withMark(one, decimalMark)),
    outputs: kept("outputs"),
    standards: kept("standards"),
    calibrations: kept("calibrations"),
    readings: kept("readings"),
    trips: kept("trips"),
    loopChecks: kept("loop_checks"),
    controllerLimits: kept("controller_limits"),
    candidates: kept("candidates"),
    files: descriptionsOf(tables),
  };
}

function withMark(instrument: TableRow<Instrument>, decimalMark: DecimalMark | undefined): TableRow<Instrument> {
  return decimalMark === undefined ? instrument : { ...instrument, row: { ...instrument.row, decimalMark } };
}

function readAll(tables: readonly RawTable[], firstLook: boolean, problems: ProblemList) {
  const rowsByTable = new Map<TableName, ReadRows<TableName>["rows"]>();
  const stopped = new Set<DraftRow>();
  const unitRows = new UnitRows();
  for (const table of tableNames) {
    const raw = tables.find((one) => one.table === table);
    if (raw === undefined || raw.header.length === 0) continue;
    checkHeader(raw, firstLook, problems);
    const read = readRows(raw, unitRows.finderFor(table), firstLook, problems);
    unitRows.learn(table, read.rows);
    for (const draft of read.stopped) stopped.add(draft);
    rowsByTable.set(table, read.rows);
  }
  const drafts = Object.fromEntries(tableNames.map((table) => [table, rowsByTable.get(table) ?? []]));
  return { drafts: drafts as unknown as DraftTables, stopped };
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
