import { expect, test } from "vitest";
import { copiedPhase } from "../../../src/analysis/plausibility/copied-phase.ts";
import type { CopiedReading } from "../../../src/analysis/plausibility/digits-of.ts";

/** Two cycles out and back over six points; steps of 0.001 mA that no two readings share. */
const found: readonly CopiedReading[] = [1, 2].flatMap((cycle) =>
  (["rising", "falling"] as const).flatMap((direction) =>
    [0, 20, 40, 60, 80, 100].map((point, place) => ({
      ...{ point, direction, cycle, reference: point + ((place * 7 + cycle) % 5) / 10 },
      signal: 4 + point / 6.25 + ((place * 5 + cycle * 3 + direction.length) % 37) / 1000,
    })),
  ),
);
const shifted = found.map((reading) => ({ ...reading, signal: (reading.signal ?? 0) + 0.0215 }));
const copiedUpTo = (count: number) =>
  shifted.map((reading, index) => (index < count ? (found[index] ?? reading) : reading));

test("a phase of its own is no copy, nor are two readings of it", () => {
  expect(copiedPhase(found, shifted)).toBeUndefined();
  expect(copiedPhase(found, copiedUpTo(2))).toBeUndefined();
});

test("a phase that was written down again is one, whole or in part, in whatever order", () => {
  expect(copiedPhase(found, found)).toEqual({ pairs: 24, same: 24 });
  expect(copiedPhase(found, copiedUpTo(19).toReversed())).toEqual({ pairs: 24, same: 19 });
});

test("where a coarse display shows the same digits in every cycle, that they come again says nothing", () => {
  const coarse = found.map(({ point = 0, ...reading }) => ({
    ...reading,
    point,
    reference: point,
    signal: 4 + point / 6.25,
  }));
  expect(copiedPhase(coarse, coarse)).toBeUndefined();
});

test("of readings that were taken once, nothing tells how often digits come again: half of them would", () => {
  // The upper tail of the binomial distribution with 1/2: 1/2 to the 9th is 0.00195, to the 10th 0.00098.
  const once = (count: number) =>
    Array.from({ length: count }, (_, at) => ({ direction: "rising" as const, reference: at, signal: at }));
  expect(copiedPhase(once(9), once(9))).toBeUndefined();
  expect(copiedPhase(once(10), once(10))).toEqual({ pairs: 10, same: 10 });
});
