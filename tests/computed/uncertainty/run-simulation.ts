import { writeFileSync } from "node:fs";
import { type Coverage, coverageOf } from "./coverage.ts";
import { designs } from "./designs.ts";
import { falseAlarms } from "./false-alarms.ts";
import { forecastsOf } from "./forecasts.ts";
import { globalRisk, populations } from "./global-risk.ts";
import { withInterval } from "./shares.ts";
import { simulationPage } from "./simulation-page.ts";
import { coveragePicture, riskPicture } from "./simulation-pictures.ts";
import { statedRisks } from "./stated-risk.ts";

/** Simulates every design, and writes the summary with its pictures. `--records 4000` for more of them. */
const [option, value] = process.argv.slice(2);
const records = option === "--records" ? Number(value) : 1000;
const seed = 20_260_101;
const coverage = designs.map((design, index): Coverage => {
  const one = coverageOf(design, records, seed + 100_000 * index);
  process.stdout.write(`${design.disturbance}, ${design.cycles} × ${design.points}: ${withInterval(one.points)}\n`);
  return one;
});
const risks = {
  out: statedRisks("out", 4 * records, seed + 10_000_000),
  both: statedRisks("both", 4 * records, seed + 20_000_000),
};
const globalRisks = populations.map((one, index) => {
  return globalRisk(one, 4 * records, seed + 30_000_000 + 1_000_000 * index);
});
const forecasts = [3, 6, 10].map((visits) => forecastsOf(visits, records, seed + 50_000_000 + 1_000_000 * visits));
const alarms = falseAlarms(records, seed + 70_000_000);
const date = new Date().toISOString().slice(0, 10);
const simulation = { date, seed, coverage, risks, globalRisks, forecasts, falseAlarms: alarms };
writeFileSync("docs/uncertainty-simulated.md", simulationPage(simulation));
writeFileSync("docs/uncertainty-simulated.svg", coveragePicture(coverage));
writeFileSync("docs/uncertainty-simulated-risk.svg", riskPicture(risks));
