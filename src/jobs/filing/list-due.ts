import { daysBetween } from "../../analysis/years/day-number.ts";
import { monthsLater } from "../../analysis/years/next-due.ts";
import { dueCalendar } from "../../filing/due-calendar.ts";
import { type DueList, dueList } from "../../filing/due-list.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { type DueRow as LoopDue, makeDues } from "../../filing/make-dues.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { type Column, namedRows } from "../../report/table/column.ts";
import type { Disk } from "../disk.ts";
import { openFolder } from "./open-folder.ts";
import { writeDerived } from "./write-derived.ts";

/** `now` is a date and time with offset; a calendar is written where a file is named for it. */
export type DueOptions = { today: string; now: string; within: string; calendar?: string | undefined };

/** Farther than any interval, and what a date with four digits of the year can hold. */
const furthestDays = 36_525;

export type Due = {
  rows: readonly (readonly (string | number)[])[];
  withinDays: number;
  problems: ProblemList;
  list?: DueList;
};

/** Counts of units in days, from a day on: months and years are those of the calendar. */
const daysOf: Readonly<Record<string, (count: number, from: string) => number>> = {
  d: (count) => count,
  w: (count) => 7 * count,
  m: (count, from) => daysBetween(from, monthsLater(from, count)),
  y: (count, from) => daysBetween(from, monthsLater(from, 12 * count)),
};

/** What is due within some time in a filing folder, as rows for a terminal and as a calendar. */
export async function listDue(
  disks: { filing: FilingDisk; plain: Pick<Disk, "read" | "writeTogether"> },
  folder: string,
  { today, now, within, calendar }: DueOptions,
): Promise<Due> {
  const problems = new ProblemList();
  const withinDays = readDays(within, today, problems);
  const index = withinDays === undefined ? undefined : await openFolder(disks.filing, folder, problems);
  if (withinDays === undefined || index === undefined) return { rows: [], withinDays: 0, problems };
  const list = dueList(makeDues(index, today, withinDays), withinDays);
  if (calendar !== undefined) await writeDerived(disks.plain, calendar, dueCalendar(list, now), problems);
  return { rows: rowsOf(list), withinDays, problems, list };
}

function readDays(within: string, today: string, problems: ProblemList): number | undefined {
  const [, count = "", unit = ""] = /^(\d{1,4})\s*([dwmy])$/u.exec(within.trim()) ?? [];
  const days = daysOf[unit]?.(Number(count), today);
  if (days !== undefined && days <= furthestDays) return days;
  const accepted = "--within with days, weeks, months or years, such as 30d, 6w, 3m or 1y, up to 100 years";
  problems.add(
    "options/not-understood",
    { file: "command line" },
    { read: within, values: { option: "--within", accepted } },
  );
  return undefined;
}

type DueRow = { on: string; left: string; what: string; proof: string };

const dueColumns: readonly Column<DueRow>[] = [
  { heading: "Due on", name: "due on", text: ({ on }) => on },
  { heading: "Days left", name: "days left", text: ({ left }) => left },
  { heading: "What", name: "what", text: ({ what }) => what },
  { heading: "Last proof", name: "last proof", text: ({ proof }) => proof },
];

function rowsOf({ open, loops, standards }: DueList): Due["rows"] {
  const opened: DueRow[] = open.map((row) => ({
    ...{ on: "now", left: row.due.state, what: row.tag },
    proof: `${lastRecord(row)}${row.due.state === "not complete" ? `: ${row.due.why}` : ""}`,
  }));
  const dated = [
    ...loops.map((row) => ({ ...{ on: row.due.on, days: row.due.days, what: row.tag }, proof: lastRecord(row) })),
    ...standards.map(({ standard, dueOn, days, certificate }) => ({
      ...{ on: dueOn, days, what: `standard ${standard}`, proof: `certificate ${certificate}` },
    })),
  ].toSorted((one, other) => one.days - other.days);
  const rows = [...opened, ...dated.map(({ days, ...row }) => ({ ...row, left: daysWords(days) }))];
  return rows.length === 0 ? [] : namedRows(dueColumns, rows);
}

function lastRecord({ calibration, location }: LoopDue): string {
  return `last record ${calibration}${location === null ? "" : `, ${location}`}`;
}

function daysWords(days: number): string {
  return days < 0 ? `${days} overdue` : String(days);
}
