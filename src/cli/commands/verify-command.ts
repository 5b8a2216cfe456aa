import { version } from "../../../package.json";
import type { Verified } from "../../jobs/signing/verify-files.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { counted } from "../../units/counted.ts";
import type { AddCommand, ExitCode } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";
import { jsonOption, printJson } from "../print-json.ts";
import { progressOn } from "../progress.ts";
import { threadsAsked } from "../threads-for.ts";
import { verifyThreads } from "../verify-threads.ts";

/** The options of `spanwright verify` as the command line gives them. */
export type VerifyOptions = {
  signers?: string;
  ledgerHead?: string;
  since?: string;
  workers?: string;
  json?: boolean;
};

/** `spanwright verify`: whether records are what was read, computed, sealed and signed; writes nothing. */
export async function verifyCommand(
  paths: readonly string[],
  { signers, ledgerHead, since, workers, json }: VerifyOptions,
  console: Console,
): Promise<ExitCode> {
  const asked = new ProblemList();
  const threads = threadsAsked(workers, asked);
  if (asked.hasStop) {
    complainOf(asked, console);
    return 2;
  }
  const { verifyFiles } = await import("../../jobs/signing/verify-files.ts");
  const outcomes: Verified["outcome"][] = [];
  const files: Verified[] = [];
  const tellProgress = progressOn(console);
  const disks = { disk: nodeDisk, filing: nodeFilingDisk(console.complain) };
  const { problems, tables } = await verifyFiles(disks, paths, {
    softwareVersion: version,
    now: console.now(),
    signers,
    notedHead: ledgerHead,
    since,
    verifierFor: (records) => verifyThreads(records, threads),
    onVerified: (verified, done, all) => {
      outcomes.push(verified.outcome);
      if (json) return void files.push(verified);
      tellProgress(all, all);
      console.print(linesOf(verified).map(oneLine).join("\n"));
      tellProgress(done, all);
    },
  });
  if (json) {
    printJson(console, "verify", { files, tables: tables.map(({ path, sha256 }) => ({ path, sha256 })) }, [problems]);
    return problems.hasStop ? 2 : outcomes.includes("doubt") ? 1 : 0;
  }
  complainOf(problems, console);
  if (problems.hasStop) return 2;
  for (const { path, sha256 } of tables) console.print(oneLine(`signers: ${path}, SHA-256 ${sha256}`));
  console.print(countsOf(outcomes));
  return outcomes.includes("doubt") ? 1 : 0;
}

function linesOf({ path, outcome, what, doubts, note }: Verified): readonly string[] {
  const first = `${outcome.padEnd("passed over".length)}  ${path}  ${what}`;
  const told = doubts.map(({ about, place, says }) => `  ${about}, ${place === path ? "" : `${place}: `}${says}`);
  return [first, ...(note === undefined ? [] : [`  ${note}`]), ...told];
}

function countsOf(outcomes: readonly Verified["outcome"][]): string {
  const count = (wanted: Verified["outcome"]) => outcomes.filter((outcome) => outcome === wanted).length;
  const [ok, doubtful, other] = [count("ok"), count("doubt"), count("passed over")];
  const verified = `${counted(ok + doubtful, "file")} verified: ${doubtful === 0 ? "no doubt" : `${doubtful} with doubts`}`;
  return other === 0 ? verified : `${verified}; ${counted(other, "other file")} passed over`;
}

/** A name or a cell with a line break in it cannot pretend to be a line of its own. */
function oneLine(text: string): string {
  return text.replace(/[\r\n\u2028\u2029]+/gu, " ");
}

export const addVerifyCommand: AddCommand = (program, console, settle) => {
  program
    .command("verify")
    .description("check seal, signatures, figures and page of records; ends with 1 where there is any doubt")
    .argument("<files...>", "pages of records, their .json files, or folders of them")
    .option(...jsonOption)
    .option("--signers <table>", "table of signers; without it, signers.csv beside the record or in the folder above")
    .option("--ledger-head <digits>", "head of the folder's ledger as it was noted elsewhere, at least 16 digits")
    .option("--since <digits>", "head of the ledger when all was verified last: what is unchanged is not made again")
    .option("--workers <count>", "threads that verify; from 50 records on as many as there are processors")
    .action(async (files: string[], options: VerifyOptions) => {
      settle(await verifyCommand(files, options, console));
    });
};
