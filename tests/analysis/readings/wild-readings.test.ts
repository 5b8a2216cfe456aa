import { expect, test } from "vitest";
import { wildReadings } from "../../../src/analysis/readings/wild-readings.ts";

const context = { mattering: 0.25, leastScatter: 0.003 };
/** Noise that is nowhere near normal's tail: five values that come again. */
const noise = [0.02, -0.01, 0.03, -0.02, 0];

function sheet(cycles: number, errorAt: (point: number, cycle: number) => number) {
  return Array.from({ length: 6 * cycles }, (_, index) => {
    const [point, cycle] = [20 * (index % 6), Math.floor(index / 6)];
    return { index, point, input: point, error: errorAt(point, cycle) + noise[(3 * index) % 5]! };
  });
}

test("the one wild reading of thirty is found, with a shift and a gain beneath", () => {
  const readings = sheet(5, (point, cycle) => 1 + point / 100 + (point === 40 && cycle === 2 ? 4 : 0));
  const [found, ...others] = wildReadings(readings, context);
  expect(found?.index).toBe(14);
  expect(Math.abs(found!.deviation - 4)).toBeLessThan(0.1);
  expect(others).toEqual([]);
});

test("with one cycle the neighbours are its fellows", () => {
  expect(
    wildReadings(
      sheet(1, (point) => (point === 60 ? -3 : 0)),
      context,
    ).map(({ index }) => index),
  ).toEqual([3]);
});

test("a bend that comes again at its point is no wild reading, nor is what matters less than the tolerance", () => {
  expect(
    wildReadings(
      sheet(4, (point) => (point === 60 ? 3 : 0)),
      context,
    ),
  ).toEqual([]);
  expect(
    wildReadings(
      sheet(4, (point, cycle) => (point === 60 && cycle === 1 ? 0.2 : 0)),
      context,
    ),
  ).toEqual([]);
});

test("two points say nothing", () => {
  expect(
    wildReadings(
      sheet(3, () => 0).filter(({ point }) => point < 40),
      context,
    ),
  ).toEqual([]);
});
