import { dueCalendar } from "../../filing/due-calendar.ts";
import { type DueList, dueList } from "../../filing/due-list.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { makeRegister } from "../../filing/make-register.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import type { Disk } from "../disk.ts";
import { openFolder } from "./open-folder.ts";
import { writeDerived } from "./write-derived.ts";

/** `now` is a date and time with offset; a calendar is written where a file is named for it. */
export type DueOptions = { today: string; now: string; within: string; calendar?: string | undefined };

export type Due = { rows: readonly (readonly string[])[]; withinDays: number; problems: ProblemList };

const daysOf = { d: 1, w: 7 } as const;

/** What is due within some time in a filing folder, as rows for a terminal and as a calendar. */
export async function listDue(
  disks: { filing: FilingDisk; plain: Pick<Disk, "read" | "writeTogether"> },
  folder: string,
  { today, now, within, calendar }: DueOptions,
): Promise<Due> {
  const problems = new ProblemList();
  const withinDays = readDays(within, problems);
  const index = withinDays === undefined ? undefined : await openFolder(disks.filing, folder, problems);
  if (withinDays === undefined || index === undefined) return { rows: [], withinDays: 0, problems };
  const list = dueList(makeRegister(index, today, withinDays), withinDays);
  if (calendar !== undefined) await writeDerived(disks.plain, calendar, dueCalendar(list, now), problems);
  return { rows: rowsOf(list), withinDays, problems };
}

function readDays(within: string, problems: ProblemList): number | undefined {
  const [, count, unit] = /^(\d{1,5})\s*([dw])$/u.exec(within.trim()) ?? [];
  if (count !== undefined && (unit === "d" || unit === "w")) return Number(count) * daysOf[unit];
  const accepted = "--within with days or weeks, such as 30d or 6w";
  problems.add(
    "options/not-understood",
    { file: "command line" },
    { read: within, values: { option: "--within", accepted } },
  );
  return undefined;
}

function rowsOf({ loops, standards }: DueList): readonly (readonly string[])[] {
  const rows = [
    ...loops.map(({ tag, due, calibration, location }) => ({
      days: due.days,
      cells: [
        due.on,
        daysWords(due.days),
        tag,
        `last record ${calibration}${location === null ? "" : `, ${location}`}`,
      ],
    })),
    ...standards.map(({ standard, dueOn, days, certificate }) => ({
      days,
      cells: [dueOn, daysWords(days), `standard ${standard}`, `certificate ${certificate}`],
    })),
  ].sort((one, other) => one.days - other.days);
  return rows.length === 0 ? [] : [["due on", "days left", "what", "last proof"], ...rows.map(({ cells }) => cells)];
}

function daysWords(days: number): string {
  return days < 0 ? `${days} overdue` : String(days);
}
