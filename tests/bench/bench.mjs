// Whole-process times of the command beside floors of the same run, as a table; asserts nothing about speed.
// usage: npm run bench [-- --write], which writes docs/speed.md too
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { flatReadings, manyCalibrations, oneCalibration, wholeDemo } from "./workbooks.mjs";

const pairs = 9;
const warmUps = 2;
const batchSize = 60;
const batchRuns = 3;
const command = "dist/cli.js";
const byHand = fileURLToPath(import.meta.resolve("./by-hand.R"));

if (!existsSync(command)) throw new Error("dist/cli.js is missing: run npm run build first");
const folder = mkdtempSync(join(tmpdir(), "spanwright-bench-"));
try {
  run();
} finally {
  rmSync(folder, { recursive: true });
}

function run() {
  const one = oneCalibration(join(folder, "one"));
  const many = manyCalibrations(join(folder, "many"), batchSize);
  const demo = wholeDemo(join(folder, "demo"));
  const out = join(folder, "out");
  const rows = [];
  const add = (what, times, floor, floorTimes) => rows.push({ what, times, floor, floorTimes });

  const report = () => timed([command, "report", one, "--out", out]);
  if (spawnSync("Rscript", ["--version"]).status === 0) {
    const flat = flatReadings(one, join(folder, "one.csv"));
    const page = () => timed([byHand, flat, join(folder, "r-one")], "Rscript");
    add("one record, cold", ...withFloor("an R page of the same readings", paired(report, page)));
    const flatMany = flatReadings(many, join(folder, "many.csv"));
    const batch = () => timed([command, "report", many, "--out", join(folder, "many-out")]);
    const pages = () => timed([byHand, flatMany, join(folder, "r-many")], "Rscript");
    add(`${batchSize} records`, ...withFloor(`${batchSize} such R pages`, paired(batch, pages, batchRuns, 0)));
  }
  const node = () => timed(["-e", "0"]);
  for (const words of [["--help"], ["check", one], ["check", demo], ["due", "reports/filed"]]) {
    const said = words.map((word) => ({ [one]: "(one calibration)", [demo]: "(the demo)" })[word] ?? word);
    add(
      said.join(" "),
      ...withFloor(
        "node alone",
        paired(() => timed([command, ...words]), node),
      ),
    );
  }
  const verify = () => timed([command, "verify", join(folder, "many-out")]);
  add(`verify ${2 * batchSize} files`, ...withFloor("node alone", paired(verify, node, batchRuns, 0)));

  const text = page(rows);
  console.log(text);
  if (process.argv.includes("--write")) writeFileSync("docs/speed.md", text);
}

function withFloor(floor, [times, floorTimes]) {
  return [times, floor, floorTimes];
}

/** A B A B …, so that whatever else the machine does falls on both. */
function paired(one, other, count = pairs, before = warmUps) {
  const times = [[], []];
  for (let pair = -before; pair < count; pair += 1) {
    const found = [one(), other()];
    if (pair >= 0) for (const place of [0, 1]) times[place].push(found[place]);
  }
  return times;
}

function page(rows) {
  const day = new Date().toISOString().slice(0, 10);
  const lines = rows.map(({ what, times, floor, floorTimes }) => {
    const ratio = median(times.map((time, place) => time / floorTimes[place]));
    return `| ${what} | ${spread(times)} | ${floor} | ${spread(floorTimes)} | ${ratio.toFixed(2)} |`;
  });
  return `# How long it takes

Made by \`npm run bench -- --write\` on ${day}; do not edit. Node ${process.version}, ${cpus().length} processors (${cpus()[0]?.model ?? "unknown"}).

Milliseconds of whole processes, median (least to greatest), each beside a floor that ran in turn with it: an R page of four plots
and six figures of the same readings (\`tests/bench/by-hand.R\`), node that does nothing. The last column is the median of the ratios of the pairs. No test asserts a time.

| what | ms | floor | ms | ratio |
| --- | --- | --- | --- | --- |
${lines.join("\n")}
`;
}

function timed(words, program = process.execPath) {
  const start = process.hrtime.bigint();
  const { status, stderr } = spawnSync(program, words, { encoding: "utf8" });
  const milliseconds = Number(process.hrtime.bigint() - start) / 1e6;
  if (status !== 0) throw new Error(`${words.join(" ")} ended with ${status}: ${stderr}`);
  return milliseconds;
}

function median(times) {
  const sorted = [...times].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

function spread(times) {
  const [least, most] = [Math.min(...times), Math.max(...times)];
  return `${median(times).toFixed(0)} (${least.toFixed(0)} to ${most.toFixed(0)})`;
}
