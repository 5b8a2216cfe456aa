import type { Column } from "../../model/column.ts";
import { requiredTables, type TableName, tableColumns, tableNames } from "../../model/tables.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import type { Disk, NewFile } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";

/** Writes an empty workbook: one file a table with its header, and a README with an example row of each. */
export async function newWorkbook(
  disk: Disk,
  folder: string,
): Promise<{ files: readonly string[]; problems: ProblemList }> {
  const problems = new ProblemList();
  const names = (await disk.namesIn(folder)) ?? [];
  if (names.length > 0) {
    problems.add("options/folder-not-empty", { file: folder }, { values: { files: names.slice(0, 5).join(", ") } });
    return { files: [], problems };
  }
  const files = [
    ...tableNames.map((table) => ({ path: `${folder}/${table}.csv`, text: `${headerLine(table)}\n` })),
    { path: `${folder}/README.md`, text: readme() },
  ] satisfies NewFile[];
  const isWritten = await writeOrTell(() => disk.writeTogether(files), folder, problems);
  return { files: isWritten ? files.map(({ path }) => path) : [], problems };
}

function headerLine(table: TableName): string {
  return tableColumns(table)
    .map(({ name }) => name)
    .join(",");
}

/** One example a table: an invented loop, so that a reader sees what a filled row looks like. */
const exampleRows: Readonly<Record<TableName, Readonly<Record<string, string>>>> = {
  instruments: {
    tag: "LT-101",
    description: "level of an invented bin",
    principle: "ultrasonic",
    range_lower: "300",
    range_upper: "2300",
    distance_unit: "mm",
    signal_lower: "4",
    signal_upper: "20",
    signal_unit: "mA",
    tolerance: "0.5",
    tolerance_basis: "percent of span",
  },
  outputs: { tag: "LT-101", output: "Q1", set_point: "400", set_point_tolerance: "5", polarity: "PNP", function: "NO" },
  standards: {
    standard: "RAIL-1",
    quantity: "distance",
    certificate: "X-1234",
    calibrated_on: "2026-01-15",
    due_on: "2027-01-15",
    expanded_uncertainty: "0.2",
    uncertainty_unit: "mm",
    coverage_factor: "2",
  },
  calibrations: {
    calibration: "C-0001",
    tag: "LT-101",
    performed_on: "2026-03-04",
    performed_by: "Ines Example",
    standards: "RAIL-1",
    adjustment: "none",
  },
  readings: {
    calibration: "C-0001",
    phase: "as_found",
    cycle: "1",
    direction: "rising",
    point: "300",
    reference: "300.2",
    signal: "4.003",
  },
  trips: {
    calibration: "C-0001",
    phase: "as_found",
    output: "Q1",
    direction: "approach",
    cycle: "1",
    reference: "401.5",
  },
  loop_checks: { calibration: "C-0001", item: "supply at full output", result: "pass", measured: "23.8", unit: "V" },
  candidates: {
    candidate: "candidate A",
    principle: "radar",
    range_lower: "0.2",
    range_upper: "8",
    distance_unit: "m",
  },
};

function readme(): string {
  const required = requiredTables.join(", ");
  return [
    "# A workbook of calibrations",
    "",
    `A row a thing, the first row names the columns. The tables ${required} are needed; the others may stay empty or`,
    "be deleted, and so may every column that is not marked as needed. Everything in the examples is invented.",
    "An empty cell means 'not measured' or 'not stated'. Dates are written year-month-day, such as 2026-03-04.",
    ...tableNames.flatMap(tableSection),
    "",
  ].join("\n");
}

function tableSection(table: TableName): readonly string[] {
  const example = exampleRows[table];
  const filled = tableColumns(table).filter(({ name }) => example[name] !== undefined);
  return [
    "",
    `## ${table}.csv`,
    "",
    "Example:",
    "",
    "```",
    filled.map(({ name }) => name).join(","),
    filled.map(({ name }) => example[name]).join(","),
    "```",
    "",
    "| column | what it holds |",
    "|---|---|",
    ...tableColumns(table).map(columnRow),
  ];
}

function columnRow({ name, about, required, ...column }: Column): string {
  const choices = column.reads === "choice" || column.reads === "choices" ? `: ${column.choices.join(", ")}` : "";
  return `| ${name}${required ? " (needed)" : ""} | ${about}${choices} |`;
}
