import type { Command } from "commander";
import { expect, test } from "vitest";
import { programOf } from "../../src/cli/command-line.ts";
import { helpAfter } from "../../src/cli/help-after.ts";
import { recordingConsole } from "./recording-console.ts";

const leavesOf = (command: Command): readonly Command[] =>
  command.commands.length === 0 ? [command] : command.commands.flatMap(leavesOf);
const leaves = leavesOf(programOf(recordingConsole(), () => undefined)).map((one) => [one.name(), one] as const);

test.each(leaves)(
  "the help of %s ends with an example that names what the command has, and with exit codes",
  (_, command) => {
    const text = helpAfter(command);
    const [, example = ""] = /Example:\n {2}spanwright (.*)\n/u.exec(text) ?? [];
    const names = command.parent?.name() === "keys" ? `keys ${command.name()}` : command.name();
    expect(`${example} `.startsWith(`${names} `)).toBe(true);
    const used = example.match(/--[a-z-]+/gu) ?? [];
    const known = command.options.map(({ long }) => long);
    for (const option of used) expect(known).toContain(option);
    for (const option of command.options.filter(({ mandatory }) => mandatory)) expect(used).toContain(option.long);
    expect(text).toContain("Ends with:");
    expect(text.includes("1 any doubt")).toBe(command.name() === "verify");
  },
);

test("the version is told by the short option that people try first", async () => {
  const program = programOf(recordingConsole(), () => undefined);
  expect(program.options.map(({ short, long }) => [short, long])).toContainEqual(["-v", "--version"]);
});
