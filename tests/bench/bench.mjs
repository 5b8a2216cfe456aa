// Whole-process times and peaks of memory of the command beside floors of the same run, as a table; asserts nothing.
// usage: npm run bench [-- [--full] [--write]]: --full takes 2,000 records and 200 to be verified, in some ten minutes
// instead of two; --write writes docs/speed.md too
import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { flatReadings, manyCalibrations, oneCalibration, wholeDemo } from "./workbooks.mjs";

const isFull = process.argv.includes("--full");
const pairs = 9;
const warmUps = 2;
/** How many records, and in how many pairs. */
const batches = isFull
  ? [
      { size: 100, runs: 3 },
      { size: 2000, runs: 1 },
    ]
  : [{ size: 60, runs: 3 }];
const verifiedSize = isFull ? 200 : 60;
const command = "dist/cli.js";
const byHand = fileURLToPath(import.meta.resolve("./by-hand.R"));

if (!existsSync(command)) throw new Error("dist/cli.js is missing: run npm run build first");
// What is due is asked of the demo's filed records, which a fresh clone has not got yet.
if (!existsSync("reports/filed/ledger.jsonl")) {
  const { status } = spawnSync("npm", ["run", "demo"], { stdio: "ignore", shell: process.platform === "win32" });
  if (status !== 0) throw new Error("npm run demo failed: there are no filed records to ask what is due");
}
const folder = mkdtempSync(join(tmpdir(), "spanwright-bench-"));
try {
  await run();
} finally {
  rmSync(folder, { recursive: true });
}

async function run() {
  const one = oneCalibration(join(folder, "one"));
  const rows = [];
  const add = (what, floor, [runs, floorRuns]) => rows.push({ what, runs, floor, floorRuns });
  const node = () => timed(["-e", "0"]);

  if (spawnSync("Rscript", ["--version"]).status === 0) {
    const report = () => timed([command, "report", one, "--out", join(folder, "out")]);
    const flat = flatReadings(one, join(folder, "one.csv"));
    const page = () => timed([byHand, flat, join(folder, "r-one")], "Rscript");
    add("one record, cold", "an R page of the same readings", await paired(report, page));
    for (const { size, runs } of batches) {
      const many = manyCalibrations(join(folder, `many-${size}`), size);
      const flatMany = flatReadings(many, join(folder, `many-${size}.csv`));
      const batch = () => timed([command, "report", many, "--quiet", "--out", join(folder, `many-out-${size}`)]);
      const pages = () => timed([byHand, flatMany, join(folder, `r-many-${size}`)], "Rscript");
      add(`${size} records`, `${size} such R pages`, await paired(batch, pages, runs, 0));
    }
  }
  const demo = wholeDemo(join(folder, "demo"));
  for (const words of [["--help"], ["check", one], ["check", demo], ["due", "reports/filed"]]) {
    const said = words.map((word) => ({ [one]: "(one calibration)", [demo]: "(the demo)" })[word] ?? word);
    add(said.join(" "), "node alone", await paired(() => timed([command, ...words]), node));
  }
  const sealed = join(folder, "sealed");
  await timed([command, "report", manyCalibrations(join(folder, "many"), verifiedSize), "--quiet", "--out", sealed]);
  const verify = () => timed([command, "verify", sealed]);
  add(`verify ${verifiedSize} records, both files`, "node alone", await paired(verify, node, isFull ? 1 : 3, 0));

  const text = page(rows);
  console.log(text);
  if (process.argv.includes("--write")) writeFileSync("docs/speed.md", text);
}

/** A B A B …, so that whatever else the machine does falls on both. */
async function paired(one, other, count = pairs, before = warmUps) {
  const found = [[], []];
  for (let pair = -before; pair < count; pair += 1) {
    const both = [await one(), await other()];
    if (pair >= 0) for (const place of [0, 1]) found[place].push(both[place]);
  }
  return found;
}

function page(rows) {
  const day = new Date().toISOString().slice(0, 10);
  const lines = rows.map(({ what, runs, floor, floorRuns }) => {
    const ratio = median(runs.map(({ ms }, place) => ms / floorRuns[place].ms));
    return `| ${what} | ${spread(runs)} | ${peak(runs)} | ${floor} | ${spread(floorRuns)} | ${peak(floorRuns)} | ${ratio.toFixed(2)} |`;
  });
  return `# How long it takes

Made by \`npm run bench -- ${isFull ? "--full " : ""}--write\` on ${day}; do not edit. Node ${process.version}, ${cpus().length} processors (${cpus()[0]?.model ?? "unknown"}).

Milliseconds of whole processes, median (least to greatest), each beside a floor that ran in turn with it: an R page of four plots
and six figures of the same readings (\`tests/bench/by-hand.R\`), node that does nothing. The last column is the median of the ratios of
the pairs. MB is the greatest memory that a process had at once, all its threads together (Linux). No test asserts a time.

| what | ms | MB | floor | ms | MB | ratio |
| --- | --- | --- | --- | --- | --- | --- |
${lines.join("\n")}
`;
}

/** Runs a program to its end: how long it took, and the most memory that it had. */
function timed(words, program = process.execPath) {
  return new Promise((done, failed) => {
    const start = process.hrtime.bigint();
    const child = spawn(program, words, { stdio: ["ignore", "ignore", "pipe"] });
    const said = [];
    let megabytes = 0;
    const look = setInterval(() => (megabytes = Math.max(megabytes, peakOf(child.pid))), 20);
    child.stderr.on("data", (bytes) => said.push(bytes));
    child.on("error", failed);
    child.on("close", (status) => {
      clearInterval(look);
      const ms = Number(process.hrtime.bigint() - start) / 1e6;
      if (status === 0) done({ ms, megabytes });
      else failed(new Error(`${words.join(" ")} ended with ${status}: ${Buffer.concat(said)}`));
    });
  });
}

/** 0 where the system does not say. */
function peakOf(pid) {
  try {
    return Number(/^VmHWM:\s*(\d+) kB$/mu.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1] ?? 0) / 1024;
  } catch {
    return 0;
  }
}

function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

function spread(runs) {
  const times = runs.map(({ ms }) => ms);
  return `${median(times).toFixed(0)} (${Math.min(...times).toFixed(0)} to ${Math.max(...times).toFixed(0)})`;
}

function peak(runs) {
  const most = Math.max(...runs.map(({ megabytes }) => megabytes));
  return most === 0 ? "" : most.toFixed(0);
}
