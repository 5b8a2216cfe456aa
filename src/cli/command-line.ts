import { Command, CommanderError } from "commander";
import { version } from "../../package.json";
import { type CheckOptions, checkCommand } from "./check-command.ts";
import type { Console } from "./console.ts";
import { explainCommand } from "./explain-command.ts";
import { type LoopChecksOptions, loopChecksCommand } from "./loop-checks-command.ts";
import { newCommand } from "./new-command.ts";
import { type ReportOptions, reportCommand } from "./report-command.ts";

/** 0: done, whatever the verdict; 2: the input or the command line is wrong, or nothing could be written. */
export type ExitCode = 0 | 1 | 2;

/** Runs one command and returns its exit code. */
export async function runCommandLine(words: readonly string[], console: Console): Promise<ExitCode> {
  let exitCode: ExitCode = 0;
  const program = new Command("spanwright")
    .description("Calibration records for distance-sensing loops: tables in, one self-contained record out.")
    .version(version)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => console.print(text.trimEnd()),
      writeErr: (text) => console.complain(text.trimEnd()),
    });
  const report = program
    .command("report")
    .description("make the record of each calibration in a workbook")
    .argument("<workbook>", workbookForms)
    .option("--out <folder>", "folder for the records", "reports")
    .option("--tag <tag>", "only this tag; for a lone table, the tag to give it")
    .option("--calibration <number>", "only this calibration; for a lone table, the number to give it")
    .option(
      "--rule <name>",
      "decision rule for this run: simple acceptance, guard band, four words, managed guard band",
    )
    .option("--guard-factor <0 to 1>", "guard band as a part of the expanded uncertainty")
    .option("--monte-carlo <draws>", "check each uncertainty budget by so many draws, such as 1000000");
  withFirstLook(report).action(async (workbook: string, options: ReportOptions) => {
    exitCode = await reportCommand(workbook, options, console);
  });
  const check = program
    .command("check")
    .description("say everything that is wrong with a workbook, and write nothing")
    .argument("<workbook>", workbookForms);
  withFirstLook(check).action(async (workbook: string, options: CheckOptions) => {
    exitCode = await checkCommand(workbook, options, console);
  });
  program
    .command("new")
    .description("write an empty workbook with an explanation of every column")
    .argument("<folder>", "new or empty folder")
    .action(async (folder: string) => {
      exitCode = await newCommand(folder, console);
    });
  withLoopChecks(program, console, (found) => {
    exitCode = found;
  });
  program
    .command("explain")
    .description("say what a figure of a record is: meaning, formula, unit, source")
    .argument("[figure]", "its name, such as 'zero error'; without it, all names")
    .action(async (figure: string | undefined) => {
      exitCode = await explainCommand(figure, console);
    });
  try {
    await program.parseAsync(words, { from: "user" });
    return exitCode;
  } catch (fault) {
    return exitCodeOf(fault, console);
  }
}

const workbookForms = "folder of tables, an .xlsx file with sheets, or a lone table of readings";

/** The options that stand for an instrument's row where there is none. */
function withFirstLook(command: Command): Command {
  return command
    .option("--range <lower:upper unit>", "for a lone table of readings: the range, such as 200:2000mm")
    .option("--signal <lower:upper unit>", "for a lone table of readings: the signal at its ends, such as 4:20mA")
    .option("--tolerance <number and basis>", "for a lone table of readings: such as 0.5%span, 0.1%reading or 2mm");
}

function withLoopChecks(program: Command, console: Console, settle: (found: ExitCode) => void): void {
  program
    .command("loop-checks")
    .description("print the items of a loop check for each tag, as rows of the table loop_checks to fill in")
    .argument("<workbook>", "folder of tables, or an .xlsx file with sheets")
    .option("--tag <tag>", "only this tag")
    .option("--guide", "print what to do, what to write down and what is accepted instead")
    .action(async (workbook: string, options: LoopChecksOptions) => {
      settle(await loopChecksCommand(workbook, options, console));
    });
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
