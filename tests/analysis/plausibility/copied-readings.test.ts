import { expect, test } from "vitest";
import { copiedReadings } from "../../../src/analysis/plausibility/copied-readings.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { sheetOf } from "../sample-staged.ts";

/** Steps of 0.001 mA that no two readings share, and references a tenth of a millimetre apart. */
const unequal = sheetOf(3, (reference, place) => ({
  reference: reference + ((place * 7) % 13) / 10,
  signal: 4 + reference / 6.25 + ((place * 5) % 37) / 1000,
}));
const copied = (readings: readonly Reading[]) =>
  copiedReadings(readings).map(({ index, original, of }) => [index, original, of]);
const replaced = (from: number, to: number, count: number) =>
  unequal.map((reading, index) => {
    const source = unequal[index - to + from];
    return index >= to && index < to + count && source ? { ...source, cycle: reading.cycle } : reading;
  });

test("readings of their own are no copies", () => {
  expect(copied(unequal)).toEqual([]);
});

test("a row that is there twice is a copy, wherever it stands; with another time it is none", () => {
  const row = unequal[3] as Reading;
  expect(copied([...unequal.slice(0, 4), row, ...unequal.slice(4)])).toEqual([[4, 3, "row"]]);
  expect(copied([...unequal, row])).toEqual([[36, 3, "row"]]);
  const timed = (time: string): Reading => ({ ...row, time });
  expect(copied([...unequal.filter((_, index) => index !== 3), timed("10:00"), timed("10:05")])).toEqual([]);
});

test("without numbers of cycles, only rows under one another are copies", () => {
  const [first, second] = unequal.map(({ cycle: _, ...reading }) => reading) as [Reading, Reading];
  expect(copied([first, first, second])).toEqual([[1, 0, "row"]]);
  expect(copied([first, second, first])).toEqual([]);
});

test("a cycle that repeats another to the last digit is a copy", () => {
  const places = Array.from({ length: 12 }, (_, index) => [12 + index, index, "cycle"]);
  expect(copied(replaced(0, 12, 12))).toEqual(places);
});

test("half a cycle, out or back, is a copy where chance does not explain it", () => {
  expect(copied(replaced(0, 24, 6)).map(([index, , of]) => [index, of])).toEqual(
    [24, 25, 26, 27, 28, 29].map((index) => [index, "run"]),
  );
});

test("a few rows among others are copies where the references scatter", () => {
  const rows = [0, 2, 4, 6, 8].reduce<readonly Reading[]>(
    (readings, place) => readings.with(place + 12, { ...(unequal[place] as Reading), cycle: 2 }),
    unequal,
  );
  expect(copied(rows).map(([index]) => index)).toEqual([12, 14, 16, 18, 20]);
  expect(copied(rows.slice(0, 16))).toEqual([]);
});

test("a coarse display at round references shows the same digits again: single rows are no copies", () => {
  const coarse = sheetOf(3, (reference, place) => ({
    reference,
    signal: 4 + reference / 6.25 + (place % 5 === 0 ? 0.01 : 0),
  }));
  expect(copied(coarse).filter(([, , of]) => of === "row")).toEqual([]);
});

test("one row too many in a cycle, with the numbers of another cycle, is a copy", () => {
  const extra: Reading = { ...(unequal[2] as Reading), cycle: 2 };
  expect(copied([...unequal.slice(0, 15), extra, ...unequal.slice(15)])).toEqual([[15, 2, "row"]]);
});

test("a rejected reading and one without any output are neither copies nor copied", () => {
  const row = unequal[3] as Reading;
  expect(copied([...unequal, { ...row, rejected: "slipped" }])).toEqual([]);
  const { signal: _, ...empty } = row;
  expect(copied([empty, empty])).toEqual([]);
});

test("a display so coarse that out and back agree too repeats whole cycles, and is not taken for copied", () => {
  const steady = [1, 2, 3].flatMap((cycle) =>
    (["rising", "falling"] as const).flatMap((direction) =>
      [0, 25, 50, 75, 100].map((point): Reading => {
        const signal = 4 + Math.round(16 * point) / 100;
        return { calibration: "C-1", phase: "as_found", cycle, direction, point, reference: point, signal };
      }),
    ),
  );
  expect(copied(steady)).toEqual([]);
  // The same, but for readings that differ on the way back: then three cycles alike are no chance.
  const fine = steady.map((one) => (one.direction === "falling" ? { ...one, signal: (one.signal ?? 0) + 0.013 } : one));
  expect(copied(fine).map(([, , of]) => of)).toEqual(Array(20).fill("cycle"));
});

test("three rows with the numbers of another cycle are copies where the digits are fine, however few there are", () => {
  // Two cycles of six points, out and back; the output scatters by some 50 of its steps.
  const noise = [4, 17, -23, 41, 8, -36, 52, -11, 29, -47, 3, 35, -19, 44, -28, 13, 58, -5, 21, -40, 33, -14, 49, -31];
  const fine = sheetOf(2, (reference, place) => ({
    reference: reference + ((place * 7) % 11) / 10,
    signal: Number((4 + reference / 6.25 + (noise[place % noise.length] ?? 0) / 10_000).toFixed(4)),
  }));
  const half = fine.length / 2;
  const slipped = fine.map((reading, index) => {
    const source = fine[index - half];
    return index >= half + 2 && index < half + 5 && source ? { ...source, cycle: reading.cycle } : reading;
  });
  expect(copied(fine)).toEqual([]);
  expect(copied(slipped)).toEqual([2, 3, 4].map((index) => [half + index, index, "row"]));
});
