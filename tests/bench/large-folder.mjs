// register, yearly files and due over a folder of 50 000 filed records; prints, asserts nothing about speed.
// usage: npm run bench:folder [records]
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import { bundleSettings } from "../../bundle-settings.mjs";

const records = Number(process.argv[2] ?? 50_000);
const years = 10;
const runs = 5;
const folder = mkdtempSync(join(tmpdir(), "spanwright-folder-"));
try {
  await run();
} finally {
  rmSync(folder, { recursive: true });
}

async function run() {
  const maker = join(folder, "file-many.mjs");
  const entryPoints = [fileURLToPath(import.meta.resolve("./file-many.ts"))];
  await build({ ...bundleSettings, entryPoints, outfile: maker });
  const { fileMany } = await import(pathToFileURL(maker).href);
  const base = JSON.parse(readFileSync("reports/LT-640/C-2026-047.json", "utf8"));
  const filed = join(folder, "filed");
  const start = performance.now();
  await fileMany(base, filed, Math.round(records / years), years);
  console.log(
    `node ${process.version}; ${records} records of ${Math.round(records / years)} loops filed in ${seconds(start)}`,
  );
  for (const name of ["ledger.jsonl", "index.jsonl"]) {
    console.log(`${name} ${(statSync(join(filed, name)).size / 1e6).toFixed(1)} MB`);
  }
  show("node alone", ["-e", "0"]);
  show("parsing the index alone", [
    "-e",
    `for (const l of require("fs").readFileSync(${JSON.stringify(join(filed, "index.jsonl"))}, "utf8").split("\\n")) l && JSON.parse(l)`,
  ]);
  show("register", ["dist/cli.js", "register", filed]);
  show("due --within 30d", ["dist/cli.js", "due", filed]);
  yearly(filed);
  rmSync(join(filed, "index.jsonl"));
  const again = performance.now();
  spawnSync(process.execPath, ["dist/cli.js", "due", filed]);
  console.log(`due after the index was lost, which is made anew from the pages ${seconds(again)}`);
}

function show(name, words) {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    const { status, stderr } = spawnSync(process.execPath, words, { encoding: "utf8" });
    if (status !== 0) throw new Error(stderr);
    return performance.now() - start;
  }).sort((one, other) => one - other);
  console.log(
    `${name}: median ${times[runs >> 1].toFixed(0)} ms, ${times[0].toFixed(0)} to ${times.at(-1).toFixed(0)}`,
  );
}

/** Once, for it reads every page: time of the processor, and the most memory that was held. */
function yearly(filed) {
  const out = join(folder, "fleet");
  const tell =
    "data:text/javascript,process.on('exit',()=>{const{maxRSS,userCPUTime,systemCPUTime}=process.resourceUsage();console.error((userCPUTime+systemCPUTime)/1e6,maxRSS/1e3)})";
  const start = performance.now();
  const words = ["--import", tell, "dist/cli.js", "register", filed, "--parquet", out];
  const { status, stderr } = spawnSync(process.execPath, words, { encoding: "utf8" });
  if (status !== 0) throw new Error(stderr);
  const [processor, peak] = stderr.trim().split(" ").map(Number);
  const size = readdirSync(out).reduce((sum, name) => sum + statSync(join(out, name)).size, 0);
  console.log(
    `register --parquet: ${seconds(start)}, ${processor.toFixed(1)} s of the processor; at most ${peak.toFixed(0)} MB; ${(size / 1e6).toFixed(1)} MB written`,
  );
}

function seconds(start) {
  return `${((performance.now() - start) / 1000).toFixed(1)} s`;
}
