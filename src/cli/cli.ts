#!/usr/bin/env node
import { visibleText } from "../problems/visible-text.ts";
import { secretAsker } from "./ask-secret.ts";
import { runCommandLine } from "./command-line.ts";
import { localDate, localTime } from "./local-date-time.ts";

process.exitCode = await runCommandLine(process.argv.slice(2), {
  print: (text) => process.stdout.write(`${visibleText(text)}\n`),
  complain: (text) => process.stderr.write(`${visibleText(text)}\n`),
  isTerminal: process.stderr.isTTY === true,
  today: () => localDate(new Date()),
  now: () => localTime(new Date()),
  askSecret: secretAsker(process.stdin, process.stderr),
});
