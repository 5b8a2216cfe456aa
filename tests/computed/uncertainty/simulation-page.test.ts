import { expect, it } from "vitest";
import { coverageOf } from "./coverage.ts";
import { falseAlarms } from "./false-alarms.ts";
import { forecastsOf } from "./forecasts.ts";
import { globalRisk, populations } from "./global-risk.ts";
import { simulationPage } from "./simulation-page.ts";
import { coveragePicture, riskPicture } from "./simulation-pictures.ts";
import { statedRisks } from "./stated-risk.ts";

const seed = 13_000_000;

it("the summary has a row for everything that was simulated, and no number that is none", () => {
  const coverage = [coverageOf({ disturbance: "coarse display", cycles: 2, points: 3 }, 3, seed)];
  const risks = { out: statedRisks("out", 6, seed), both: statedRisks("both", 6, seed) };
  const globalRisks = populations.slice(1, 2).map((one) => globalRisk(one, 6, seed, 60));
  const forecasts = [forecastsOf(3, 2, seed)];
  const page = simulationPage({
    ...{ date: "2026-11-27", seed, coverage, risks, globalRisks, forecasts },
    falseAlarms: falseAlarms(2, seed, 1),
  });
  expect(page).toContain("| coarse display | 2 | 3 | ");
  expect(page).toContain("| guard band, 0 U | white noise | 5 | ");
  expect(page).toContain("| the cycles differ | white noise | 2 | 2 | ");
  expect(page).not.toMatch(/NaN|undefined|Infinity/u);
  expect(coveragePicture(coverage)).toContain("coarse display, 2 × 3");
  expect(riskPicture(risks)).not.toMatch(/NaN|undefined/u);
});
