import { cpSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import * as z from "zod";
import { runCommandLine } from "../../src/cli/command-line.ts";
import { printJson } from "../../src/cli/print-json.ts";
import { madeDemo } from "../made-demo.ts";
import { temporaryFolder } from "./built-command.ts";
import { recordingConsole } from "./recording-console.ts";

async function run(...words: readonly string[]) {
  const console = recordingConsole();
  const exitCode = await runCommandLine(words, console);
  return { exitCode, printed: console.printed.join("\n"), complained: console.complained };
}

const page = "ZT-250/2021-12-07_C-2021-060_r1.html";

/** A copy of the filing folder of the demonstration, that may be written to. */
function filed(): string {
  const folder = join(temporaryFolder(), "filed");
  cpSync(join(madeDemo(), "filed"), folder, { recursive: true });
  return folder;
}

test.each([
  ["check", () => ["data-demo"], 0],
  ["check", () => ["no-such-folder"], 2],
  ["report", () => ["data-demo", "--tag", "LT-310", "--out", temporaryFolder()], 0],
  ["due", () => [filed(), "--within", "1y"], 0],
  ["due", () => [temporaryFolder()], 2],
  ["register", () => [filed()], 0],
  ["register", () => [temporaryFolder()], 2],
  ["history", () => [filed(), "--tag", "LT-120"], 0],
  ["history", () => [filed(), "--tag", "none"], 2],
  ["trail", () => [filed()], 0],
  ["trail", () => [temporaryFolder()], 2],
  ["explain", () => ["U"], 0],
  ["explain", () => [], 0],
  ["explain", () => ["beauty"], 2],
  ["verify", () => [join(filed(), page)], 0],
] as const)("%s --json prints one document of its published form, and nothing else (%#)", async (name, words, code) => {
  const { exitCode, printed, complained } = await run(name, ...words(), "--json");
  expect({ exitCode, complained }).toEqual({ exitCode: code, complained: [] });
  const answer: unknown = JSON.parse(printed);
  const form = z.fromJSONSchema(JSON.parse(readFileSync(`docs/formats/${name}.schema.json`, "utf8")));
  expect(form.safeParse(answer).error?.issues ?? []).toEqual([]);
  expect(answer).toMatchObject({
    problems: code === 2 ? [expect.objectContaining({ severity: "stop" })] : expect.any(Array),
  });
  expect(printed).toMatch(/^[\n -~]*$/u);
});

test("whatever a name holds reaches no terminal, and is read back as it was", () => {
  const console = recordingConsole();
  const tag = "\u001b[31mLT\u202e😀µ";
  printJson(console, "due", { tag }, []);
  expect(console.printed[0]).toMatch(/^[\n -~]*$/u);
  expect(JSON.parse(console.printed[0] ?? "")).toEqual({ schema: "spanwright-due/1", tag, problems: [] });
});
