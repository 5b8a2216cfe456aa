import { expect, test } from "vitest";
import { readingsAgainst } from "../../../src/analysis/plausibility/phase-errors.ts";
import { stagedReadings } from "../../../src/analysis/stages/staged-readings.ts";
import { expectNear, loop } from "../sample-loop.ts";
import { sheetOf } from "../sample-staged.ts";

const part = (error: (reference: number, place: number) => number) =>
  readingsAgainst(
    stagedReadings(
      sheetOf(3, (reference, place) => ({ signal: 4 + (reference + error(reference, place)) * 0.16 })),
      loop,
    ).readings,
    loop,
  );

// The tolerance is 1 mm: an error of 0.4 mm takes up 0.4 of it.
test("the worst test point counts, by the median of its readings", () => {
  expectNear(
    part((reference) => (reference === 60 ? -0.4 : 0.1)),
    0.4,
    1e-9,
  );
  expectNear(
    part((reference, place) => (place === 3 ? 50 : reference === 60 ? 0.2 : 0.1)),
    0.2,
    0.11,
  );
});

test("nothing is said where nothing was read", () => {
  expect(readingsAgainst([], loop)).toBeUndefined();
});
