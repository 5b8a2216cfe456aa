import { expect, test } from "vitest";
import type { Candidate } from "../../../src/model/instrument.ts";
import { accuracyAt } from "../../../src/verdict/replacement/accuracy-at.ts";
import { candidateWith } from "./sample-loop-needs.ts";

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
