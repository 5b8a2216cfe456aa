import { expect, test } from "vitest";
import { readingScatter } from "../../../src/verdict/teaching/reading-scatter.ts";
import { steadyLeft } from "../../../src/verdict/teaching/steady-left.ts";

const range = { rangeLower: 0, rangeUpper: 100 };
const tolerance = { low: -1, high: 1 };

/** `errorAt` of place, cycle and direction at 0, 10 … 100. */
function sheet(cycles: number, errorAt: (reference: number, cycle: number, direction: string) => number) {
  return Array.from({ length: cycles }, (_, cycle) => cycle).flatMap((cycle) =>
    (["rising", "falling"] as const).flatMap((direction) =>
      Array.from({ length: 11 }, (_, place) => {
        const reference = 10 * place;
        const noise = (((7 * place + 5 * cycle + (direction === "rising" ? 0 : 3)) % 11) - 5) / 100;
        const indicated = reference + errorAt(reference, cycle, direction) + noise;
        return { point: reference, direction, reference, indicated, tolerance };
      }),
    ),
  );
}
const leftOf = (readings: ReturnType<typeof sheet>) => steadyLeft(readings, readingScatter(readings), range);

test("a bow of 4 leaves half of it, whatever the number of cycles", () => {
  // The minimax line of a parabola halves it: 4 at the middle leaves 2, on a tolerance of 1, less noise of 0.1.
  for (const cycles of [2, 5, 10]) {
    const left = leftOf(sheet(cycles, (reference) => 4 - ((reference - 50) / 25) ** 2));
    expect(left).toBeGreaterThan(1.85);
    expect(left).toBeLessThan(2.05);
  }
});

test("an end that lies beside the bend of the others is left out", () => {
  // A bow of 4 and a step of 1 at the last point: without that point 0.9² of half the bow, 1.62, less noise.
  const left = leftOf(sheet(5, (reference) => 4 - ((reference - 50) / 25) ** 2 - (reference === 100 ? 1 : 0)));
  expect(left).toBeGreaterThan(1.45);
  expect(left).toBeLessThan(1.65);
});

test("a shift, a gain, and one reading that is wild leave next to nothing", () => {
  expect(leftOf(sheet(3, (reference) => 3 + reference / 20))).toBeLessThan(0.1);
  const wild = sheet(1, (reference, _, direction) => (reference === 40 && direction === "rising" ? 5 : 0));
  expect(leftOf(wild)).toBeLessThan(0.2);
});

test("scatter alone leaves nothing, and the less the more of it is read", () => {
  const noise = [0.9, -0.7, 0.3, -0.9, 0.6, 0.1, -0.4];
  for (const cycles of [2, 4, 8]) {
    const readings = sheet(
      cycles,
      (reference, cycle, direction) => noise[(reference / 10 + 3 * cycle + (direction === "rising" ? 0 : 5)) % 7]!,
    );
    expect(leftOf(readings)).toBeLessThan(0.3);
  }
});

test("where nothing was repeated it is not certain", () => {
  expect(steadyLeft([], undefined, range)).toBe(0);
});

test("where a tolerance vanishes at one end, the others are still judged", () => {
  const ofReading = sheet(2, (reference) => 0.02 * reference).map((reading) => {
    const room = reading.reference / 100;
    return { ...reading, tolerance: { low: -room, high: room } };
  });
  expect(leftOf(ofReading)).toBeLessThan(0.5);
});
