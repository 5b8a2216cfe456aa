import { expect, test } from "vitest";
import packageFile from "../../package.json" with { type: "json" };
import { runCommandLine } from "../../src/cli/command-line.ts";
import { recordingConsole } from "./recording-console.ts";

async function run(...words: readonly string[]) {
  const console = recordingConsole();
  const exitCode = await runCommandLine(words, console);
  return { exitCode, printed: console.printed.join("\n"), complained: console.complained.join("\n") };
}

test("help and version are no faults", async () => {
  expect(await run("--version")).toEqual({ exitCode: 0, printed: packageFile.version, complained: "" });
  const help = await run("--help");
  expect(help.exitCode).toBe(0);
  for (const command of ["report", "check", "new"]) expect(help.printed).toContain(`  ${command} `);
  const report = await run("report", "--help");
  expect(report.exitCode).toBe(0);
  for (const option of ["--out", "--tag", "--calibration", "--range", "--signal", "--tolerance"]) {
    expect(report.printed).toContain(option);
  }
});

test.each([
  [["repot", "book"], /unknown command 'repot'\n.*report/u],
  [["report", "book", "--outt", "x"], /unknown option '--outt'\n.*--out/u],
  [["report"], /missing required argument 'workbook'/u],
  [["report", "book", "--out"], /argument missing/u],
  [["new", "a", "b"], /too many arguments/u],
  [["check", "a", "--out", "b"], /unknown option '--out'/u],
  [[], /Usage: spanwright/u],
])("%j is a fault of the command line", async (words, told) => {
  const { exitCode, printed, complained } = await run(...words);
  expect(exitCode).toBe(2);
  expect(printed).toBe("");
  expect(complained).toMatch(told);
});
