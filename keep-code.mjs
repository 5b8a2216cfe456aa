// Run by the build in a process of its own: the command does what it is mostly used for, and the code that V8 compiled
// on the way is written into one file, of each part that was loaded.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { writeCode } from "./command-parts.mjs";

const { partLoader } = createRequire(import.meta.url)("./dist/load-part.js");
const scripts = new Map();
const load = partLoader(resolve("dist"), (name, script) => scripts.set(name, script));
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
const codes = new Map([...scripts].map(([name, script]) => [name, script.createCachedData()]));
writeCode("dist", JSON.parse(readFileSync("dist/parts.json", "utf8")), codes);
