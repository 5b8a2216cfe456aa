import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { runCommandLine } from "../../../src/cli/command-line.ts";
import { smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { temporaryFolder, written } from "../built-command.ts";
import { recordingConsole } from "../recording-console.ts";

async function run(...words: readonly string[]) {
  const console = recordingConsole();
  const exitCode = await runCommandLine(words, console);
  return { exitCode, printed: console.printed.join("\n"), complained: console.complained.join("\n") };
}

test("the history of a filed tag is printed, and written as a page where one is asked for", async () => {
  const folder = temporaryFolder();
  const book = written(join(folder, "book"), smallestWorkbook);
  const [out, into, page] = [join(folder, "out"), join(folder, "filed"), join(folder, "history.html")];
  await run("report", book, "--out", out);
  await run("file", join(out, "LT-1/C-1.html"), "--into", into, "--signed-on-paper", "binder 7");

  const shown = await run("history", into, "--tag", "LT-1");
  expect([shown.exitCode, shown.complained]).toEqual([0, ""]);
  expect(shown.printed).toMatch(/^2026-03-04 +C-1 +pass/mu);
  expect(shown.printed).toContain("the owner of the loop decides; nothing is changed by itself");
  expect(existsSync(page)).toBe(false);

  const paged = await run("history", into, "--tag", "LT-1", "--out", page, "--most-months", "24");
  expect(paged.exitCode).toBe(0);
  expect(paged.printed.split("\n").at(-1)).toBe(page);
  expect(existsSync(page)).toBe(true);

  const unknown = await run("history", into, "--tag", "LT-2");
  expect([unknown.exitCode, unknown.printed]).toEqual([2, ""]);
  expect(unknown.complained).toContain("no record of this tag is filed there");
});
