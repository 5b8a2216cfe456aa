import { expect, test } from "vitest";
import { outputScales, referenceScales } from "../../../src/analysis/plausibility/scales.ts";
import { areReferencesOutside, isUnknownScale, unitOfAll } from "../../../src/analysis/plausibility/unit-of-all.ts";
import { stagedReadings } from "../../../src/analysis/stages/staged-readings.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { signalLoop } from "../sample-loop.ts";
import { sheetOf } from "../sample-staged.ts";

const staged = (read: (reference: number, place: number) => Partial<Reading>) =>
  stagedReadings(sheetOf(2, read), signalLoop).readings;
const references = referenceScales(signalLoop, "mm");
const signals = outputScales(signalLoop, "signal", { distanceUnit: "mm" });
/** A sensor that is 1 % of span off, with a last digit that differs from reading to reading. */
const milliamps = (reference: number, place: number) => 4.16 + reference / 6.25 + (place % 7) / 1000;

test.each([
  ["in", 25.4],
  ["cm", 10],
  ["ft", 304.8],
  ["m", 1000],
])("references in %s are told, though the sensor is off", (unit, factor) => {
  const readings = staged((reference, place) => ({
    reference: reference / factor,
    signal: milliamps(reference, place),
  }));
  const found = unitOfAll(readings, "reference", references);
  expect(found?.scale.unit).toBe(unit);
  expect(found?.before).toBeGreaterThan(10);
  expect(found?.after).toBeLessThan(1.5);
});

test("volts over a resistor in a loop of milliamperes", () => {
  const readings = staged((reference, place) => ({ signal: milliamps(reference, place) / 4 }));
  expect(unitOfAll(readings, "signal", signals)?.scale.unit).toBe("V over 250 Ω");
});

test("a loop that is off by a tenth of its span, or dead, or reverse, has no other unit", () => {
  for (const signal of [
    (reference: number, place: number) => milliamps(reference, place) + 1.6,
    (_: number, place: number) => 4 + (place % 7) / 1000,
    (reference: number, place: number) => 24 - milliamps(reference, place),
    (reference: number, place: number) => reference / 5 + (place % 7) / 1000,
  ]) {
    const readings = staged((reference, place) => ({ signal: signal(reference, place) }));
    expect(unitOfAll(readings, "reference", references)).toBeUndefined();
    expect(unitOfAll(readings, "signal", signals)).toBeUndefined();
    expect(isUnknownScale(readings, "signal")).toBe(false);
  }
});

test("two readings are too few", () => {
  const readings = staged((reference, place) => ({ reference: reference / 25.4, signal: milliamps(reference, place) }));
  expect(unitOfAll(readings.slice(0, 2), "reference", references)).toBeUndefined();
});

test("references that lie outside the range, four of five of them, are none of it", () => {
  const far = (share: number) =>
    staged((reference, place) => ({ reference: place % 10 < 10 * share ? 1e5 : reference, signal: 12 }));
  expect(areReferencesOutside(far(0.8))).toBe(true);
  expect(areReferencesOutside(far(0.7))).toBe(false);
  expect(areReferencesOutside(far(1).slice(0, 2))).toBe(false);
  const still = (signal: (place: number) => number) =>
    staged((reference, place) => ({ reference: -4 + reference / 1e3, signal: signal(place) }));
  expect(areReferencesOutside(still((place) => 4 + (place % 9)))).toBe(true);
  expect(areReferencesOutside(still(() => 4))).toBe(false);
});

test("counts in the column of the signal follow the distance and are no signal", () => {
  const counts = staged((reference, place) => ({ signal: 3000 + 41.7 * reference + (place % 7) }));
  expect(isUnknownScale(counts, "signal")).toBe(true);
  const still = staged((_, place) => ({ signal: 3000 + (place % 7) }));
  expect(isUnknownScale(still, "signal")).toBe(false);
});
