import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, renameSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { command } from "./cli/built-command.ts";

const root = fileURLToPath(new URL("..", import.meta.url));

/**
 * Everything that `npm run demo` writes into reports, made by the command that the build made: once a build, for git
 * keeps a handful of its pages only.
 */
export function madeDemo(): string {
  const folder = join(tmpdir(), `spanwright-demo-${statSync(command).mtimeMs}-${statSync(command).ino}`);
  if (!existsSync(folder)) {
    const making = mkdtempSync(`${folder}-`);
    makeDemo(making);
    try {
      renameSync(making, folder);
    } catch {
      rmSync(making, { recursive: true }); // Another process was first.
    }
  }
  return folder;
}

function makeDemo(into: string): void {
  const run = (...words: string[]) =>
    execFileSync(process.execPath, words, { encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] });
  run(join(root, "tests/computed/demo/report-demo.mjs"), into);
  run(join(root, "tests/computed/demo/file-demo.mjs"), join(into, "filed"));
}
