// Whole-process times of the command beside a floor of the same run; prints, asserts nothing about speed.
// usage: npm run bench
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { bundleSettings } from "../../bundle-settings.mjs";
import { captureDrawings } from "./capture-drawings.mjs";
import { manyCalibrations, oneCalibration, wholeDemo } from "./workbooks.mjs";

const pairs = 15;
const warmUps = 2;
const batchSize = 200;
const batchRuns = 3;
const command = "dist/cli.js";

if (!existsSync(command)) throw new Error("dist/cli.js is missing: run npm run build first");
const folder = mkdtempSync(join(tmpdir(), "spanwright-bench-"));
try {
  await run();
} finally {
  rmSync(folder, { recursive: true });
}

async function run() {
  const one = oneCalibration(join(folder, "one"));
  const floor = join(folder, "floor.mjs");
  const floorSource = fileURLToPath(import.meta.resolve("./floor.mjs"));
  await build({ ...bundleSettings, plugins: [], entryPoints: [floorSource], outfile: floor });
  const drawings = await captureDrawings(one, folder);
  const out = join(folder, "out");
  const floorOut = join(folder, "floor.svg");
  console.log(`node ${process.version}, ${availableParallelism()} processors; milliseconds, whole process`);

  const report = [command, "report", one, "--out", out];
  const times = { report: [], floor: [] };
  for (let pair = -warmUps; pair < pairs; pair += 1) {
    rmSync(out, { recursive: true, force: true });
    const a = timed(report);
    const b = timed([floor, drawings.file, floorOut]);
    if (pair >= 0) {
      times.report.push(a);
      times.floor.push(b);
    }
  }
  requireSamePictures(out, floorOut, drawings.count);
  const pairRatios = times.report.map((time, index) => time / times.floor[index]);
  console.log(
    `\none record, cold, against vega alone with the same ${drawings.count} pictures; ${pairs} pairs A B A B`,
  );
  show("spanwright report", times.report);
  show("floor", times.floor);
  console.log(
    `ratio of the medians ${(median(times.report) / median(times.floor)).toFixed(2)}, of the pairs ${spread(pairRatios, 2)}`,
  );

  console.log(`\nother commands, ${pairs} runs`);
  const demo = wholeDemo(join(folder, "demo"));
  show("node alone", repeated(["-e", "0"], pairs));
  show("--help", repeated([command, "--help"], pairs));
  show("check, one calibration", repeated([command, "check", one], pairs));
  show("check, the demo plant", repeated([command, "check", demo], pairs));

  const many = manyCalibrations(join(folder, "many"), batchSize);
  const batch = repeated([command, "report", many, "--out", join(folder, "many-out")], batchRuns, 0);
  console.log(`\n${batchSize} calibrations in one run, ${batchRuns} runs`);
  show("spanwright report", batch);
  console.log(`${((1000 * batchSize) / median(batch)).toFixed(1)} records a second`);
}

function timed(words) {
  const start = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, words, { encoding: "utf8" });
  const milliseconds = Number(process.hrtime.bigint() - start) / 1e6;
  if (status !== 0) throw new Error(`${words.join(" ")} ended with ${status}: ${stderr}`);
  return milliseconds;
}

function repeated(words, count, before = warmUps) {
  const times = Array.from({ length: before + count }, () => timed(words));
  return times.slice(before);
}

/** A floor that draws something else would compare nothing. */
function requireSamePictures(out, floorOut, count) {
  const [tag] = readdirSync(out);
  const page = readdirSync(join(out, tag)).find((name) => name.endsWith(".html"));
  const inPage = readFileSync(join(out, tag, page), "utf8").match(/<svg /gu)?.length;
  const inFloor = readFileSync(floorOut, "utf8").match(/<svg /gu)?.length;
  if (inPage !== count || inFloor !== count) {
    throw new Error(`the page has ${inPage} pictures, the floor ${inFloor}, ${count} were captured`);
  }
}

function median(times) {
  const sorted = [...times].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

function spread(values, decimals) {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return `median ${median(values).toFixed(decimals)} (${least.toFixed(decimals)} to ${most.toFixed(decimals)})`;
}

function show(name, times) {
  console.log(`${name.padEnd(26)} ${spread(times, 0)}`);
}
