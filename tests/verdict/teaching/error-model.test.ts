import { expect, test } from "vitest";
import { errorModel } from "../../../src/verdict/teaching/error-model.ts";

const reading = (reference: number, cycle: number, error: number, direction: "rising" | "falling" = "rising") => ({
  ...{ point: reference, direction, cycle, reference },
  indicated: reference + error,
});

test("the scatter within and between cycles is that of the analysis of variance", () => {
  // Three cycles at two places, offsets −1, 0, 1 and ±0.1 besides: about the means of the places, by hand,
  // cycles: 2 · (1 + 0 + 1) = 4 on 2; within: 6 · 0.01 less their means, here 0.04 on 2.
  const wobble = [
    [0.1, 0, -0.1],
    [-0.1, 0, 0.1],
  ];
  const model = errorModel(
    [0, 100].flatMap((place, row) => [0, 1, 2].map((cycle) => reading(place, cycle, cycle - 1 + wobble[row]![cycle]!))),
  )!;
  const meanSquareWithin = 0.04 / 2;
  expect(Math.abs(model.within - Math.sqrt(meanSquareWithin))).toBeLessThan(1e-12);
  expect(Math.abs(model.between - Math.sqrt((4 / 2 - meanSquareWithin) / 2))).toBeLessThan(1e-12);
  expect(model.degreesOfFreedom).toBe(2);
});

test("a bend stays, noise about a line is drawn to it", () => {
  const bow = (place: number) => 4 - ((place - 50) / 25) ** 2;
  const noise = (place: number, cycle: number) => (((3 * place + 7 * cycle) % 5) - 2) / 50;
  const places = [0, 25, 50, 75, 100];
  const bent = errorModel(
    places.flatMap((place) => [1, 2, 3].map((cycle) => reading(place, cycle, bow(place) + noise(place, cycle)))),
  )!;
  const middle = bent.groups.find(({ point }) => point === 50)!;
  // The least-squares line of 0, 3, 4, 3, 0 is 2 everywhere.
  expect(Math.abs(middle.left - 2)).toBeLessThan(0.05);
  const straight = errorModel(
    places.flatMap((place) => [1, 2, 3].map((cycle) => reading(place, cycle, 1 + noise(place, cycle)))),
  )!;
  expect(Math.max(...straight.groups.map(({ left }) => Math.abs(left)))).toBeLessThan(0.02);
});

test("with one cycle the gaps or the line tell the scatter; two readings tell nothing", () => {
  const both = [0, 50, 100].flatMap((place, at) => [
    reading(place, 1, 0),
    reading(place, 1, [0.9, 1, 1.1][at]!, "falling"),
  ]);
  expect(Math.abs(errorModel(both)!.within - 0.1 / Math.SQRT2)).toBeLessThan(1e-9);
  expect(errorModel([0, 50, 100].map((place) => reading(place, 1, 1)))!.within).toBeLessThan(1e-9);
  expect(errorModel([reading(0, 1, 0), reading(100, 1, 0)])).toBeUndefined();
});
