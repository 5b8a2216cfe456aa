/**
 * Makes the records of data-demo with the command that was built, without the list of its files: else every change of
 * the program, whatever it changes, would change every page of the demonstration.
 *
 *   node tests/computed/demo/report-demo.mjs [folder, by default reports]
 */
import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const into = resolve(process.argv[2] ?? join(root, "reports"));
const program = mkdtempSync(join(tmpdir(), "spanwright-unlisted-"));
try {
  cpSync(join(root, "dist"), join(program, "dist"), { recursive: true });
  cpSync(join(root, "package.json"), join(program, "package.json"));
  rmSync(join(program, "dist/program.sha256"));
  const words = [join(program, "dist/cli.js"), "report", join(root, "data-demo"), "--out", into];
  execFileSync(process.execPath, words, { stdio: ["ignore", "inherit", "inherit"] });
} finally {
  rmSync(program, { recursive: true });
}
