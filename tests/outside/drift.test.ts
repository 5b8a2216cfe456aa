import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it, onTestFinished } from "vitest";
import { isDetermined } from "../../src/analysis/figures/figure.ts";
import { predictedError } from "../../src/analysis/years/drift-line.ts";
import { loopDrift } from "../../src/analysis/years/loop-drift.ts";
import { observedRate } from "../../src/analysis/years/observed-rate.ts";
import type { PlaceDrift } from "../../src/analysis/years/place-drift.ts";
import { describeWithProgram } from "./needs-program.ts";

/** Numbers up to 300 from fits of at most 14 points: 1e-13 of them, and a factor of a hundred for room. */
const tolerance = 1e-9;

const script = fileURLToPath(new URL("./drift.R", import.meta.url));
const range = { rangeLower: 0, rangeUpper: 1000 };

/** A loop whose test points, `distances`, were read on each of the days: an error for each. */
type Loop = { limit: number; distances: readonly number[]; visits: readonly { day: number; errors: number[] }[] };

describeWithProgram("Rscript", "base R finds the same drift, prediction interval, day and reliability", (rscript) => {
  it("of 120 invented loops of 1 to 7 test points and 3 to 14 records, with drifts from none to far beyond the limit", () => {
    const loops = inventedLoops(120);
    const fromR = figuresOfR(rscript, loops);
    const meetings = loops.flatMap((one, index) => expectSame(one, fromR.get(String(index)) ?? new Map()));
    // The day is no idle check: some forecasts meet a limit at once, some later, some never.
    expect(meetings.filter((meeting) => meeting === "never").length).toBeGreaterThan(30);
    expect(meetings.filter((meeting) => meeting === "at once").length).toBeGreaterThan(30);
    expect(meetings.filter((meeting) => meeting === "later").length).toBeGreaterThan(100);
  });
});

type Meeting = "never" | "at once" | "later";

function expectSame(loop: Loop, expected: ReadonlyMap<string, number>): readonly Meeting[] {
  const { points, leading } = loopDrift(
    loop.visits.map(({ day, errors }) => ({ day, adjustment: "none", asFound: phaseOf(loop, errors), asLeft: null })),
    range,
  );
  const rate = observedRate(loop.visits.flatMap(({ errors }) => errors.map((error) => Math.abs(error) <= loop.limit)));
  const { low, high } = rate as Exclude<typeof rate, { notDetermined: string }>;
  expectNear({ rateLow: low, rateHigh: high }, expected);
  const days = points.map((_, index) => expected.get(`meets ${index + 1}`) ?? Number.NaN);
  const first = Math.min(...days.filter((day) => day >= 0));
  if (isDetermined(leading) && Number.isFinite(first)) expect(days[leading.index]).toBe(first);
  return points.map((point, index) => expectSamePoint(point, index + 1, expected));
}

function phaseOf({ limit, distances }: Loop, errors: readonly number[]) {
  return {
    points: distances.map((point, index) => ({
      ...{ point, errorDistance: errors[index] as number, toleranceLow: -limit, toleranceHigh: limit },
    })),
  };
}

function expectSamePoint({ line, meets }: PlaceDrift, number: number, expected: ReadonlyMap<string, number>): Meeting {
  if (!isDetermined(line)) throw new RangeError(`there is no line: ${line.notDetermined}`);
  const { value, low, high } = predictedError(line, line.lastDay + 400);
  const { perYear } = line;
  const own = { perYear: perYear.value, perYearLow: perYear.low, perYearHigh: perYear.high, value, low, high };
  expectNear(Object.fromEntries(Object.entries(own).map(([name, found]) => [`${name} ${number}`, found])), expected);
  expect(isDetermined(meets) ? meets.day : -1).toBe(expected.get(`meets ${number}`));
  if (!isDetermined(meets)) return "never";
  return meets.isAlready ? "at once" : "later";
}

function expectNear(own: Readonly<Record<string, number>>, expected: ReadonlyMap<string, number>): void {
  for (const [figure, value] of Object.entries(own)) {
    expect(Math.abs(value - (expected.get(figure) ?? Number.NaN)), figure).toBeLessThan(tolerance);
  }
}

function figuresOfR(rscript: string, loops: readonly Loop[]): ReadonlyMap<string, ReadonlyMap<string, number>> {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-drift-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const file = join(folder, "series.csv");
  const rows = loops.flatMap(({ limit, distances, visits }, index) =>
    visits.flatMap(({ day, errors }) =>
      errors.map((error, point) => `${index},${distances[point]},${day},${error},${limit}`),
    ),
  );
  writeFileSync(file, `series,distance,day,error,limit\n${rows.join("\n")}\n`);
  const found = new Map<string, Map<string, number>>();
  for (const line of execFileSync(rscript, [script, file], { encoding: "utf8" }).trimEnd().split("\n")) {
    const [name = "", figure = "", value] = line.split(",");
    found.set(name, (found.get(name) ?? new Map<string, number>()).set(figure, Number(value)));
  }
  return found;
}

/** Records about a year apart; drift, scatter of a visit and of a point, and limit differ from loop to loop. */
function inventedLoops(count: number): readonly Loop[] {
  const next = seeded(20_261_125);
  return Array.from({ length: count }, (_, index) => {
    const drift = [0, 0.05, -0.4, 1.5][index % 4] as number;
    const ofVisit = [0.01, 0.2, 0.8][index % 3] as number;
    const ofPoint = [0.3, 0.02][index % 2] as number;
    const distances = Array.from({ length: 1 + (index % 7) }, (_, point) => 50 + 130 * point + Math.floor(40 * next()));
    let day = 18_000 + Math.floor(1000 * next());
    const visits = Array.from({ length: 3 + (index % 12) }, (_, year) => {
      day += 200 + Math.floor(300 * next());
      const [shift, tilt] = [ofVisit * (2 * next() - 1), ofVisit * (2 * next() - 1)];
      const errors = distances.map(
        (distance) => drift * year + shift + (tilt * distance) / 1000 + ofPoint * (2 * next() - 1),
      );
      return { day, errors };
    });
    return { limit: 2 + 4 * next(), distances, visits };
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
