import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";
import { jsonOption, printJson } from "../print-json.ts";

const soonDays = 30;

/** The options of `spanwright register` as the command line gives them. */
export type RegisterOptions = { decimalMark?: string; on?: string; json?: boolean; parquet?: string };

/** `spanwright register`: what a filing folder says today, as a page and a table inside it. */
export async function registerCommand(folder: string, options: RegisterOptions, console: Console): Promise<0 | 2> {
  const { decimalMark, on, json, parquet } = options;
  if (parquet !== undefined) return yearlyFilesCommand(folder, { ...options, parquet }, console);
  const { writeRegister } = await import("../../jobs/filing/write-register.ts");
  const disks = { filing: nodeFilingDisk(console.complain), plain: nodeDisk };
  const { written, problems } = await writeRegister(disks, folder, {
    today: console.today(),
    soonDays,
    decimalMark,
    on,
  });
  if (json) {
    const { register, page, table } = written ?? {};
    printJson(console, "register", { ...(written && { page, table, ...register }) }, [problems]);
    return problems.hasStop ? 2 : 0;
  }
  complainOf(problems, console);
  if (written !== undefined) {
    const { page, table, parts } = written;
    const { rows, records, openFindings } = written.register;
    const inParts = parts === 0 ? "" : `, with ${counted(parts, "part")} to read without scripts`;
    const overdue = rows.filter(({ due }) => due.state === "overdue").length;
    console.print(
      `${counted(rows.length, "loop")}, ${counted(records, "record")}; ${overdue} overdue, ${openFindings.length} to be decided\n${page}${inParts}\n${table}`,
    );
  }
  if (written === undefined) console.complain("nothing was written; mend what is wrong and run again");
  return problems.hasStop ? 2 : 0;
}

async function yearlyFilesCommand(
  folder: string,
  { parquet, json, ...others }: RegisterOptions & { parquet: string },
  console: Console,
): Promise<0 | 2> {
  const { writeYearlyFiles } = await import("../../jobs/filing/write-yearly-files.ts");
  const disks = { filing: nodeFilingDisk(console.complain), plain: nodeDisk };
  const { written, problems } = await writeYearlyFiles(disks, folder, parquet, others);
  if (json) printJson(console, "register", { ...(written && { parquet: written }) }, [problems]);
  else {
    complainOf(problems, console);
    for (const { path, records } of written ?? []) console.print(`${counted(records, "record")}: ${path}`);
    if (written === undefined) console.complain("nothing was written; mend what is wrong and run again");
  }
  return problems.hasStop ? 2 : 0;
}

export const addRegisterCommand: AddCommand = (program, console, settle) => {
  program
    .command("register")
    .description("write what a filing folder says of every loop, as a page to search and sort, and as a table")
    .argument("<folder>", "folder into which records are filed")
    .option(...jsonOption)
    .option("--on <day>", "as it was at the end of a past day, such as 2025-12-31; written beside that of today")
    .option("--decimal-mark <point or comma>", "of page and table; a table with commas has ; between its cells")
    .option("--parquet <folder>", "write every record into yearly files there instead, one Parquet file a year")
    .action(async (folder: string, options: RegisterOptions) => {
      settle(await registerCommand(folder, options, console));
    });
};
