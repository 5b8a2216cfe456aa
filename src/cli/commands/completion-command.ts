import type { AddCommand } from "../command.ts";
import { completionScript, shells } from "../completion-script.ts";

/** `spanwright completion`: the script by which a shell completes commands and options. */
export const addCompletionCommand: AddCommand = (program, console, settle) => {
  program
    .command("completion")
    .description("print a script by which a shell completes the commands and their options")
    .argument("<shell>", shells.join(", "))
    .action((asked: string) => {
      const shell = shells.find((one) => one === asked);
      if (shell === undefined) {
        console.complain(`error: no script for the shell ${JSON.stringify(asked)}; accepted: ${shells.join(", ")}`);
        return settle(2);
      }
      console.print(completionScript(program, shell));
    });
};
