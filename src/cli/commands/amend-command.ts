import { version } from "../../../package.json";
import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";
import { alignedTable } from "../print-table.ts";
import { programForRecord } from "../tested-program.ts";

export type AmendOptions = { with: string; reason: string; by: string; out: string };

/** `spanwright amend`: the next revision of an issued record, as a draft to be signed. */
export async function amendCommand(page: string, options: AmendOptions, console: Console): Promise<0 | 2> {
  const { amendRecord } = await import("../../jobs/records/amend-record.ts");
  const { summaryRows } = await import("../../jobs/records/summary-rows.ts");
  const ranWith = await programForRecord(console);
  if (ranWith === undefined) return 2;
  const { with: workbook, reason, by, out } = options;
  const disks = { disk: nodeDisk, filing: nodeFilingDisk(console.complain) };
  const { written, problems } = await amendRecord(disks, page, {
    ...{ workbook, reason, by, out, softwareVersion: version, ranWith },
    ...{ today: console.today(), now: console.now() },
  });
  complainOf(problems, console);
  if (written === undefined) return 2;
  const { revision, amendment } = written.record;
  console.print(alignedTable(summaryRows([written])));
  console.print(
    `revision ${revision}: ${counted(amendment?.changes.length ?? 0, "field differs", "fields differ")}; a draft until it is signed`,
  );
  return 0;
}

export const addAmendCommand: AddCommand = (program, console, settle) => {
  program
    .command("amend")
    .description("make the next revision of an issued record from tables that were put right; it is to be signed anew")
    .argument("<page>", "page of the issued or filed record (.html)")
    .requiredOption("--with <workbook>", "folder of tables, or an .xlsx file, put right")
    .requiredOption("--reason <text>", "why it is amended")
    .requiredOption("--by <name>", "who amends it")
    .option("--out <folder>", "folder for the revision", "reports")
    .action(async (page: string, options: AmendOptions) => {
      settle(await amendCommand(page, options, console));
    });
};
