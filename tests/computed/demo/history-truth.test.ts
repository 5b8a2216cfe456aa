import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it, test } from "vitest";
import { overTheYears } from "../../../src/assembly/years/over-the-years.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { readSealedRecord } from "../../../src/record/read-sealed-record.ts";
import type { CalibrationRecord, PhaseRecord } from "../../../src/record/record-schema.ts";
import { recordSummary } from "../../../src/record/record-summary.ts";
import { madeDemo } from "../../made-demo.ts";
import { recordsOfFolder } from "../../outside/records-of-folder.ts";
import { historyLoops } from "./history-loops.mjs";

const folders = readdirSync("data-demo/history").filter((name) => /^\d{4}(?:-amended)?$/u.test(name));
const byFolder = new Map(
  await Promise.all(folders.map(async (name) => [name, await recordsOfFolder(`data-demo/history/${name}`)] as const)),
);
const truth = [...byFolder].filter(([name]) => name !== "2024").flatMap(([, { records }]) => records);

function recordOf(calibration: string): CalibrationRecord {
  const found = truth.find((record) => record.calibration.calibration === calibration);
  if (found === undefined) throw new RangeError(`no record of ${calibration}`);
  return found;
}

function yearsOf(tag: string) {
  const records = truth.filter(({ instrument }) => instrument.tag === tag);
  const oldestFirst = records.toSorted((one, other) => (dayOf(one) < dayOf(other) ? -1 : 1));
  const summaries = oldestFirst.map((record) => recordSummary(sealRecord(record)));
  const found = overTheYears(summaries, { intervalMonths: 12, instrument: oldestFirst.at(-1)?.instrument });
  if (found === undefined) throw new RangeError(`nothing over the years of ${tag}`);
  return found;
}

function dayOf({ calibration }: CalibrationRecord): string {
  return calibration.performedOn ?? "";
}

test.each(folders)("the workbook of %s is read without a problem", (name) => {
  expect(byFolder.get(name)?.problems).toEqual([]);
});

/** How many standard deviations noise may carry a figure away: 4 is passed once in 16 000. */
const noiseFactor = 4;

const phases = historyLoops.flatMap(({ visits, ...loop }) =>
  visits.flatMap(({ calibration, on, since, found, left }) => {
    const years = since === undefined ? 0 : (Date.parse(on) - Date.parse(since)) / 86_400_000 / 365.25;
    const asFound = { ...found, zero: found.zero + loop.drift * years };
    const one = { ...loop, calibration };
    return [
      { ...one, phase: "asFound" as const, planted: asFound },
      ...(left === undefined ? [] : [{ ...one, phase: "asLeft" as const, planted: left, wander: 0 }]),
    ];
  }),
);

describe.each(phases)("$tag $calibration $phase", ({ calibration, phase, planted, ...loop }) => {
  const { phases: found } = recordOf(calibration);
  const { counted, zeroError, spanError } = found[phase] as PhaseRecord;
  const [lower, upper] = loop.range;
  /** Of a single error: the planted noise and the rounding of the reference, percent of span. */
  const deviation = Math.hypot(loop.noise, (100 * loop.reference.step) / (upper - lower) / Math.sqrt(12));
  /** Variance of k equally spaced test points from 0 to 1: (k + 1) / (12 (k − 1)). */
  const spread = (counted.points + 1) / (12 * (counted.points - 1));

  it("has its planted zero error, within 4 √(σ² (1 + 1/(4 v)) / n + wander²)", () => {
    const bound = noiseFactor * Math.hypot(deviation * Math.sqrt((1 + 0.25 / spread) / counted.used), loop.wander);
    expect(Math.abs((zeroError?.percentSpan ?? Number.NaN) - planted.zero)).toBeLessThan(bound);
  });

  it("has its planted span error, within 4 σ / √(n v)", () => {
    const bound = (noiseFactor * deviation) / Math.sqrt(counted.used * spread);
    expect(Math.abs((spanError?.percentSpan ?? Number.NaN) - planted.span)).toBeLessThan(bound);
  });
});

test("what was found and left in each record is what was meant", () => {
  const statements = truth.map(({ instrument, phases: { asFound, asLeft } }) => [
    instrument.tag,
    asFound?.verdict ?? null,
    asLeft?.verdict ?? null,
  ]);
  const notInOrder = statements.filter(([, found, left]) => found !== "pass" || left !== null);
  expect(notInOrder.toSorted()).toEqual([
    ["LT-120", "pass", "pass"],
    ["LT-430", "fail", "pass"],
    ["LT-808", "fail", null],
    ["ZT-615", "fail", "pass"],
  ]);
});

describe("LT-120 drifts towards its limit since it was taught anew", () => {
  const { places } = yearsOf("LT-120");
  /** 0.11 % of the span of 2000 mm a year. */
  const plantedPerYear = 2.2;

  it.each(["line at the lower end", "line at the upper end"])("%s: the planted drift lies in its interval", (end) => {
    const { drift, records } = places.find(({ kind }) => kind === end) ?? {};
    expect(records).toBe(4);
    expect(drift?.low).toBeGreaterThan(0);
    expect(drift?.low).toBeLessThan(plantedPerYear);
    expect(drift?.high).toBeGreaterThan(plantedPerYear);
  });

  it("and is foretold to meet it after the last record, before the line itself is there in 2028", () => {
    const days = places.map(({ meets }) => meets?.on ?? "never").toSorted();
    expect(days[0]! > "2026-03-10").toBe(true);
    expect(days.at(-1)! < "2029-01-01").toBe(true);
  });
});

test("ZT-250 is stable: no drift to be seen, and a longer interval is proposed", () => {
  const { places, staircase } = yearsOf("ZT-250");
  for (const { drift } of places.filter(({ kind }) => kind !== "test point")) {
    expect(drift?.low).toBeLessThan(0);
    expect(drift?.high).toBeGreaterThan(0);
  }
  expect(staircase).toMatchObject({ from: 12, reason: "well inside" });
  expect(staircase?.months).toBeGreaterThan(12);
});

test("the filed amendment mends the one signal that its reason names, and says what follows from it", () => {
  const path = `${madeDemo()}/filed/LT-120/2024-03-12_C-2024-010_r2.html`;
  const found = readSealedRecord(readFileSync(path, "utf8"), path);
  if (!("record" in found)) throw new TypeError(found.doubts[0]?.says);
  const { reason = "", changes = [] } = found.record.amendment ?? {};
  const typed = changes.filter(({ place }) => place.startsWith("inputs.rows."));
  expect(typed).toHaveLength(1);
  expect(typed[0]?.place).toMatch(/^inputs\.rows\.readings\[\d+\]\.cells\.signal$/u);
  const [before, after] = [JSON.parse(typed[0]?.before ?? ""), JSON.parse(typed[0]?.after ?? "")] as [string, string];
  expect(reason).toContain(`entered as ${before} mA, the sheet of the day says ${after} mA`);
  expect(changes.some(({ place }) => place.startsWith("phases.asFound."))).toBe(true);
});

test("the register of the demo has a loop in every state but one, a finding to be decided, and one decided in the ledger", () => {
  const [head = "", ...rows] = readFileSync(`${madeDemo()}/filed/register.csv`, "utf8").trimEnd().split("\r\n");
  expect(head).toContain("days_left");
  const states = rows.map((row) => [
    row.split(",")[0],
    /,(overdue|due soon|not due|not in tolerance|no date),/u.exec(row)?.[1],
  ]);
  expect(states).toEqual([
    ["LT-120", "not due"],
    ["LT-430", "overdue"],
    ["LT-808", "not in tolerance"],
    ["ZT-250", "due soon"],
    ["ZT-615", "overdue"],
  ]);
  const page = readFileSync(`${madeDemo()}/filed/register.html`, "utf8");
  const open = /<section aria-labelledby="open-title">[\s\S]*?<\/section>/u.exec(page)?.[0] ?? "";
  expect(open.match(/<a href="[^"]+"/gu)).toEqual(['<a href="LT-808/2026-09-08_C-2026-051_r1.html"']);
  const ledger = readFileSync(`${madeDemo()}/filed/ledger.jsonl`, "utf8");
  expect(ledger.match(/"action":"decided"/gu)).toHaveLength(1);
});
