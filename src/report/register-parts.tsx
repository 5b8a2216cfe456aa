import type { LateCalibration, OpenFinding, Register, RegisterRow } from "../record/register-form.ts";
import { lateColumns, openFindingColumns, registerColumns } from "./columns/register-columns.tsx";
import { type ListedPart, rowsInParts } from "./rows-in-parts.tsx";

/** The parts of a long register, by its lists. */
export type RegisterParts = Readonly<Record<"loops" | "due" | "open" | "late", readonly ListedPart[]>>;

/** The lists of a register in parts; those loops that are overdue or due soon once more, the earliest first. */
export function registerParts({ rows, openFindings, late, on }: Register, name: string): RegisterParts {
  const page = { name, what: `Register of calibrations on ${on}`, style: footOf(on) };
  return {
    loops: rowsInParts({ ...loopsTable, rows, nameOf: ({ tag }) => tag }, page),
    due: rowsInParts({ ...dueTable, rows: dueFirst(rows), nameOf: dayOf }, page),
    open: rowsInParts({ ...openTable, rows: openFindings }, page),
    late: rowsInParts({ ...lateTable, rows: late }, page),
  };
}

const fromBelow = <Row extends { path: string }>(row: Row): Row => ({ ...row, path: `../${row.path}` });
const loopsTable = { title: "Loops", kind: "loops", columns: registerColumns, fromBelow: fromBelow<RegisterRow> };
const dueTable = { ...loopsTable, title: "Overdue or due soon, the earliest first", kind: "due" };
const openTable = {
  ...{ title: "Found out of tolerance, not decided yet", kind: "open", columns: openFindingColumns },
  fromBelow: fromBelow<OpenFinding>,
};
const lateTable = {
  ...{ title: "Calibrated late", kind: "late", columns: lateColumns },
  fromBelow: fromBelow<LateCalibration>,
};

const dayOf = ({ due }: RegisterRow) => due.on ?? "";

function dueFirst(rows: readonly RegisterRow[]): readonly RegisterRow[] {
  return rows
    .filter(({ due }) => due.state === "overdue" || due.state === "due soon")
    .sort((one, other) => (dayOf(one) < dayOf(other) ? -1 : Number(dayOf(one) > dayOf(other))));
}

/** The foot of every printed page; a day has no sign that style would read. */
export function footOf(day: string): string {
  return `@page{@bottom-left{content:"Register of calibrations on ${day}"}}`;
}
