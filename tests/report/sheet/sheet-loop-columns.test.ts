import { expect, test } from "vitest";
import type { CalibrationRecord } from "../../../src/record/record-schema.ts";
import { loopColumns } from "../../../src/report/sheet/sheet-loop-columns.ts";
import { sampleRecord } from "../../charts/sample-record.ts";
import { demoRecord } from "../demo-records.ts";

const digits = { distance: 4, share: 3, percent: 3 };

function titlesOf(record: CalibrationRecord): readonly string[] {
  const phase = record.phases.asFound;
  if (phase === undefined) throw new RangeError("titlesOf: no phase as found");
  return loopColumns(record, phase, digits).map(({ title }) => title);
}

test("a loop without a controller has no columns of later stages", () => {
  expect(titlesOf(sampleRecord())).toEqual([]);
});

test("counts and controller values are told apart", () => {
  expect(titlesOf(demoRecord("LT-702"))).toEqual([
    "from counts",
    "from controller",
    "input card share",
    "scaling share",
    "loop error",
  ]);
});

test("where the signal was read at the card, the wiring has its own share and the next one begins at the card", () => {
  const record = demoRecord("LT-333");
  const phase = record.phases.asFound!;
  const columns = loopColumns(record, phase, digits);
  expect(columns.map(({ title }) => title)).toEqual([
    "from card signal",
    "from controller",
    "wiring share",
    "card and scaling share",
    "loop error",
  ]);
  expect(columns[3]?.formula?.((key) => `[${key}]`)).toBe("[value distance] − [signalAtCard distance]");
  const { instrument } = record;
  const perOutput = (instrument.rangeUpper - instrument.rangeLower) / (instrument.signalUpper - instrument.signalLower);
  for (const reading of phase.readings) {
    if (reading.signalAtCard === undefined) continue;
    const distance = instrument.rangeLower + (reading.signalAtCard - instrument.signalLower) * perOutput;
    // Printed to the last decimal of the page.
    const printed = Number(columns[0]?.cell(reading).replace("−", "-"));
    expect(Math.abs(printed - distance)).toBeLessThanOrEqual(0.5000001 * 10 ** -digits.distance);
  }
});

test("without counts, card and scaling are one share", () => {
  const record = structuredClone(demoRecord("LT-702"));
  for (const reading of record.phases.asFound?.readings ?? []) delete reading.counts;
  expect(titlesOf(record)).toEqual(["from controller", "card and scaling share", "loop error"]);
});

test("without scaling no later stage can be worked out", () => {
  const { countsLower: _, valueLower: __, ...instrument } = demoRecord("LT-702").instrument;
  expect(titlesOf({ ...demoRecord("LT-702"), instrument })).toEqual([]);
});

test("each formula names the column before it", () => {
  const record = demoRecord("LT-702");
  const phase = record.phases.asFound!;
  const formulas = loopColumns(record, phase, digits).map(({ formula }) => formula?.((key) => `[${key}]`));
  expect(formulas).toEqual([
    "0.4 + [counts] × 7.6 ÷ 27648",
    "0.4 + ([value] − 100) × 7.6 ÷ (−100)",
    "[counts distance] − [indicated]",
    "[value distance] − [counts distance]",
    "[value distance] − [reference]",
  ]);
});
