import type { Command } from "commander";

export const workbookForms = "folder of tables, an .xlsx file with sheets, or a lone table of readings";

/** The options that stand for an instrument's row where there is none. */
export function withFirstLook(command: Command): Command {
  return command
    .option("--range <lower:upper unit>", "for a lone table of readings: the range, such as 200:2000mm")
    .option("--signal <lower:upper unit>", "for a lone table of readings: the signal at its ends, such as 4:20mA")
    .option("--tolerance <number and basis>", "for a lone table of readings: such as 0.5%span, 0.1%reading or 2mm");
}
