import { expect, test } from "vitest";
import { exchangedReadings } from "../../../src/analysis/readings/exchanged-readings.ts";

const rows = (outputs: readonly number[]) =>
  outputs.map((output, index) => ({ index, point: 10 * index, input: 10 * index, output: output + (index % 3) / 100 }));
const straight = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100];

test("two outputs in each other's row fit when exchanged", () => {
  const pairs = exchangedReadings(rows(straight.with(3, 70).with(7, 30)), 0.5, 0.01);
  expect(pairs.map(({ first, second }) => [first, second])).toEqual([[3, 7]]);
  expect(pairs[0]!.before).toBeGreaterThan(39);
  expect(pairs[0]!.after).toBeLessThan(0.1);
});

test("a pair fits, too, where it misses by less than matters and by far less than before", () => {
  const off = 0.2;
  const found = (matters: number) => exchangedReadings(rows(straight.with(3, 70 + off).with(7, 30)), matters, 0.001);
  expect(found(0.25)).toHaveLength(1);
  expect(found(0.15)).toEqual([]);
});

test("two wild readings that do not fit each other's place are no pair", () => {
  expect(exchangedReadings(rows(straight.with(3, 60).with(7, 45)), 0.5, 0.01)).toEqual([]);
});

test("a straight sheet, a short one and one with many pairs have none", () => {
  expect(exchangedReadings(rows(straight), 0.5, 0.01)).toEqual([]);
  expect(exchangedReadings(rows([0, 20, 10]), 0.5, 0.01)).toEqual([]);
  expect(exchangedReadings(rows([10, 0, 30, 20, 50, 40, 70, 60, 80, 90, 100]), 0.5, 0.01)).toEqual([]);
});

test("many readings of one point have a line all the same", () => {
  const readings = Array.from({ length: 80 }, (_, place) => ({
    index: place,
    point: 0,
    input: place % 4,
    output: place % 4,
  }));
  expect(exchangedReadings(readings, 0.5, 0.01)).toEqual([]);
});
