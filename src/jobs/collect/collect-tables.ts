import { tableColumns } from "../../model/table-columns.ts";
import { type TableName, tableNames } from "../../model/table-names.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { carriedTables } from "../../sheet/sheet-data.ts";
import type { DecimalMark } from "../../units/read-number.ts";
import type { RawTable } from "../../workbook/files/raw-table.ts";
import { writeTyped } from "../../workbook/files/write-typed.ts";
import { type Merged, mergeRows, type PlacedRow } from "../../workbook/merge-rows.ts";
import { isSpreadsheet, mayHoldTable, readTables } from "../../workbook/read-tables.ts";
import { remarkedTable } from "../../workbook/text-rows.ts";
import type { Disk, NewFile } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { placedRows, readSources, type Source } from "./read-sources.ts";

/** What came of one source. */
export type Collected = { path: string; added: number; filled: number; same: number };

/** A table of the workbook while it grows. */
type Growing = { raw: RawTable | undefined; path: string; rows: PlacedRow[]; isChanged: boolean };

/** Tables that come with a sheet and are not typed in it: what the workbook says of them is kept. */
const carried: ReadonlySet<TableName> = new Set(carriedTables);

/**
 * Merges what came back from sheets into the tables of a workbook: nothing twice, nothing over another reading. A source
 * with one contradiction is left out as a whole, and every contradiction is told.
 *
 * @returns what was taken from each source; the tables are written all or none
 */
export async function collectTables(
  disk: Disk,
  paths: readonly string[],
  into: string,
  problems: ProblemList,
): Promise<readonly Collected[]> {
  const sources = await readSources(disk, paths, problems);
  const tables = await growingTables(disk, into, problems);
  if (problems.hasStop) return [];
  const collected = sources.map((source) => taken(source, tables, problems));
  const changed = [...tables].filter(([, { isChanged }]) => isChanged);
  const files = changed.map(([table, growing]) => written(table, growing));
  if (files.length > 0 && !(await writeOrTell(() => disk.writeTogether(files), into, problems))) return [];
  return collected.filter((one) => one !== undefined);
}

async function growingTables(disk: Disk, into: string, problems: ProblemList): Promise<Map<TableName, Growing>> {
  const found = await disk.read(into, mayHoldTable);
  const sheets = (found?.files ?? []).filter(({ name }) => isSpreadsheet(name));
  if (found?.isFolder === false || sheets.length > 0) problems.add("collect/not-a-folder", { file: into });
  const own = new ProblemList();
  const raws = await readTables(found?.isFolder === true ? found.files : [], own);
  for (const { code, severity, place, read, values } of own.all) {
    if (severity !== "stop" || code === "tables/empty") continue;
    problems.add(code, { ...place, file: `${into}/${place.file}` }, { read, values });
  }
  return new Map(
    tableNames.map((table) => {
      const raw = raws.find((one) => one.table === table);
      const path = found?.files.find(({ name }) => name === raw?.file)?.path ?? `${into}/${table}.csv`;
      return [table, { raw, path, rows: raw === undefined ? [] : [...placedRows(raw, into)], isChanged: false }];
    }),
  );
}

/** Takes the rows of a source in, or tells why not. */
function taken(source: Source, tables: Map<TableName, Growing>, problems: ProblemList): Collected | undefined {
  const merged = [...source.rows].map(([table, rows]) => {
    const growing = tables.get(table) as Growing;
    return { table, growing, result: mergeRows(table, growing.rows, rows) };
  });
  const isRefused = merged.some(({ table, result }) => !carried.has(table) && result.refused.length > 0);
  for (const { table, result } of merged) {
    for (const { place, there, column, read, kept } of result.refused) {
      const code = carried.has(table) ? "collect/row-differs" : "collect/other-reading";
      problems.add(code, { file: place, column }, { read, values: { there, kept } });
    }
  }
  if (isRefused) return undefined;
  const sum = (countOf: (result: Merged) => number) =>
    merged.reduce((total, { table, result }) => total + (carried.has(table) ? 0 : countOf(result)), 0);
  for (const { table, growing, result } of merged) takeIn(table, growing, result);
  return {
    path: source.path,
    added: sum(({ added }) => added.length),
    filled: sum(({ filled }) => filled.size),
    same: sum(({ same }) => same),
  };
}

function takeIn(table: TableName, growing: Growing, { added, filled }: Merged): void {
  if (!carried.has(table)) {
    for (const [index, cells] of filled) {
      const row = growing.rows[index] as PlacedRow;
      growing.rows[index] = { ...row, cells: { ...row.cells, ...cells } };
    }
  }
  growing.rows.push(...added);
  growing.isChanged ||= added.length > 0 || (filled.size > 0 && !carried.has(table));
}

/** The table with its own delimiter and decimal mark; columns keep their order, new ones come behind them. */
function written(table: TableName, { raw, path, rows }: Growing): NewFile {
  const mark: DecimalMark = raw?.decimalMark ?? "point";
  const filled = new Set(rows.flatMap(({ cells }) => Object.keys(cells)));
  const known = tableColumns(table).filter(({ name, required }) => filled.delete(name) || required);
  const columns = [...known, ...[...filled].map((name) => ({ name, reads: "text" as const }))];
  const names = columns.map(({ name }) => name);
  const texts = rows.map(({ cells }) => names.map((name) => cells[name] ?? ""));
  const typed = remarkedTable({ table, columns: names, rows: texts }, mark);
  const delimiter = raw?.description.delimiter ?? ",";
  return {
    path,
    text: writeTyped({ columns, rows: typed.rows, delimiter: mark === "comma" && delimiter === "," ? ";" : delimiter }),
  };
}
