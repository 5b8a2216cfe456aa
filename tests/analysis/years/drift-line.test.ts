import { expect, test } from "vitest";
import { notDetermined } from "../../../src/analysis/figures/figure.ts";
import { type DriftLine, driftLine, predictedError } from "../../../src/analysis/years/drift-line.ts";
import { fitLine } from "../../../src/numeric/fit-line.ts";
import { predictionInterval } from "../../../src/numeric/prediction-interval.ts";

const example = [
  { day: 0, error: 1 },
  { day: 365.25, error: 3 },
  { day: 730.5, error: 4 },
  { day: 1095.75, error: 8 },
];
const lineOf = (errors: readonly { day: number; error: number }[]) => driftLine(Object.freeze(errors)) as DriftLine;

test("2.2 a year, from 0.3745 to 4.0255: the line through 1, 3, 4, 8 a year apart", () => {
  const { perYear, firstDay, lastDay } = lineOf(example);
  expect([perYear.value, perYear.low, perYear.high].map((value) => value.toFixed(4))).toEqual([
    "2.2000",
    "0.3745",
    "4.0255",
  ]);
  expect([firstDay, lastDay]).toEqual([0, 1095.75]);
});

test("a year later 9.5 is expected, with the prediction interval of the fit", () => {
  const { value, low, high } = predictedError(lineOf(example), 1461);
  const direct = predictionInterval(fitLine([0, 1, 2, 3], [1, 3, 4, 8]), 4);
  expect([value, low, high]).toEqual([direct.value, direct.low, direct.high]);
});

test("neither the order of the records nor the day from which is counted matters", () => {
  const shifted = example.toReversed().map(({ day, error }) => ({ day: day + 20_000, error }));
  // 1e-12 of values near 2: the sums are taken in another order.
  expect(Math.abs(lineOf(shifted).perYear.value - lineOf(example).perYear.value)).toBeLessThan(1e-12);
  expect(Math.abs(lineOf(shifted).perYear.high - lineOf(example).perYear.high)).toBeLessThan(1e-11);
});

test("under three records, or within less than 30 days, there is none, and why", () => {
  expect(driftLine([])).toEqual(notDetermined("not enough: no record"));
  expect(driftLine(example.slice(0, 1))).toEqual(notDetermined("not enough: one record"));
  expect(driftLine(example.slice(0, 2))).toEqual(notDetermined("not enough: two records"));
  const oneDay = example.map(({ error }) => ({ day: 5, error }));
  const why = notDetermined("not enough: all records lie within less than 30 days");
  expect(driftLine(oneDay)).toEqual(why);
  const until = (day: number) => driftLine([0, 10, day].map((one) => ({ day: one, error: one })));
  expect(until(29)).toEqual(why);
  expect(until(30)).not.toEqual(why);
});
