import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";
import { jsonOption, printJson } from "../print-json.ts";
import { alignedTable } from "../print-table.ts";

export type DueOptions = { within: string; calendar?: string; json?: boolean };

/** `spanwright due`: loops and standards that are overdue or due soon, the earliest first. */
export async function dueCommand(
  folder: string,
  { within, calendar, json }: DueOptions,
  console: Console,
): Promise<0 | 2> {
  const { listDue } = await import("../../jobs/filing/list-due.ts");
  const disks = { filing: nodeFilingDisk(console.complain), plain: nodeDisk };
  const options = { today: console.today(), now: console.now(), within, calendar };
  const { rows, withinDays, problems, list } = await listDue(disks, folder, options);
  if (json) {
    printJson(console, "due", { on: options.today, withinDays, ...(list && dueAnswer(list)) }, [problems]);
    return problems.hasStop ? 2 : 0;
  }
  complainOf(problems, console);
  if (problems.hasStop) {
    console.complain("nothing was listed or written; mend what is wrong and run again");
    return 2;
  }
  console.print(rows.length === 0 ? `nothing is due within ${counted(withinDays, "day")}` : alignedTable(rows));
  if (calendar !== undefined) console.print(calendar);
  return 0;
}

type Listed = NonNullable<Awaited<ReturnType<typeof import("../../jobs/filing/list-due.ts").listDue>>["list"]>;

function dueAnswer({ open, loops, standards }: Listed) {
  const about = ({ tag, calibration, path, location }: Listed["open"][number]) => ({
    tag,
    calibration,
    path,
    location,
  });
  return {
    open: open.map((row) => ({ ...about(row), state: row.due.state, why: row.due.why })),
    loops: loops.map((row) => ({ ...about(row), state: row.due.state, dueOn: row.due.on, days: row.due.days })),
    standards: standards.map(({ standard, certificate, dueOn, days }) => ({ standard, certificate, dueOn, days })),
  };
}

export const addDueCommand: AddCommand = (program, console, settle) => {
  program
    .command("due")
    .description("list the loops and standards of a filing folder that are overdue or due soon")
    .argument("<folder>", "folder into which records are filed")
    .option("--within <time>", "days, weeks, months or years from today, such as 30d, 6w, 3m or 1y", "30d")
    .option(...jsonOption)
    .option("--calendar <file.ics>", "write them as a calendar too (iCalendar)")
    .action(async (folder: string, options: DueOptions) => {
      settle(await dueCommand(folder, options, console));
    });
};
