import { tableColumns } from "../../src/model/table-columns.ts";
import { type TableName, tableNames } from "../../src/model/table-names.ts";
import type { Texts } from "../workbook/smallest-workbook.ts";
import type { HostileText } from "./hostile-texts.ts";

type Row = Record<string, string>;

/**
 * Rows of one loop with a cell in every table; the names that tie the tables together end in its number. A controller
 * takes pictures of its own, and is there where its unit is looked at.
 */
function rowsOfLoop(number: number, hasController: boolean): Record<TableName, Row[]> {
  const names = { tag: `T-${number}`, calibration: `C-${number}` };
  const readings = [0, 25, 50, 75, 100].map((reference, index) => ({
    ...{ calibration: names.calibration, phase: "as_found", cycle: "1", direction: "rising" },
    ...{ reference: `${reference}`, signal: `${4.01 + 4 * index}`, ...(hasController && { value: `${25 * index}` }) },
  }));
  return {
    instruments: [
      {
        ...{ tag: names.tag, principle: "laser", range_lower: "0", range_upper: "100", distance_unit: "mm" },
        ...{ signal_lower: "4", signal_upper: "20", signal_unit: "mA", tolerance: "2" },
        ...{ tolerance_basis: "percent of span", ...(hasController && { value_lower: "0", value_upper: "100" }) },
        ...{ interval_months: "12", interval_agreed_by: "A. Example" },
      },
    ],
    outputs: [{ tag: names.tag, output: "Q1", set_point: "50" }],
    standards: [{ standard: `S-${number}`, certificate: "K-1", calibrated_on: "2026-01-14", due_on: "2027-01-14" }],
    calibrations: [
      {
        ...names,
        performed_on: "2026-03-04",
        performed_by: "T. Example",
        standards: `S-${number}`,
        adjustment: "none",
      },
    ],
    readings,
    trips: [{ ...names, phase: "as_found", output: "Q1", direction: "approach", reference: "50" }],
    loop_checks: [{ calibration: names.calibration, item: "supply", result: "pass" }],
    controller_limits: [{ tag: names.tag, limit: "high", value: "80", acts: "above" }],
    candidates: [{ candidate: `N-${number}` }],
  };
}

/** Columns whose text is a name by which other tables refer to the row; it is put into all of them. */
const keys: ReadonlySet<string> = new Set(["tag", "calibration", "standard", "output"]);

export type HostileColumn = {
  label: string;
  table: TableName;
  name: string;
  isText: boolean;
  isKey: boolean;
  isRequired: boolean;
};

/** Every column of every table, a key once. */
export const hostileColumns: readonly HostileColumn[] = tableNames
  .flatMap((table) =>
    tableColumns(table).map(({ name, reads, required }) => ({
      label: `${table}.${name}`,
      table,
      name,
      isText: reads === "text" || reads === "numberOrWords",
      isKey: keys.has(name),
      isRequired: required,
    })),
  )
  .filter((column, index, all) => !column.isKey || all.findIndex(({ name }) => name === column.name) === index);

/** Which text stands in a column of a loop; nothing leaves the cell as it is. */
export type Placing = (column: HostileColumn, loop: number) => HostileText | undefined;

/** A workbook of loops in whose cells texts are placed; of the readings of a loop only the first is touched. */
export function hostileWorkbook(loops: number, placing: Placing, hasController = false): Texts {
  const placed = Array.from({ length: loops }, (_, loop) => placedRows(loop, placing, hasController));
  return Object.fromEntries(
    tableNames.map((table) => [
      `${table}.csv`,
      utf16(
        csv(
          table,
          placed.flatMap((rows) => rows[table] ?? []),
        ),
      ),
    ]),
  );
}

function placedRows(loop: number, placing: Placing, hasController: boolean) {
  const rows: Record<string, Row[]> = structuredClone(rowsOfLoop(loop, hasController));
  for (const column of hostileColumns) {
    const hostile = placing(column, loop);
    if (hostile === undefined) continue;
    if (column.isKey)
      for (const all of Object.values(rows)) for (const row of all) renameKey(row, column.name, hostile);
    else for (const row of rows[column.table]?.slice(0, 1) ?? []) row[column.name] = hostile.text;
  }
  return rows;
}

function renameKey(row: Row, name: string, { text }: HostileText): void {
  if (row[name] !== undefined) row[name] = text;
  if (name === "standard" && row.standards !== undefined) row.standards = text;
}

function csv(table: TableName, rows: readonly Row[]): string {
  const names = tableColumns(table).map(({ name }) => name);
  const lines = [names, ...rows.map((row) => names.map((name) => row[name] ?? ""))];
  return lines.map((cells) => cells.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(",")).join("\n");
}

/** UTF-16 with byte order mark: half a surrogate pair survives in nothing else. */
function utf16(text: string): Uint8Array {
  return new Uint8Array(Buffer.from(`\ufeff${text}`, "utf16le"));
}
