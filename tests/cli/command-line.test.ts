import { expect, test } from "vitest";
import packageFile from "../../package.json" with { type: "json" };
import { programOf, runCommandLine } from "../../src/cli/command-line.ts";
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

test("a command that is named is the only one that is added, as it is among all of them", () => {
  const added = (only?: string) => programOf(recordingConsole(), () => undefined, only).commands;
  const all = added();
  expect(all.length).toBeGreaterThan(30);
  for (const command of all.filter((one) => one.name() !== "completion")) {
    const alone = added(command.name());
    expect(alone.map((one) => one.name())).toEqual([command.name()]);
    expect(alone[0]?.helpInformation()).toBe(command.helpInformation());
  }
  for (const listing of ["completion", "help", "repot", "toString"]) expect(added(listing)).toHaveLength(all.length);
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
