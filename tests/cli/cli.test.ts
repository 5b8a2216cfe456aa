import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, test } from "vitest";
import packageFile from "../../package.json" with { type: "json" };
import { smallestWorkbook } from "../workbook/smallest-workbook.ts";
import { command, spanwright, temporaryFolder, written } from "./built-command.ts";

test("the command prints to its output and gives its exit code to the shell", () => {
  expect(spanwright("--version")).toEqual({ exitCode: 0, output: `${packageFile.version}\n`, complaints: "" });
});

test("a fault of the command line goes to the complaints", () => {
  const { exitCode, output, complaints } = spanwright("report", "book", "--nothing");
  expect({ exitCode, output }).toEqual({ exitCode: 2, output: "" });
  expect(complaints).toContain("unknown option '--nothing'");
});

test("what would move a terminal's cursor does not reach it, even out of a path or an option", () => {
  const folder = written(join(temporaryFolder(), "red\u001b[31m"), smallestWorkbook);
  const runs = [
    spanwright("check", join(folder, "none\u009b2J")),
    spanwright("report", folder, "--out", join(folder, "out\u202e")),
    spanwright("new", join(folder, "new\u0007")),
    spanwright("report", folder, "--tag", "\u001b]0;title\u0007"),
    spanwright("report", folder, "--\u001b[2J"),
  ];
  for (const { output, complaints } of runs) {
    expect(output + complaints).not.toBe("");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what it looks for
    expect(output + complaints).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/u);
  }
});

test.skipIf(process.platform !== "linux")(
  "an output that is read no further ends nothing, one that is full ends with 2",
  () => {
    const help = (shell: string) =>
      spawnSync("bash", ["-c", shell, "bash", process.execPath, command], { encoding: "utf8" });
    const unread = help('set -o pipefail; "$1" "$2" explain | true; echo "$?"');
    expect([unread.stdout, unread.stderr]).toEqual(["0\n", ""]);
    const full = help('"$1" "$2" explain > /dev/full; echo "$?"');
    expect([full.stdout, full.stderr]).toEqual([
      "2\n",
      "the output could not be written: ENOSPC: no space left on device, write\n",
    ]);
  },
);
