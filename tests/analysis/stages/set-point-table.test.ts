import { expect, test } from "vitest";
import { setPointTable } from "../../../src/analysis/stages/set-point-table.ts";
import type { Instrument, Output } from "../../../src/model/instrument.ts";
import { readColumns } from "../../published/read-data.ts";

const instrument: Instrument = Object.freeze({
  tag: "LT-1",
  rangeLower: 0,
  rangeUpper: 100,
  distanceUnit: "mm",
  signalLower: 4,
  signalUpper: 20,
  signalUnit: "mA",
  tolerance: 1,
  toleranceBasis: "distance",
});
const output = (name: string, setPoint: number): Output => ({ tag: "LT-1", output: name, setPoint });

/** One interpolation in doubles. */
const rounding = 1e-12;

test("the quarter points of 4 to 20 mA are 4, 8, 12, 16 and 20 mA", () => {
  const rows = setPointTable(instrument, []).filter(({ distance }) => distance !== null);
  expect(rows.map(({ signal }) => signal)).toEqual([4, 8, 12, 16, 20]);
  expect(rows.map(({ percentSpan }) => percentSpan)).toEqual([0, 25, 50, 75, 100]);
  expect(rows[1]).toEqual({
    name: "25 % of span",
    distance: 25,
    signal: 8,
    counts: null,
    value: null,
    percentSpan: 25,
  });
});

test("a set point stands at its distance among the others, scaled to counts and controller value", () => {
  const scaled = { ...instrument, countsLower: 0, countsUpper: 27_648, valueLower: 100, valueUpper: 0 };
  const rows = setPointTable(scaled, [output("Q2", 110), output("Q1", 41.25)]);
  expect(rows.map(({ name }) => name)).toEqual([
    "lower end",
    "25 % of span",
    "set point of Q1",
    "50 % of span",
    "75 % of span",
    "upper end",
    "set point of Q2",
    "fault level, low",
    "fault level, high",
  ]);
  // 41.25 % of 16 mA is 6.6 mA; of 27 648 counts 11 404.8; of a fill that falls from 100 % it leaves 58.75 %.
  const [, , first] = rows;
  expect(Math.abs((first?.signal ?? 0) - 10.6)).toBeLessThan(rounding * 16);
  expect(Math.abs((first?.counts ?? 0) - 11_404.8)).toBeLessThan(rounding * 27_648);
  expect(Math.abs((first?.value ?? 0) - 58.75)).toBeLessThan(rounding * 100);
});

test("the worked conversions of published exercises stand in the table as set points, to their last digit", () => {
  const {
    range_lower,
    range_upper,
    output_lower,
    output_upper,
    distance,
    output: signal,
    last_digit,
  } = readColumns("loop-conversions");
  let compared = 0;
  for (const index of range_lower?.keys() ?? []) {
    const [lower = 0, upper = 0, low = 0, high = 0, at = 0, shown = 0, digit = 0] = [
      range_lower?.[index],
      range_upper?.[index],
      output_lower?.[index],
      output_upper?.[index],
      distance?.[index],
      signal?.[index],
      last_digit?.[index],
    ];
    const loop = { ...instrument, rangeLower: lower, rangeUpper: upper, signalLower: low, signalUpper: high };
    const row = setPointTable(loop, [output("Q1", at)]).find(({ name }) => name === "set point of Q1");
    // Distances that were printed cut off carry their own last digit into the signal.
    const slope = Math.abs((high - low) / (upper - lower));
    expect(Math.abs((row?.signal ?? Number.NaN) - shown)).toBeLessThanOrEqual(digit * Math.max(1, slope));
    compared += 1;
  }
  expect(compared).toBeGreaterThan(5);
});

test("fault levels are signals alone: those of NAMUR NE 43, those of the row, or none", () => {
  const faultsOf = (loop: Instrument) =>
    setPointTable(loop, [])
      .filter(({ distance }) => distance === null)
      .map(({ signal, percentSpan }) => [signal, percentSpan]);
  expect(faultsOf(instrument)).toEqual([
    [3.6, null],
    [21, null],
  ]);
  expect(faultsOf({ ...instrument, faultHigh: 22 })).toEqual([
    [3.6, null],
    [22, null],
  ]);
  expect(faultsOf({ ...instrument, signalLower: 0, signalUpper: 10, signalUnit: "V" })).toEqual([]);
});

test("a reverse-acting loop gives its greatest signal at the nearest distance", () => {
  const rows = setPointTable({ ...instrument, signalLower: 20, signalUpper: 4 }, []);
  expect(rows.slice(0, 5).map(({ signal }) => signal)).toEqual([20, 16, 12, 8, 4]);
});
