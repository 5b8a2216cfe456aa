import { writeFileSync } from "node:fs";
import { type Coverage, coverageOf } from "./coverage.ts";
import { coveragePage, coveragePicture } from "./coverage-page.ts";
import { designs } from "./designs.ts";
import { globalRisk, populations } from "./global-risk.ts";
import { statedRisks } from "./stated-risk.ts";

/** Simulates every design, and writes the summary with its picture. `--records 1000` for more of them. */
const [option, value] = process.argv.slice(2);
const records = option === "--records" ? Number(value) : 400;
const seed = 20_260_101;
const found = designs.map((design, index): Coverage => {
  const one = coverageOf(design, records, seed + 100_000 * index);
  process.stdout.write(
    `${design.disturbance}, ${design.cycles} cycles, ${design.points} points: ${one.points.toFixed(3)}\n`,
  );
  return one;
});
const risks = statedRisks(2 * records, seed);
const globalRisks = populations.map((one) => globalRisk(one, 2 * records, seed + 50_000_000));
writeFileSync(
  "docs/uncertainty-simulated.md",
  coveragePage(found, { date: new Date().toISOString().slice(0, 10), seed, risks, globalRisks }),
);
writeFileSync("docs/uncertainty-simulated.svg", coveragePicture(found));
