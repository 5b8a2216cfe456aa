import { cpSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { runCommandLine } from "../../src/cli/command-line.ts";
import { nodeFilingDisk } from "../../src/cli/node-filing-disk.ts";
import { checkFolder } from "../../src/filing/check-folder.ts";
import { madeDemo } from "../made-demo.ts";
import { temporaryFolder } from "./built-command.ts";
import { recordingConsole } from "./recording-console.ts";

const by = ["--reason", "the plant was rebuilt", "--by", "Ada Specimen"];

async function run(...words: readonly string[]) {
  const console = recordingConsole();
  const exitCode = await runCommandLine(words, console);
  return { exitCode, text: [...console.printed, ...console.complained].join("\n") };
}

test("a loop is renamed, moved and retired: history and due go by it, and the folder has no doubt", async () => {
  const filed = join(temporaryFolder(), "filed");
  cpSync(join(madeDemo(), "filed"), filed, { recursive: true });
  const retired = await run("retire", filed, "ZT-250", ...by);
  expect(retired).toMatchObject({ exitCode: 0, text: expect.stringContaining("ZT-250 is out of use") });
  expect((await run("due", filed, "--within", "10y")).text).not.toContain("ZT-250");
  const tag = /^\S+ +\S+ +(LT-\S+|ZT-\S+) /mu.exec((await run("due", filed, "--within", "10y")).text)?.[1] ?? "";
  expect(tag).not.toBe("");
  expect((await run("rename", filed, tag, "XT-1", ...by)).exitCode).toBe(0);
  expect((await run("move", filed, "XT-1", "--to", "hall 4", ...by)).exitCode).toBe(0);
  const history = await run("history", filed, "--tag", tag);
  expect(history).toMatchObject({ exitCode: 0, text: expect.stringContaining(`filed as ${tag}: `) });
  expect(history.text).toContain("at hall 4 since its last record");
  await run("register", filed);
  const table = readFileSync(join(filed, "register.csv"), "utf8");
  expect(table).toMatch(/^XT-1,[^\n]*hall 4/mu);
  expect(table).not.toMatch(new RegExp(`^${tag},`, "mu"));
  expect(table).toMatch(/^ZT-250,[^\n]*out of use/mu);
  expect((await run("move", filed, "XT-1", ...by)).text).toContain("--to <place> and --onto <tag>");
  const disposed = await run("dispose", filed, "--before", "2026-01-01", ...by);
  expect(disposed).toMatchObject({ exitCode: 0, text: expect.stringContaining("is disposed of") });
  expect(
    await checkFolder(
      nodeFilingDisk(() => undefined),
      filed,
    ),
  ).toEqual([]);
});
