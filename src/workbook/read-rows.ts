import type { Column } from "../model/column.ts";
import { tableColumns } from "../model/table-columns.ts";
import type { AnyTableName } from "../model/table-names.ts";
import { catalogue } from "../problems/catalogue.ts";
import { placeOfRow } from "../problems/place-of-row.ts";
import type { ProblemList } from "../problems/problem-list.ts";
import { hasHiddenCharacter, visibleText } from "../problems/visible-text.ts";
import type { DecimalMark } from "../units/read-number.ts";
import { belongingOf } from "./belonging.ts";
import type { CellValue } from "./cells/cell-result.ts";
import type { UnitRow } from "./cells/expected-unit.ts";
import { acceptedWords, readCell } from "./cells/read-cell.ts";
import { wordOfToday } from "./cells/read-choice.ts";
import { readSeveral } from "./cells/read-several.ts";
import { neededColumns } from "./check-header.ts";
import { placeOfCell, sheetOfTable } from "./files/place-of-table.ts";
import type { RawRow, RawTable } from "./files/raw-table.ts";
import { columnNamed, headerColumns, unitInHeader } from "./header-columns.ts";
import { fillInTolerance, missingBasis, saidTolerance } from "./said-tolerance.ts";
import { strayCells } from "./stray-cells.ts";
import type { DraftRow, Finding } from "./table-row.ts";

/** Longer texts break the page into pieces that nobody reads. */
const longText = 2000;

/** `unit` is the one that the header gives to the numbers of the column. */
type PlacedColumn = { index: number; column: Column; unit: string | undefined };
type RowValues = Record<string, CellValue>;
/** The row that names the units of a row, for the tables whose rows do not do so themselves. */
export type FindUnitRow = (row: RowValues) => UnitRow | undefined;

/** The rows of a table as far as they can be read, and those among them that have a problem of severity stop. */
export type ReadRows<Table extends AnyTableName> = { rows: readonly DraftRow<Table>[]; stopped: ReadonlySet<DraftRow> };

/** Reads every cell of a table; each problem is reported at its cell and the work goes on. */
export function readRows<Table extends AnyTableName>(
  raw: RawTable<Table>,
  findUnitRow: FindUnitRow,
  firstLook: boolean,
  problems: ProblemList,
): ReadRows<Table> {
  const reader = rowReader(raw, findUnitRow, firstLook);
  const stopped = new Set<DraftRow>();
  const rows = Array.from(raw.rows, (rawRow) => {
    const { draft, isStopped } = reader(rawRow, problems);
    if (isStopped) stopped.add(draft);
    return draft;
  });
  return { rows, stopped };
}

/** Reads one row of a table, as often as it is asked to, and gives what is wrong with it to the list that it is told. */
export type RowReader<Table extends AnyTableName> = (
  row: RawRow,
  problems: ProblemList,
) => { draft: DraftRow<Table>; isStopped: boolean };

/** What the header of a table says of its rows is looked up once. */
export function rowReader<Table extends AnyTableName>(
  raw: RawTable<Table>,
  findUnitRow: FindUnitRow,
  firstLook: boolean,
): RowReader<Table> {
  const { table, decimalMark, description } = raw;
  const columns = headerColumns(table, raw.header);
  const placed = numbersLast(raw, columns);
  const others = otherNames(raw);
  const sheet = sheetOfTable(raw);
  const origin = { file: description.name, ...(sheet && { sheet }) };
  const needed = neededColumns(tableColumns(table), firstLook);
  const hasEveryNeeded = needed.every((column) => columns.includes(column));

  return ({ line, cells: texts }, problems) => {
    const { row, cells, findings } = readCells(texts, placed, decimalMark, findUnitRow);
    findings.push(...emptyCells(needed, columns, cells), ...strayCells(raw, columns, texts));
    for (const { index, name } of others) {
      const text = visibleText((texts[index] ?? "").trim());
      if (text !== "") cells[name] = text;
    }
    const belongsTo = findings.length === 0 ? undefined : belongingOf(table, cells);
    for (const { code, column, index, read, values } of findings) {
      const place =
        index === undefined ? placeOfRow({ ...origin, line }, column) : placeOfCell(raw, line, index, column);
      problems.add(code, place, { read, belongsTo, ...(values !== undefined && { values }) });
    }
    const isStopped = !hasEveryNeeded || findings.some(({ code }) => catalogue[code].severity === "stop");
    return { draft: { row: row as DraftRow<Table>["row"], ...origin, line, cells }, isStopped };
  };
}

function readCells(
  texts: readonly string[],
  placed: readonly PlacedColumn[],
  mark: DecimalMark,
  findUnitRow: FindUnitRow,
) {
  const row: RowValues = {};
  const cells: Record<string, string> = {};
  const findings: Finding[] = [];
  let unitRow: UnitRow | undefined;
  let more: RowValues = {};
  let rest: { key: string; words: readonly string[] } | undefined;
  for (const { index, column, unit } of placed) {
    const text = withUnitOfHeader((texts[index] ?? "").trim(), unit);
    if (text === "") continue;
    const read = visibleText(text);
    cells[column.name] = read;
    if (hasHiddenCharacter(text)) findings.push({ code: "tables/control-character", column: column.name, read });
    if (text.length > longText) findings.push(longCell(column.name, read));
    if (takesUnit(column)) unitRow ??= findUnitRow(row);
    const said = saysMore(column) ? saidTolerance(read, mark, row) : undefined;
    if (said !== undefined) {
      findings.push(...said.findings);
      more = said.row;
      continue;
    }
    const several = severalIn(read, column);
    if (several !== undefined) {
      row[column.key] = several.value;
      rest = several.rest;
      continue;
    }
    const result = readCell(read, column, mark, unitRow);
    const renamed = column.reads === "choice" ? wordOfToday(read, column.choices) : undefined;
    if (renamed !== undefined)
      findings.push({ code: "tables/word-old", column: column.name, read, values: { renamed } });
    if ("value" in result) row[column.key] = result.value;
    else findings.push({ ...result, column: column.name, read });
  }
  if (rest !== undefined)
    row[rest.key] = [...new Set([...rest.words, ...((row[rest.key] as readonly string[]) ?? [])])];
  findings.push(...fillInTolerance(more, row, cells), ...missingBasis(row, cells));
  return { row, cells, findings };
}

function severalIn(text: string, column: Column) {
  if (column.reads !== "choice" || column.several === undefined) return undefined;
  const { restIn, order } = column.several;
  const several = readSeveral(text, column.choices, order);
  return several && { value: several.value, rest: { key: restIn, words: several.others } };
}

function saysMore(column: Column): boolean {
  return column.reads === "number" && column.saysMore !== undefined;
}

function longCell(column: string, read: string): Finding {
  return { code: "tables/cell-long", column, read, values: { length: read.length } };
}

/** Needed cells in which nothing is written; a column that is not there at all is the header's problem. */
function emptyCells(
  needed: readonly Column[],
  columns: readonly (Column | undefined)[],
  cells: Readonly<Record<string, string>>,
): readonly Finding[] {
  return needed
    .filter((column) => cells[column.name] === undefined && columns.includes(column))
    .map((column) => ({
      code: "tables/cell-missing",
      column: column.name,
      values: { accepted: acceptedWords(column) },
    }));
}

/**
 * Numbers are read last, because other cells of the row may name their unit; otherwise in the order of the schema,
 * whatever that of the header, so that the same cells always give the same row, to the order of its keys.
 */
function numbersLast(
  { table, header }: RawTable<AnyTableName>,
  columns: readonly (Column | undefined)[],
): readonly PlacedColumn[] {
  const placed = tableColumns(table).flatMap((column) => {
    const index = columns.indexOf(column);
    return index === -1 ? [] : [{ index, column, unit: unitInHeader(header[index] ?? "", column) }];
  });
  const isNumber = ({ column }: PlacedColumn) => takesUnit(column);
  return [...placed.filter((one) => !isNumber(one)), ...placed.filter(isNumber)];
}

/** The names that are no columns: what stands under them is kept with the row, beside what the table asks for. */
function otherNames({ table, header }: RawTable<AnyTableName>) {
  return header
    .map((name, index) => ({ index, name: visibleText(name) }))
    .filter(({ name }) => name !== "" && columnNamed(table, name) === undefined && !(name in Object.prototype));
}

/** A number without a unit has the one that its header names. */
function withUnitOfHeader(text: string, unit: string | undefined): string {
  return unit === undefined || !endsInDigit.test(text) ? text : `${text} ${unit}`;
}

const endsInDigit = /\d[.,]?$/u;

function takesUnit({ reads }: Column): boolean {
  return reads === "number" || reads === "numberOrWords";
}
