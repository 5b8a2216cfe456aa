import { runCommandLine } from "../../src/cli/command-line.ts";
import type { Run } from "./built-command.ts";
import { recordingConsole } from "./recording-console.ts";

/** What the command does with these words, in this process, which takes less time than one of its own. */
export async function spanwrightInProcess(...words: readonly string[]): Promise<Run> {
  const console = recordingConsole();
  const exitCode = await runCommandLine(words, console);
  const linesOf = (texts: readonly string[]) => texts.map((text) => `${text}\n`).join("");
  return { exitCode, output: linesOf(console.printed), complaints: linesOf(console.complained) };
}
