import { requiredTables, type TableName } from "../../model/table-names.ts";
import { catalogue, type ProblemCode } from "../../problems/catalogue.ts";
import { placeOfRow } from "../../problems/place-of-row.ts";
import type { Belonging, Problem } from "../../problems/problem.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { belongingOf, nameColumns } from "../belonging.ts";
import type { RawTable } from "../files/raw-table.ts";
import { headerColumns } from "../header-columns.ts";
import type { DraftRow, DraftTables } from "../table-row.ts";

type Particulars = {
  column?: string;
  /** What to blame in the cell, where that is not all of its text. */
  read?: string;
  values?: Problem["values"];
  /** "everything" where the row could belong to any calibration. */
  belongsTo?: Belonging | "everything";
};

/** The tables whose rows are held together while they are checked: all but that of the readings. */
export type HeldDrafts = Omit<DraftTables, "readings">;

/** The readings of one name in the order of their rows, and the rows of the calibrations that have it: one, if all is well. */
export type ReadingsOfOne = {
  name: string | undefined;
  calibrations: readonly DraftRow<"calibrations">[];
  /** Of too many, the first alone. */
  readings: readonly DraftRow<"readings">[];
  /** Where there are more than a record holds: how many, and the first too many. */
  tooMany?: { count: number; beyond: DraftRow<"readings"> };
};

/** What every check works on. Rows that have a stop already are among the drafts, so that names are still found. */
export type CheckContext = {
  drafts: HeldDrafts;
  today: string;
  firstLook: boolean;
  instrumentByTag: ReadonlyMap<string, DraftRow<"instruments">>;
  calibrationByName: ReadonlyMap<string, DraftRow<"calibrations">>;
  standardByName: ReadonlyMap<string, DraftRow<"standards">>;
  /** Whether the rows of a table could be read, so that a name that is not among them is really missing. */
  isKnown(table: TableName): boolean;
  /** Notes a problem of a row; a stop leaves the row out of the workbook. */
  report(table: TableName, draft: DraftRow, code: ProblemCode, particulars?: Particulars): void;
  /** Leaves a row out of the workbook for a reason that was reported already. */
  leaveOut(draft: DraftRow): void;
};

export type Check = (context: CheckContext) => void;

/** A check that looks at the readings of one calibration at a time: no more of them are held at once. */
export type ReadingsCheck = (readings: ReadingsOfOne, context: CheckContext) => void;

type Ingredients = {
  tables: readonly RawTable[];
  drafts: HeldDrafts;
  stopped: Set<DraftRow>;
  today: string;
  firstLook: boolean;
  problems: ProblemList;
};

/** Gathers the rows by name once, so that no check has to search. */
export function checkContext({ tables, drafts, stopped, today, firstLook, problems }: Ingredients): CheckContext {
  const rawByTable = new Map(tables.map((raw) => [raw.table, raw]));
  return {
    drafts,
    today,
    firstLook,
    instrumentByTag: firstByName(drafts.instruments, ({ row }) => row.tag),
    calibrationByName: firstByName(drafts.calibrations, ({ row }) => row.calibration),
    standardByName: firstByName(drafts.standards, ({ row }) => row.standard),
    isKnown: (table) => isTableKnown(table, rawByTable.get(table)),
    report: reporterTo(problems, stopped),
    leaveOut(draft) {
      stopped.add(draft);
    },
  };
}

/** The same for whoever works on one list of problems after the other. */
export function reporterTo(problems: ProblemList, stopped: Set<DraftRow>): CheckContext["report"] {
  return (table, draft, code, { column, read, values, belongsTo = belongingOf(table, draft.cells) } = {}) => {
    const blamed = read ?? (column === undefined ? undefined : draft.cells[column]);
    problems.add(code, placeOfRow(draft, column), {
      read: blamed,
      ...(values && { values }),
      belongsTo: belongsTo === "everything" ? undefined : belongsTo,
    });
    if (catalogue[code].severity === "stop") stopped.add(draft);
  };
}

/** A table that need not be there is known to have no rows; one that could not be read may hold any name. */
function isTableKnown(table: TableName, raw: RawTable | undefined): boolean {
  const isRequired = (requiredTables as readonly TableName[]).includes(table);
  if (raw === undefined) return !isRequired;
  const names = new Set<string | undefined>(headerColumns(table, raw.header).map((column) => column?.name));
  return nameColumns[table].every((name) => names.has(name)) && (raw.rows.length > 0 || !isRequired);
}

function firstByName<Row extends DraftRow>(rows: readonly Row[], nameOfRow: (row: Row) => string | undefined) {
  const byName = new Map<string, Row>();
  for (const row of rows) {
    const name = nameOfRow(row);
    if (name !== undefined && !byName.has(name)) byName.set(name, row);
  }
  return byName;
}
