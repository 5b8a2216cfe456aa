import { expect, test } from "vitest";
import { drawnReadings, meanRows, readingRows, toleranceRows } from "../../src/charts/phase-rows.ts";
import type { PhaseRecord } from "../../src/record/record-schema.ts";
import { frozen } from "./frozen.ts";
import { type SampleOptions, sampleRecord } from "./sample-record.ts";

function samplePhase(options: SampleOptions = {}): PhaseRecord {
  const phase = sampleRecord(options).phases.asFound;
  if (phase === undefined) throw new Error("the sample has a phase as found");
  return frozen(phase);
}

test("a reading that is left out or has no error is not drawn", () => {
  const phase = sampleRecord({ leftOut: 3 }).phases.asFound;
  delete phase?.readings[0]?.errorPercentSpan;
  expect(phase && drawnReadings(phase)).toHaveLength(66 - 4);
});

test("a row is a reading: reference, error in percent of span, direction", () => {
  const phase = samplePhase();
  const first = phase.readings[0];
  expect(readingRows("asFound", drawnReadings(phase))[0]).toEqual({
    x: first?.reference,
    y: first?.errorPercentSpan,
    series: "asFound",
    shape: "rising",
  });
});

test("a direction that was not taken has no mean", () => {
  const rows = meanRows("asFound", samplePhase({ directions: ["falling"] }).points);
  expect(rows).toHaveLength(11);
  expect(new Set(rows.map(({ shape }) => shape))).toEqual(new Set(["falling"]));
});

test("the tolerance runs by rising distance, each distance once", () => {
  const phase = samplePhase({ isPercentOfReading: true });
  const rows = toleranceRows([phase, phase], 2);
  const distances = rows.map(({ x }) => Number(x));
  expect(distances).toEqual([...new Set(distances)].sort((left, right) => left - right));
  const first = phase.readings.find(({ reference }) => reference === distances[0]);
  expect(rows[0]).toMatchObject({ low: 2 * (first?.toleranceLow ?? 0), high: 2 * (first?.toleranceHigh ?? 0) });
});
