import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it, onTestFinished } from "vitest";
import { type DatedError, type DriftLine, driftLine, predictedError } from "../../src/analysis/years/drift-line.ts";
import { limitCrossing } from "../../src/analysis/years/limit-crossing.ts";
import { observedRate } from "../../src/analysis/years/observed-rate.ts";
import { describeWithProgram } from "./needs-program.ts";

/** Numbers up to 300 from fits of at most 14 points: 1e-13 of them, and a factor of a hundred for room. */
const tolerance = 1e-9;

const script = fileURLToPath(new URL("./drift.R", import.meta.url));

type Series = { errors: readonly DatedError[]; limit: number };

describeWithProgram("Rscript", "base R finds the same drift, prediction interval, day and reliability", (rscript) => {
  it("in 120 invented histories of 3 to 14 records, with drifts from none to far beyond the limit", () => {
    const series = inventedSeries(120);
    const fromR = figuresOfR(rscript, series);
    const meetings = series.map((one, index) => expectSame(one, fromR.get(String(index)) ?? new Map()));
    // The day is no idle check: some forecasts meet a limit at once, some later, some never.
    expect(meetings.filter((meeting) => meeting === "never").length).toBeGreaterThan(10);
    expect(meetings.filter((meeting) => meeting === "at once").length).toBeGreaterThan(10);
    expect(meetings.filter((meeting) => meeting === "later").length).toBeGreaterThan(30);
  });
});

function expectSame({ errors, limit }: Series, expected: ReadonlyMap<string, number>): "never" | "at once" | "later" {
  const line = driftLine(errors) as DriftLine;
  const crossing = limitCrossing(line, { low: -limit, high: limit }, line.lastDay);
  const later = predictedError(line, line.lastDay + 400);
  const rate = observedRate(errors.map(({ error }) => Math.abs(error) <= limit));
  const { low: rateLow, high: rateHigh } = rate as Exclude<typeof rate, { notDetermined: string }>;
  const own = {
    perYear: line.perYear.value,
    perYearLow: line.perYear.low,
    perYearHigh: line.perYear.high,
    ...later,
    rateLow,
    rateHigh,
  };
  for (const [figure, value] of Object.entries(own)) {
    expect(Math.abs(value - (expected.get(figure) ?? Number.NaN)), figure).toBeLessThan(tolerance);
  }
  expect(crossing?.day ?? -1).toBe(expected.get("meets"));
  if (crossing === undefined) return "never";
  return crossing.isAlready ? "at once" : "later";
}

function figuresOfR(rscript: string, series: readonly Series[]): ReadonlyMap<string, ReadonlyMap<string, number>> {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-drift-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const file = join(folder, "series.csv");
  const rows = series.flatMap(({ errors, limit }, index) =>
    errors.map(({ day, error }) => `${index},${day},${error},${limit}`),
  );
  writeFileSync(file, `series,day,error,limit\n${rows.join("\n")}\n`);
  const found = new Map<string, Map<string, number>>();
  for (const line of execFileSync(rscript, [script, file], { encoding: "utf8" }).trimEnd().split("\n")) {
    const [name = "", figure = "", value] = line.split(",");
    found.set(name, (found.get(name) ?? new Map<string, number>()).set(figure, Number(value)));
  }
  return found;
}

/** Records about a year apart; drift, scatter and limit differ from history to history. */
function inventedSeries(count: number): readonly Series[] {
  const next = seeded(20_261_125);
  return Array.from({ length: count }, (_, index) => {
    const drift = [0, 0.05, -0.4, 1.5][index % 4] as number;
    const scatter = [0.01, 0.2, 0.8][index % 3] as number;
    let day = 18_000 + Math.floor(1000 * next());
    const errors = Array.from({ length: 3 + (index % 12) }, (_, year) => {
      day += 200 + Math.floor(300 * next());
      return { day, error: drift * year + scatter * (2 * next() - 1) };
    });
    return { errors, limit: 2 + 4 * next() };
  });
}

/** Lehmer generator (Park and Miller, Communications of the ACM 31, 1192 (1988)), made into numbers from 0 to 1. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
