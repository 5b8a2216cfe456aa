import { Command, CommanderError } from "commander";
import { version } from "../../package.json";
import type { AddCommand, ExitCode } from "./command.ts";
import { addAmendCommand } from "./commands/amend-command.ts";
import { addCheckCommand } from "./commands/check-command.ts";
import { addCollectCommand } from "./commands/collect-command.ts";
import { addCompletionCommand } from "./commands/completion-command.ts";
import { addDecideCommand } from "./commands/decide-command.ts";
import { addDisposeCommand } from "./commands/dispose-command.ts";
import { addDueCommand } from "./commands/due-command.ts";
import { addExplainCommand } from "./commands/explain-command.ts";
import { addExtractCommand } from "./commands/extract-command.ts";
import { addFileCommand } from "./commands/file-command.ts";
import { addHistoryCommand } from "./commands/history-command.ts";
import { addKeysCommand } from "./commands/keys-command.ts";
import { addLabelCommand } from "./commands/label-command.ts";
import { addLoopChecksCommand } from "./commands/loop-checks-command.ts";
import { addNewCommand } from "./commands/new-command.ts";
import { addPdfCommand } from "./commands/pdf-command.ts";
import { addRegisterCommand } from "./commands/register-command.ts";
import { addReportCommand } from "./commands/report-command.ts";
import { addRowsCommand } from "./commands/rows-command.ts";
import { addSelfTestCommand } from "./commands/self-test-command.ts";
import { addSheetCommand } from "./commands/sheet-command.ts";
import { addSignCommand } from "./commands/sign-command.ts";
import { addMoveCommand, addRenameCommand, addRetireCommand } from "./commands/tag-command.ts";
import { addTrailCommand } from "./commands/trail-command.ts";
import { addVerifyCommand } from "./commands/verify-command.ts";
import { addWhereUsedCommand } from "./commands/where-used-command.ts";
import { addRestoreCommand, addWithdrawCommand } from "./commands/withdraw-command.ts";
import { addWorkbookCommand } from "./commands/workbook-command.ts";
import type { Console } from "./console.ts";
import { addHelpAfter } from "./help-after.ts";

/** Every command by its name, in the order in which the help lists them. */
const commands: Readonly<Record<string, AddCommand>> = {
  new: addNewCommand,
  check: addCheckCommand,
  report: addReportCommand,
  "loop-checks": addLoopChecksCommand,
  rows: addRowsCommand,
  sheet: addSheetCommand,
  collect: addCollectCommand,
  file: addFileCommand,
  extract: addExtractCommand,
  workbook: addWorkbookCommand,
  amend: addAmendCommand,
  decide: addDecideCommand,
  withdraw: addWithdrawCommand,
  restore: addRestoreCommand,
  retire: addRetireCommand,
  rename: addRenameCommand,
  move: addMoveCommand,
  dispose: addDisposeCommand,
  register: addRegisterCommand,
  due: addDueCommand,
  history: addHistoryCommand,
  "where-used": addWhereUsedCommand,
  trail: addTrailCommand,
  explain: addExplainCommand,
  keys: addKeysCommand,
  sign: addSignCommand,
  verify: addVerifyCommand,
  label: addLabelCommand,
  pdf: addPdfCommand,
  "self-test": addSelfTestCommand,
  completion: addCompletionCommand,
};

/**
 * The program with all of its commands, or with the one that is named, where no other is asked about; what a command ends
 * with is handed to `settle`.
 */
export function programOf(console: Console, settle: (exitCode: ExitCode) => void, only = ""): Command {
  const program = new Command("spanwright")
    .description("Calibration records for distance-sensing loops: tables in, one self-contained record out.")
    .version(version, "-v, --version", "print the version")
    .exitOverride()
    .configureOutput({
      writeOut: (text) => console.print(text.trimEnd()),
      writeErr: (text) => console.complain(text.trimEnd()),
    });
  const named = Object.hasOwn(commands, only) && !listsOthers.has(only) ? commands[only] : undefined;
  for (const add of named === undefined ? Object.values(commands) : [named]) add(program, console, settle);
  addHelpAfter(program);
  return program;
}

/** A script for a shell completes every command. */
const listsOthers: ReadonlySet<string> = new Set(["completion"]);

/** Runs one command and returns its exit code. */
export async function runCommandLine(words: readonly string[], console: Console): Promise<ExitCode> {
  let exitCode: ExitCode = 0;
  const program = programOf(
    console,
    (found) => {
      exitCode = found;
    },
    words[0],
  );
  try {
    await program.parseAsync(words, { from: "user" });
    return exitCode;
  } catch (fault) {
    return exitCodeOf(fault, console);
  }
}

function exitCodeOf(fault: unknown, console: Console): ExitCode {
  if (fault instanceof CommanderError) return fault.exitCode === 0 ? 0 : 2;
  if (isDiskFault(fault)) {
    console.complain(`the disk refused, and nothing more was done: ${fault.message}`);
    return 2;
  }
  throw fault;
}

function isDiskFault(fault: unknown): fault is NodeJS.ErrnoException {
  return fault instanceof Error && "code" in fault && "syscall" in fault;
}
