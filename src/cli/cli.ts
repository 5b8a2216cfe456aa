#!/usr/bin/env node
import { visibleText } from "../problems/visible-text.ts";
import { runCommandLine } from "./command-line.ts";

process.exitCode = await runCommandLine(process.argv.slice(2), {
  print: (text) => process.stdout.write(`${visibleText(text)}\n`),
  complain: (text) => process.stderr.write(`${visibleText(text)}\n`),
  isTerminal: process.stderr.isTTY === true,
  today: () => localDate(new Date()),
});

/** The calendar day where the technician stands. */
function localDate(now: Date): string {
  const twoDigits = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
}
