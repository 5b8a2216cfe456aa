import { expect, test } from "vitest";
import { selfTestCommand } from "../../../src/cli/commands/self-test-command.ts";
import { programForRecord } from "../../../src/cli/tested-program.ts";
import type { ExampleResult } from "../../../src/jobs/self-test/run-self-test.ts";
import { spanwright } from "../built-command.ts";
import { recordingConsole } from "../recording-console.ts";

const result = (isPassed: boolean): ExampleResult => ({
  ...{ name: "a line", source: "a book, 1", figures: 1, isPassed, worst: "slope", gap: "2 of 1" },
});

test("the built program comes out as published within two seconds, and says which program it is", () => {
  const { exitCode, output, complaints } = spanwright("self-test");
  expect({ exitCode, complaints }).toEqual({ exitCode: 0, complaints: "" });
  expect(output).toMatch(
    /^spanwright \S+, SHA-256 of the list of its files [0-9a-f]{64}; its files are as they were/mu,
  );
  expect(output).toMatch(/^(\d+) of \1 examples as published$/mu);
});

test("an example that is off, and a file that was changed, end it with 1", async () => {
  const off = recordingConsole();
  expect(await selfTestCommand(off, Promise.resolve({ results: [result(false)], digest: undefined }))).toBe(1);
  expect(off.complained).toEqual(["wrong  self-test  a line (a book, 1): slope is off by 2 of 1"]);
  const changed = recordingConsole();
  const digest = { sha256: "0".repeat(64), changed: ["cli.js"] };
  expect(await selfTestCommand(changed, Promise.resolve({ results: [result(true)], digest }))).toBe(1);
  expect(changed.complained).toEqual(["wrong  self-test  changed since the program was built: cli.js"]);
});

test("a record says how many examples came out as published; nothing is written by a program that fails", async () => {
  expect(await programForRecord(recordingConsole())).toEqual({ selfTest: { passed: 17, of: 17 } });
  const failing = recordingConsole();
  const program = Promise.resolve({ results: [result(false)], digest: undefined });
  expect(await programForRecord(failing, program)).toBeUndefined();
  expect(failing.complained.at(-1)).toContain("wrote nothing");
});
