import { cpSync, existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { runCommandLine } from "../../../src/cli/command-line.ts";
import { madeDemo } from "../../made-demo.ts";
import { temporaryFolder } from "../built-command.ts";
import { recordingConsole } from "../recording-console.ts";

const filed = join(madeDemo(), "filed");

async function run(...words: readonly string[]) {
  const console = recordingConsole();
  const exitCode = await runCommandLine(words, console);
  return { exitCode, printed: console.printed.join("\n"), complained: console.complained.join("\n") };
}

const daysAndNames = (printed: string) =>
  printed
    .split("\n")
    .slice(2)
    .map((line) => line.split(/ {2,}/u).slice(1, 3));

test("what is due within 30 days is listed, the earliest first", async () => {
  const { exitCode, printed, complained } = await run("due", filed);
  expect([exitCode, complained]).toEqual([0, ""]);
  expect(daysAndNames(printed)).toEqual([
    ["not in tolerance", "LT-808"],
    ["-316 overdue", "standard RAIL-3500"],
    ["-316 overdue", "standard RANGER-2"],
    ["-168 overdue", "ZT-615"],
    ["-42 overdue", "LT-430"],
    ["14", "ZT-250"],
    ["20", "standard METER-3"],
  ]);
});

test("a longer time lists more, and the calendar has an event for each line", async () => {
  const folder = temporaryFolder();
  cpSync(filed, folder, { recursive: true });
  const calendar = join(folder, "due.ics");
  const { exitCode, printed } = await run("due", folder, "--within", "20w", "--calendar", calendar);
  expect(exitCode).toBe(0);
  const lines = daysAndNames(printed.replace(`\n${calendar}`, ""));
  expect(lines.slice(7)).toEqual([
    ["49", "standard TAPE-5"],
    ["49", "standard AIR-2"],
    ["105", "LT-120"],
  ]);
  expect(readFileSync(calendar, "utf8").match(/^BEGIN:VEVENT/gmu)).toHaveLength(lines.length - 1); // the open loop is a to-do
  expect((await run("verify", folder)).printed).not.toMatch(/folder, (?:register|due)\./u);
});

test("a time that is none is told and nothing is written", async () => {
  const calendar = join(temporaryFolder(), "due.ics");
  const { exitCode, printed, complained } = await run("due", filed, "--within", "soon", "--calendar", calendar);
  expect([exitCode, printed]).toEqual([2, ""]);
  expect(complained).toContain('the option --within cannot be read; read "soon"');
  expect(existsSync(calendar)).toBe(false);
});
