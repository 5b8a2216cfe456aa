import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { withFirstLook, workbookForms } from "../first-look-options.ts";
import { nodeDisk } from "../node-disk.ts";

/** What `spanwright check` is told of a lone table of readings. */
export type CheckOptions = { range?: string; signal?: string; tolerance?: string };

/** `spanwright check`: every problem of a workbook at its place; writes nothing. */
export async function checkCommand(workbook: string, firstLook: CheckOptions, console: Console): Promise<0 | 2> {
  const { readWorkbook } = await import("../../jobs/workbook/read-workbook.ts");
  const reading = await readWorkbook(nodeDisk, workbook, { today: console.today(), firstLook });
  const { problems, counts, isUnfilled, meanings } = reading;
  if (isUnfilled) {
    console.print("every table has its header and no row: nothing wrong, nothing filled in");
    return 0;
  }
  complainOf(problems, console);
  for (const said of meanings) console.print(said);
  const stops = problems.all.filter(({ severity }) => severity === "stop").length;
  const notes = problems.all.length - stops;
  const read = [
    counted(counts.instruments, "instrument"),
    counted(counts.calibrations, "calibration"),
    counted(counts.readings, "reading"),
  ].join(", ");
  console.print(
    `${read}: ${stops === 0 ? "nothing wrong" : `${stops} wrong`}, ${notes === 0 ? "no notes" : counted(notes, "note")}`,
  );
  return stops === 0 ? 0 : 2;
}

/** Adds `check` to the program. */
export const addCheckCommand: AddCommand = (program, console, settle) => {
  const check = program
    .command("check")
    .description("say everything that is wrong with a workbook, and write nothing")
    .argument("<workbook>", workbookForms);
  withFirstLook(check).action(async (workbook: string, options: CheckOptions) => {
    settle(await checkCommand(workbook, options, console));
  });
};
