import { expect, test } from "vitest";
import {
  drawnReadings,
  farthestFromZero,
  isOutside,
  meanRows,
  phasesOf,
  readingRows,
  toleranceRows,
} from "../../src/charts/phase-rows.ts";
import type { PhaseRecord } from "../../src/record/record-schema.ts";
import { simpleAcceptance } from "../../src/verdict/decision/simple-acceptance.ts";
import { frozen } from "./frozen.ts";
import { type SampleOptions, sampleRecord } from "./sample-record.ts";

function samplePhase(options: SampleOptions = {}): PhaseRecord {
  const phase = sampleRecord(options).phases.asFound;
  if (phase === undefined) throw new Error("the sample has a phase as found");
  return frozen(phase);
}

test("phases come in the order in which they happened, and only those that there are", () => {
  expect(phasesOf(sampleRecord()).map(([name]) => name)).toEqual(["asFound", "asLeft"]);
  expect(phasesOf(sampleRecord({ phases: ["asLeft"] })).map(([name]) => name)).toEqual(["asLeft"]);
});

test("a reading that is left out or has no error is not drawn", () => {
  const phase = sampleRecord({ leftOut: 3 }).phases.asFound;
  delete phase?.readings[0]?.errorPercentSpan;
  expect(phase && drawnReadings(phase)).toHaveLength(66 - 4);
});

test("a row is a reading: reference, error in percent of span, direction", () => {
  const phase = samplePhase();
  const first = phase.readings[0];
  expect(readingRows("asFound", phase)[0]).toEqual({
    x: first?.reference,
    y: first?.errorPercentSpan,
    series: "asFound",
    shape: "rising",
  });
});

test("a direction that was not taken has no mean", () => {
  const rows = meanRows("asFound", samplePhase({ directions: ["falling"] }));
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

test("far from zero the rounding is that of the distance, not of the span", () => {
  const reading = drawnReadings(samplePhase())[0];
  if (reading === undefined) throw new Error("the sample has a reading");
  const magnitude = farthestFromZero({
    ...sampleRecord(),
    instrument: { ...sampleRecord().instrument, rangeLower: -6000, rangeUpper: -5999 },
  });
  expect(magnitude).toBe(6000);
  // A reference of 5999.5 is stored to 9e-13; 5e-10 more is beyond every rounding of it but not of 6e-9.
  const onTheLimit = { ...reading, errorDistance: 0.005 + 5e-10, toleranceLow: -0.005, toleranceHigh: 0.005 };
  expect(isOutside(onTheLimit, magnitude)).toBe(false);
  expect(isOutside({ ...onTheLimit, errorDistance: 0.005 + 7e-9 }, magnitude)).toBe(true);
});

test("a mark lies outside where simple acceptance says fail, on the limit and a rounding beyond it too", () => {
  const reading = drawnReadings(samplePhase())[0];
  if (reading === undefined) throw new Error("the sample has a reading");
  for (const errorDistance of [-5.1, -5 - 1e-11, -5, 0, 4.999, 5, 5 + 9e-10, 5 + 2e-9, 7]) {
    const limits = { low: -5, high: 5 };
    const isFail = simpleAcceptance(errorDistance, limits, 1000) === "fail";
    expect(isOutside({ ...reading, errorDistance, toleranceLow: -5, toleranceHigh: 5 }, 1000)).toBe(isFail);
  }
});
