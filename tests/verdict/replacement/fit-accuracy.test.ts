import fc from "fast-check";
import { expect, test } from "vitest";
import { notDetermined } from "../../../src/analysis/figures/figure.ts";
import type { Candidate } from "../../../src/model/instrument.ts";
import { accuracyAt, fitAccuracy } from "../../../src/verdict/replacement/fit-accuracy.ts";
import { fitResults } from "../../../src/verdict/replacement/fit-cell.ts";
import { candidateWith, loopNeeds, type NeedsChanges, told } from "./sample-loop-needs.ts";

/** ±10 mm over 0 to 1000 mm; standards of U = 6 mm. */
const tenMillimetres = {
  instrument: { rangeLower: 0, rangeUpper: 1000, tolerance: 10, toleranceBasis: "distance" },
  standardsUncertainty: 6,
} as const;
const fitOf = (more: Partial<Candidate>, changes: NeedsChanges = tenMillimetres) =>
  fitAccuracy(candidateWith({ distanceUnit: "mm", ...more }), loopNeeds(changes));

test("8 mm and U = 6 mm make √(64 + 36) = 10 mm, on the limit of ±10 mm: inside; the ratio is 1.25", () => {
  const { cell, figures } = fitOf({ accuracy: 8 });
  expect(figures).toEqual({
    reference: 0,
    accuracy: 8,
    tolerance: 10,
    ratio: 1.25,
    standardsUncertainty: 6,
    together: 10,
  });
  expect(cell).toMatchObject({ result: "fits", needs: "±10 mm", offers: "±8 mm at 0 mm" });
  expect(cell.reason).toBe("it goes 1.25 times into the tolerance; with U = 6 mm of the standards together ±10 mm");
});

test("9 mm would do, and standards of U up to √(100 − 81) = 4.36 mm, said as 4.3 mm, could show it: fits with a change", () => {
  expect(told(fitOf({ accuracy: 9 }).cell)).toBe(
    "fits with a change: it goes 1.11 times into the tolerance; with U = 6 mm of the standards 10.817 mm where 10 mm at most is allowed: prove it with standards of U up to 4.3 mm",
  );
});

test("11 mm are more than the tolerance, whatever the standards; 10 mm no standard could show", () => {
  expect(told(fitOf({ accuracy: 11 }).cell)).toBe("does not fit: its own error: 11 mm where 10 mm at most is allowed");
  expect(told(fitOf({ accuracy: 10 }).cell)).toMatch(/^cannot be told: .* no standard could show it$/u);
});

test("without U of the standards a fit cannot be told, and too great an error still is no fit", () => {
  const silent = { ...tenMillimetres, standardsUncertainty: notDetermined("no standard states its uncertainty") };
  const { cell, figures } = fitOf({ accuracy: 1 }, silent);
  expect(told(cell)).toBe(
    "cannot be told: it goes 10 times into the tolerance, but U of the standards is not known: no standard states its uncertainty",
  );
  expect(figures).toMatchObject({ standardsUncertainty: null, together: null });
  expect(fitOf({ accuracy: 11 }, silent).cell.result).toBe("does not fit");
});

test("the closer end of the range counts: 1 % of reading against ±5 mm is 10 mm at 1000 mm, 0 mm at the face", () => {
  const more = { accuracy: 1, accuracyBasis: "percent of reading" } as const;
  const changes = { ...tenMillimetres, instrument: { ...tenMillimetres.instrument, tolerance: 5 } };
  expect(fitOf(more, changes).figures).toMatchObject({ reference: 1000, accuracy: 10, tolerance: 5, ratio: 0.5 });
});

test("a two-sided tolerance counts with its lesser side, one of reading with each end's own", () => {
  const twoSided = { ...tenMillimetres.instrument, toleranceMinus: 7 };
  expect(fitOf({ accuracy: 1 }, { ...tenMillimetres, instrument: twoSided }).figures?.tolerance).toBe(7);
  const ofReading = { rangeLower: 100, rangeUpper: 1000, tolerance: 1, toleranceBasis: "percent of reading" } as const;
  const { cell, figures } = fitOf({ accuracy: 0.5 }, { instrument: ofReading, standardsUncertainty: 0 });
  expect(cell.needs).toBe("±1 mm at 100 mm, ±10 mm at 1000 mm");
  expect(figures).toMatchObject({ reference: 100, tolerance: 1, ratio: 2 });
});

test("an accuracy that is not stated cannot be told, and has no figures", () => {
  expect(fitOf({ accuracy: undefined })).toMatchObject({
    cell: { result: "cannot be told", offers: "not stated" },
    figures: null,
  });
});

test("a better accuracy, or better standards, never make it worse", () => {
  const size = fc.double({ min: 0.001, max: 20, noNaN: true });
  fc.assert(
    fc.property(size, size, fc.double({ min: 0.01, max: 1, noNaN: true }), (accuracy, standardsUncertainty, part) => {
      const rank = (one: number, two: number) =>
        fitResults.indexOf(fitOf({ accuracy: one }, { ...tenMillimetres, standardsUncertainty: two }).cell.result);
      const before = rank(accuracy, standardsUncertainty);
      expect(rank(accuracy * part, standardsUncertainty)).toBeLessThanOrEqual(before);
      expect(rank(accuracy, standardsUncertainty * part)).toBeLessThanOrEqual(before);
    }),
    { seed: 20260603, numRuns: 300 },
  );
});

const at = (more: Partial<Candidate>, reference = 4000) => accuracyAt(candidateWith(more), reference, "mm");
/** A rounding or two of numbers below 100. */
const rounding = 1e-13;
const near = (found: unknown, expected: number) => expect(Math.abs(Number(found) - expected)).toBeLessThan(rounding);

test("0.25 % of its own span of 6 m is 15 mm anywhere", () => {
  const more = { accuracy: 0.25, accuracyBasis: "percent of span", rangeLower: 0.3, rangeUpper: 6.3 } as const;
  near(at(more), 15);
  near(at(more, 400), 15);
});

test("0.25 % of reading is 10 mm at 4000 mm and 1 mm at 400 mm, whatever its range", () => {
  const more = { accuracy: 0.25, accuracyBasis: "percent of reading", distanceUnit: undefined } as const;
  near(at(more), 10);
  near(at(more, 400), 1);
});

test("a distance is converted: 0.5 in is 12.7 mm", () => {
  near(at({ accuracy: 0.5, distanceUnit: "in" }), 12.7);
});

test("0.04 mA of 16 mA is a four-hundredth of its span of 6000 mm: 15 mm, a reversed signal alike", () => {
  const more = { accuracy: 0.04, accuracyBasis: "signal", rangeLower: 0.3, rangeUpper: 6.3 } as const;
  near(at(more), 15);
  near(at({ ...more, signalLower: 20, signalUpper: 4 }), 15);
});

test.each<[string, Partial<Candidate>]>([
  ["accuracy is not stated with its basis", { accuracy: undefined }],
  ["accuracy is not stated with its basis", { accuracyBasis: undefined }],
  ["distance_unit is not stated, and the accuracy rests on it", { distanceUnit: undefined }],
  [
    "the range is not stated, and the accuracy is a part of it",
    { accuracyBasis: "percent of span", rangeLower: undefined },
  ],
  [
    "the signal is not stated, and the accuracy is a part of it",
    { accuracyBasis: "signal", signalLower: undefined, signalUpper: undefined },
  ],
])("not determined: %s", (notDetermined, more) => {
  expect(at(more)).toEqual({ notDetermined });
});
