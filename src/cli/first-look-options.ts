import type { Command } from "commander";

export const workbookForms =
  "folder of tables, an .xlsx or .ods file with sheets, or lone tables of readings; - for the standard input";

/** The options that stand for an instrument's row where there is none. */
export function withFirstLook(command: Command): Command {
  return command
    .option("--range <lower:upper unit>", "for a lone table of readings: the range, such as 200:2000mm")
    .option(
      "--signal <lower:upper unit>",
      "for a lone table of readings: the signal at its ends, such as 4:20mA or 4-20mA",
    )
    .option("--tolerance <number and basis>", "for a lone table of readings: such as 0.5%span, 2mm, or in words");
}
