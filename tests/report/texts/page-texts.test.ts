import { expect, test } from "vitest";
import { phasesOf } from "../../../src/record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord } from "../../../src/record/record-schema.ts";
import { outsideWords, toleranceFact, verdictWords, worstWords } from "../../../src/report/texts/page-texts.ts";
import { sampleRecord } from "../../charts/sample-record.ts";

function phase(
  verdicts: readonly ("pass" | "fail" | "left out" | "fault")[],
  change: Partial<PhaseRecord> = {},
): PhaseRecord {
  const record = sampleRecord({ phases: ["asFound"] }).phases.asFound;
  if (record === undefined) throw new RangeError("the sample has no phase as found");
  const readings = verdicts.map((kind, index) => {
    const { verdict: _, ...reading } = record.readings[index] ?? record.readings[0]!;
    if (kind === "left out") return { ...reading, leftOut: "target moved" };
    if (kind === "fault") return { ...reading, leftOut: "fault signal", verdict: "fail" as const };
    return { ...reading, verdict: kind };
  });
  return { ...record, readings, ...change };
}

test("the phases come in the order of the work, and only those that there are", () => {
  expect(phasesOf(sampleRecord()).map(({ title }) => title)).toEqual(["As found", "As left"]);
  expect(phasesOf(sampleRecord({ phases: ["asLeft"] })).map(({ name }) => name)).toEqual(["asLeft"]);
});

test("a tolerance that was written in words stands beside its meaning; one in numbers does not", () => {
  const record = sampleRecord();
  const written = (tolerance: string): CalibrationRecord => {
    const [row] = record.inputs.rows.instruments;
    const rows = { ...record.inputs.rows, instruments: row ? [{ ...row, cells: { ...row.cells, tolerance } }] : [] };
    return { ...record, inputs: { ...record.inputs, rows } };
  };
  expect(toleranceFact(written("0.5"))).toBe("±0.5 % of span");
  expect(toleranceFact(written("0.5 %FS"))).toBe("±0.5 % of span (written: 0.5 %FS)");
});

test("how many readings lie outside is counted over those that were judged", () => {
  expect(outsideWords(sampleRecord(), phase(["pass", "pass", "left out"]))).toMatch(
    /All 2 readings lie inside the tolerance\.$/u,
  );
  expect(outsideWords(sampleRecord(), phase(["pass", "fail", "left out"]))).toMatch(
    /1 of 2 readings lies outside the tolerance\.$/u,
  );
  expect(outsideWords(sampleRecord(), phase(["pass", "fail", "fault"]))).toMatch(
    /2 of 3 readings lie outside the tolerance; 1 of them reported a fault instead of a distance\.$/u,
  );
  expect(outsideWords(sampleRecord(), phase(["pass", "left out"]))).toMatch(/The only reading lies inside/u);
  expect(outsideWords(sampleRecord(), phase(["fail", "fail"]))).toMatch(/All 2 readings lie outside/u);
});

test("where the stages of the loop differ, each is told", () => {
  expect(outsideWords(sampleRecord(), phase(["fail"], { verdicts: { sensor: "pass", controller: "fail" } }))).toMatch(
    /^The sensor alone: pass; what the controller shows: fail\. The only reading lies outside the tolerance\.$/u,
  );
});

test("the worst reading is told with error, place and share of its tolerance", () => {
  const record = sampleRecord({ phases: ["asFound"] });
  const found = phase(["fail"]);
  const reading = { ...found.readings[0]!, reference: 1650, row: 7 };
  const worst = { of: "sensor", row: 7, errorDistance: 14.2, errorPercentSpan: 0.789, partOfTolerance: 1.578 } as const;
  const style = { distance: 1, percent: 2, value: 0 };
  const whole = { ...found, readings: [reading], decimals: { ...found.decimals, reference: 0 } };
  expect(worstWords(record, { ...whole, worst }, style)).toBe(
    "+14.2 mm (+0.79 % of span) at 1650 mm, 158 % of the tolerance there",
  );
  expect(worstWords(record, { ...whole, worst: null }, style)).toBeUndefined();
});

test.each<[keyof typeof verdictWords, RegExp]>([
  ["pass", /^in tolerance$/u],
  ["conditional pass", /^in tolerance, but/u],
  ["conditional fail", /^out of tolerance, by less/u],
  ["fail", /^not inside/u],
  ["cannot be decided", /uncertainty is too large/u],
])("the verdict %s is its own word, with a meaning that does not contradict it", (verdict, meaning) => {
  expect(verdictWords[verdict].word.toLowerCase()).toBe(verdict);
  expect(verdictWords[verdict].meaning).toMatch(meaning);
});

test("every verdict is among those", () => {
  expect(Object.keys(verdictWords)).toHaveLength(5);
});
