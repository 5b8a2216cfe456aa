import { version } from "../../../package.json";
import { ProblemList } from "../../problems/problem-list.ts";
import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { meantRecords } from "../meant-records.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";
import { alignedTable } from "../print-table.ts";
import { progressOn } from "../progress.ts";

export type FileOptions = { into: string; signedOnPaper?: string; by?: string; signers?: string };

/** `spanwright file`: pages of issued records into a folder that keeps them, and a row for each. */
export async function fileCommand(pages: readonly string[], options: FileOptions, console: Console): Promise<0 | 2> {
  const { fileRecords } = await import("../../jobs/filing/file-records.ts");
  const { recordVerifier } = await import("../../jobs/signing/verify-record.ts");
  const { filedRows } = await import("../../jobs/filing/filed-rows.ts");
  const { into, signedOnPaper, by, signers } = options;
  const meant = new ProblemList();
  const paths = await meantRecords(pages, meant, console);
  complainOf(meant, console);
  if (meant.hasStop) return 2;
  const { rows, problems, head } = await fileRecords(nodeFilingDisk(console.complain), paths, {
    ...{ into, by, paper: signedOnPaper, signers, verify: recordVerifier(), softwareVersion: version },
    onFiled: progressOn(console),
  });
  complainOf(problems, console);
  if (rows.length > 0) console.print(alignedTable(filedRows(rows)));
  if (head !== undefined)
    console.print(`head of the ledger, ${counted(head.lines, "line")}, to be noted elsewhere: ${head.fingerprint}`);
  return problems.hasStop ? 2 : 0;
}

export const addFileCommand: AddCommand = (program, console, settle) => {
  program
    .command("file")
    .description("put the pages of issued records into a folder that keeps them, and enter each into its ledger")
    .argument("<pages...>", "pages of records (.html), folders of them, or a quoted pattern")
    .requiredOption("--into <folder>", "the folder that keeps them")
    .option("--signed-on-paper <where>", "for records signed in ink: where the signed paper lies")
    .option(
      "--signers <table>",
      "table of signers; without it, signers.csv in that folder, or beside the page, or above it",
    )
    .option("--by <name>", "who files them; kept in the ledger")
    .action(async (pages: string[], options: FileOptions) => {
      settle(await fileCommand(pages, options, console));
    });
};
