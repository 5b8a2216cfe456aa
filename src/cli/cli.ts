import { visibleText } from "../problems/visible-text.ts";
import { secretAsker } from "./ask-secret.ts";
import { runCommandLine } from "./command-line.ts";
import { localDate, localTime } from "./local-date-time.ts";

let isUnprinted = false;

/** Who reads no further, as `head` does, wants no more of it: what was begun is done all the same. */
process.stdout.on("error", ({ code, message }: NodeJS.ErrnoException) => {
  if (code === "EPIPE" || isUnprinted) return;
  isUnprinted = true;
  process.exitCode = 2;
  process.stderr.write(`the output could not be written: ${message}\n`);
});
process.stderr.on("error", () => undefined);

/**
 * Runs the command and leaves its exit code to the process. Called by what the build puts before it, for a script whose
 * code V8 keeps cannot await at its top.
 */
export async function main(words: readonly string[]): Promise<void> {
  const exitCode = await runCommandLine(words, {
    print: (text) => process.stdout.write(`${visibleText(text)}\n`),
    complain: (text) => process.stderr.write(`${visibleText(text)}\n`),
    isTerminal: process.stderr.isTTY === true,
    today: () => localDate(new Date()),
    now: () => localTime(new Date()),
    askSecret: secretAsker(process.stdin, process.stderr),
  });
  process.exitCode = isUnprinted ? 2 : exitCode;
}
