import { version } from "../../../package.json";
import { ProblemList } from "../../problems/problem-list.ts";
import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { meantRecords } from "../meant-records.ts";
import { nodeDisk } from "../node-disk.ts";
import { alignedTable } from "../print-table.ts";
import { openToOthers } from "../secret-file.ts";

/** The options of `spanwright sign` as the command line gives them. */
export type SignOptions = { as: string; key: string; signers?: string };

/** `spanwright sign`: one person's signature under records, and how far each of them has come. */
export async function signCommand(records: readonly string[], options: SignOptions, console: Console): Promise<0 | 2> {
  const { signRecords } = await import("../../jobs/signing/sign-records.ts");
  const { signedRows } = await import("../../jobs/signing/signed-rows.ts");
  const meant = new ProblemList();
  const paths = await meantRecords(records, meant, console);
  complainOf(meant, console);
  if (meant.hasStop) return 2;
  const { signed, problems } = await signRecords(nodeDisk, paths, {
    ...options,
    now: console.now(),
    softwareVersion: version,
    ask: console.askSecret,
    openTo: openToOthers,
  });
  complainOf(problems, console);
  if (signed.length > 0) console.print(alignedTable(signedRows(signed)));
  if (problems.hasStop) {
    console.complain(
      signed.length === 0
        ? "nothing was signed"
        : `${counted(signed.length, "record was", "records were")} signed; the others not`,
    );
  }
  return problems.hasStop ? 2 : 0;
}

export const addSignCommand: AddCommand = (program, console, settle) => {
  program
    .command("sign")
    .description("sign records; the passphrase of the key is asked for")
    .argument("<records...>", "pages of records, their .json files, folders of them, or a quoted pattern")
    .requiredOption("--as <meaning>", "what the signature means: performed, reviewed or authorised")
    .requiredOption("--key <file>", "key file that spanwright keys new wrote")
    .option("--signers <table>", "table of signers; without it, signers.csv beside the record or in the folder above")
    .action(async (records: string[], options: SignOptions) => {
      settle(await signCommand(records, options, console));
    });
};
