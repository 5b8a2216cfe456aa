// Run by the build in a process of its own: the command does what it is mostly used for, and the code that V8 compiled
// on the way is written beside each part that was loaded.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const { partLoader } = createRequire(import.meta.url)("./dist/load-part.js");
const scripts = new Map();
const load = partLoader(resolve("dist/parts"), (path, script) => scripts.set(path, script));
const folder = mkdtempSync(join(tmpdir(), "spanwright-code-"));
const [records, filed] = [join(folder, "records"), join(folder, "filed")];
process.stdout.write = () => true;
const complaints = [];
process.stderr.write = (text) => complaints.push(text) > 0;
try {
  const { main } = load("./cli.js");
  const uses = [
    ["--help"],
    ["check", "data-demo"],
    ["report", "data-demo", "--tag", "LT-310", "--out", records],
    ["verify", records],
    ["file", records, "--into", filed, "--signed-on-paper", "nowhere"],
    ["due", filed],
  ];
  for (const words of uses) {
    await main(words);
    if (process.exitCode !== 0) throw new Error(`${words.join(" ")}: ${complaints.join("")}`);
  }
} finally {
  rmSync(folder, { recursive: true });
}
for (const [path, script] of scripts) writeFileSync(`${path}.code`, script.createCachedData());
