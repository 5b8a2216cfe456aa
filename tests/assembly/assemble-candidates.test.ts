import { expect, test } from "vitest";
import { assembleCandidates } from "../../src/assembly/assemble-candidates.ts";
import type { CalibrationRows, TableRow } from "../../src/model/calibration-case.ts";
import type { Candidate } from "../../src/model/instrument.ts";
import { candidatesSchema } from "../../src/record/candidates-schema.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { expectNear } from "../analysis/sample-loop.ts";
import { frozen } from "../charts/frozen.ts";
import { sampleRecord } from "../charts/sample-record.ts";
import { soundSpeedOfMixture } from "../computed/demo/sound-speed-of-mixture.mjs";
import { demoRecord } from "../report/demo-records.ts";
import { candidateWith } from "../verdict/replacement/sample-loop-needs.ts";

type Verdict = NonNullable<CalibrationRecord["phases"]["asFound"]>["verdict"];

/** A loop of 200 to 1200 mm whose last phase has a verdict, and whose recommendation an action. */
function recordWith(verdict: Verdict, action = "leave", instrument: object = {}): CalibrationRecord {
  const record = structuredClone(sampleRecord({ phases: ["asFound"] }));
  const { asFound } = record.phases;
  const advised = record.recommendation?.asFound;
  if (asFound === undefined || advised === undefined) throw new TypeError("the sample has a phase and an advice");
  asFound.verdict = verdict;
  Object.assign(advised, { action, also: [] });
  Object.assign(record.instrument, instrument);
  return frozen(record);
}

const rowsOf = (...candidates: readonly Candidate[]) =>
  frozen({
    readings: [],
    files: [],
    candidates: candidates.map(
      (row, index): TableRow<Candidate> => ({
        row,
        file: "candidates.csv",
        line: index + 2,
        cells: { candidate: row.candidate, tags: "LT-204; LT-9" },
      }),
    ),
  }) as unknown as CalibrationRows;

const becauseOf = (verdict: Verdict, action?: string) =>
  assembleCandidates(recordWith(verdict, action), rowsOf(candidateWith())).candidates?.because;

test("without candidates there is no such part, whatever the verdict", () => {
  expect(assembleCandidates(recordWith("fail", "replace"), rowsOf())).toEqual({});
});

test.each<[Verdict, string, string | undefined]>([
  ["pass", "leave", undefined],
  ["conditional pass", "leave", undefined],
  [null, "cannot be decided", undefined],
  ["pass", "re-teach", undefined],
  ["conditional fail", "leave", "the loop does not pass"],
  ["fail", "re-teach", "the loop does not pass"],
  ["cannot be decided", "leave", "the loop does not pass"],
  ["fail", "replace", "replacing is recommended"],
  ["pass", "replace", "replacing is recommended"],
])("a loop that is left with %s, and an advice to %s: %s", (verdict, action, because) => {
  expect(becauseOf(verdict, action)).toBe(because);
});

test("replacing may stand among the later steps", () => {
  const record = structuredClone(recordWith("pass"));
  const advised = record.recommendation?.asFound;
  if (advised === undefined) throw new TypeError("the sample has an advice");
  const { also: _, ...step } = advised;
  advised.also = [{ ...step, action: "replace" }];
  expect(assembleCandidates(record, rowsOf(candidateWith())).candidates?.because).toBe("replacing is recommended");
});

test("what holds is the advice as the loop was left, not as it was found", () => {
  const record = structuredClone(sampleRecord());
  const { asFound, asLeft } = record.recommendation ?? {};
  if (asFound === undefined || asLeft === undefined || record.phases.asLeft === undefined) throw new TypeError("both");
  record.phases.asLeft.verdict = "pass";
  Object.assign(asFound, { action: "replace" });
  Object.assign(asLeft, { action: "leave", also: [] });
  expect(assembleCandidates(record, rowsOf(candidateWith()))).toEqual({});
});

// Certificates: rail 0.8/2 = 0.4 mm; meter 0.016/2 mA · 62.5 mm/mA = 0.5 mm. Steps typed as left: 0.1 mm and 0.001 mA,
// half of each over √3: 0.0289 mm and 0.0180 mm; as found 1 mm would be 0.289 mm.
test("U of the standards takes the steps that were typed in the last phase", () => {
  const record = structuredClone(sampleRecord());
  if (record.phases.asLeft) record.phases.asLeft.verdict = "fail";
  const [rail] = record.standards;
  if (rail) record.standards.push({ ...rail, standard: "M-1", expandedUncertainty: 0.016, uncertaintyUnit: "mA" });
  const reading = (phase: string, reference: string) => ({
    row: { phase },
    file: "readings.csv",
    line: 2,
    cells: { reference, signal: "12.001" },
  });
  const rows = rowsOf(candidateWith());
  const readings = [reading("as_found", "700"), reading("as_left", "700.1")] as unknown as CalibrationRows["readings"];
  const accuracy = assembleCandidates(record, { ...rows, readings }).candidates?.fits[0]?.accuracy;
  const expected = 2 * Math.hypot(0.4, 0.5, 0.05 / Math.sqrt(3), (0.0005 * 62.5) / Math.sqrt(3));
  expectNear(accuracy?.standardsUncertainty, expected, 1e-12); // roundings of numbers near 1
});

test("a loop that was left in tolerance asks for no replacement, though it was found out", () => {
  const record = structuredClone(sampleRecord());
  if (record.phases.asFound && record.phases.asLeft) {
    record.phases.asFound.verdict = "fail";
    record.phases.asLeft.verdict = "pass";
  }
  delete record.recommendation;
  expect(assembleCandidates(record, rowsOf(candidateWith()))).toEqual({});
});

test("each comparison names its line, and the record carries the rows without the tags of other loops", () => {
  const unfit = candidateWith({ candidate: "B", rangeUpper: 1 });
  const found = assembleCandidates(recordWith("fail"), rowsOf(unfit, candidateWith({ candidate: "A" })));
  expect(found.candidates?.fits.map(({ candidate, row }) => [candidate, row])).toEqual([
    ["A", 3],
    ["B", 2],
  ]);
  expect(found.inputs?.rows.candidates).toEqual([
    { file: "candidates.csv", line: 2, cells: { candidate: "B" } },
    { file: "candidates.csv", line: 3, cells: { candidate: "A" } },
  ]);
  expect(found.inputs?.files).toEqual(recordWith("fail").inputs.files);
  expect(candidatesSchema.parse(found.candidates)).toEqual(found.candidates);
});

test("a laser loop that may become ultrasonic is asked for its air: −5 °C makes more than ±5 mm at 1200 mm", () => {
  const place = { principle: "laser", taughtAt: 20, airMin: -5, airMax: 30 };
  const candidate = candidateWith({ temperatureCompensated: false });
  const cells = assembleCandidates(recordWith("fail", "leave", place), rowsOf(candidate)).candidates?.fits[0]?.cells;
  const air = cells?.find(({ demand }) => demand === "air temperature");
  expect(air?.result).toBe("does not fit");
  const told = Number(/makes ([\d.]+) mm/u.exec(air?.reason ?? "")?.[1]);
  // Two ideal gases, dry air and vapour, by another formula: within 0.03 % of the distance of Cramer's, and the print's 0.05.
  expectNear(told, 1200 * (soundSpeedOfMixture(20, 50) / soundSpeedOfMixture(-5, 50) - 1), 0.0003 * 1200 + 0.05);
});

test("ZT-407 of the demo should be replaced: one candidate fits, one with changes, one fails twice", () => {
  const record = demoRecord("ZT-407");
  expect(record.candidates?.because).toBe("replacing is recommended");
  const told = record.candidates?.fits.map(({ candidate, overall, cells }) => [
    candidate,
    overall,
    cells.filter(({ result }) => result !== "fits").map(({ demand }) => demand),
  ]);
  expect(told).toEqual([
    ["candidate C", "fits", []],
    ["candidate B", "fits with a change", ["principle", "signal", "connector", "pins"]],
    ["candidate A", "does not fit", ["range, far end", "accuracy"]],
  ]);
  expect(record.inputs.rows.candidates).toHaveLength(3);
});

// ±0.8 % of 8 mm is 0.064 mm; A: 1 % of its own 7 mm; B: 0.1 % of 20 mm; C: 0.03 mm. U = 2·√(Σu²) is worked out in
// tests/analysis/uncertainty/standards-uncertainty.test.ts.
test("the demo's accuracies go 2.13, 3.2 and 0.914 times into 0.064 mm", () => {
  const fits = demoRecord("ZT-407").candidates?.fits ?? [];
  const ratios = [0.064 / 0.03, 0.064 / 0.02, 0.064 / 0.07];
  for (const [place, ratio] of ratios.entries()) expectNear(fits[place]?.accuracy?.ratio, ratio, 1e-12);
});

test("no other loop of the demo carries candidates or their rows", () => {
  for (const tag of ["LT-318", "ZT-233", "ZT-201"]) {
    const record = demoRecord(tag);
    expect(record.candidates).toBeUndefined();
    expect(record.inputs.rows.candidates).toBeUndefined();
    expect(record.inputs.files.map(({ name }) => name)).not.toContain("candidates.csv");
  }
});
