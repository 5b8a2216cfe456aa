import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";
import { alignedTable } from "../print-table.ts";

export type DueOptions = { within: string; calendar?: string };

/** `spanwright due`: loops and standards that are overdue or due soon, the earliest first. */
export async function dueCommand(folder: string, { within, calendar }: DueOptions, console: Console): Promise<0 | 2> {
  const { listDue } = await import("../../jobs/filing/list-due.ts");
  const disks = { filing: nodeFilingDisk(console.complain), plain: nodeDisk };
  const options = { today: console.today(), now: console.now(), within, calendar };
  const { rows, withinDays, problems } = await listDue(disks, folder, options);
  complainOf(problems, console);
  if (problems.hasStop) {
    console.complain("nothing was listed or written; mend what is wrong and run again");
    return 2;
  }
  console.print(rows.length === 0 ? `nothing is due within ${counted(withinDays, "day")}` : alignedTable(rows));
  if (calendar !== undefined) console.print(calendar);
  return 0;
}

export const addDueCommand: AddCommand = (program, console, settle) => {
  program
    .command("due")
    .description("list the loops and standards of a filing folder that are overdue or due soon")
    .argument("<folder>", "folder into which records are filed")
    .option("--within <time>", "days, weeks, months or years from today, such as 30d, 6w, 3m or 1y", "30d")
    .option("--calendar <file.ics>", "write them as a calendar too (iCalendar)")
    .action(async (folder: string, options: DueOptions) => {
      settle(await dueCommand(folder, options, console));
    });
};
