#!/usr/bin/env node
import { visibleText } from "../problems/visible-text.ts";
import { secretAsker } from "./ask-secret.ts";
import { runCommandLine } from "./command-line.ts";

process.exitCode = await runCommandLine(process.argv.slice(2), {
  print: (text) => process.stdout.write(`${visibleText(text)}\n`),
  complain: (text) => process.stderr.write(`${visibleText(text)}\n`),
  isTerminal: process.stderr.isTTY === true,
  today: () => localDate(new Date()),
  now: () => localTime(new Date()),
  askSecret: secretAsker(process.stdin, process.stderr),
});

/** The calendar day where the technician stands. */
function localDate(now: Date): string {
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
}

/** The same with the time of day there, and how far it is from Greenwich. */
function localTime(now: Date): string {
  const minutesEast = -now.getTimezoneOffset();
  const [hours, minutes] = [Math.trunc(Math.abs(minutesEast) / 60), Math.abs(minutesEast) % 60];
  const offset = `${minutesEast < 0 ? "-" : "+"}${twoDigits(hours)}:${twoDigits(minutes)}`;
  const clock = [now.getHours(), now.getMinutes(), now.getSeconds()].map(twoDigits).join(":");
  return `${localDate(now)}T${clock}${offset}`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, "0");
}
