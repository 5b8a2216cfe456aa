import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { onTestFinished } from "vitest";
import type { Texts } from "../workbook/smallest-workbook.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
export const command = join(root, "dist/cli.js");

export type Run = { exitCode: number | null; output: string; complaints: string };

/** Runs the command that the build made, from the root of the project, as a user's shell would. */
export function spanwright(...words: readonly string[]): Run {
  return spanwrightGiven("", ...words);
}

/** The same with lines on its standard input. */
export function spanwrightGiven(input: string, ...words: readonly string[]): Run {
  if (!existsSync(command)) throw new Error("dist/cli.js is missing: run npm run build first");
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...words], {
    encoding: "utf8",
    cwd: root,
    input,
  });
  return { exitCode: status, output: stdout, complaints: stderr };
}

/** A new folder that is gone after the test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-cli-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Writes files below a folder, and gives the folder back. */
export function written(folder: string, texts: Texts): string {
  for (const [name, content] of Object.entries(texts)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
  return folder;
}

/** Every file below a folder, sorted, with / between the parts; none where there is no such folder. */
export function filesBelow(folder: string): readonly string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(folder.length + 1))
    .sort();
}
