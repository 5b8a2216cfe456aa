import { expect, test } from "vitest";
import { stageErrorAt, stageLine, stagesRead } from "../../../src/analysis/stages/stage-lines.ts";
import { stagedReadings } from "../../../src/analysis/stages/staged-readings.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { fitLine } from "../../../src/numeric/fit-line.ts";
import { readColumns, readExpected } from "../../published/read-data.ts";
import { expectNear, loop, rounding } from "../sample-loop.ts";
import { sheetOf } from "../sample-staged.ts";

const staged = (read: (reference: number, place: number) => Partial<Reading>, cycles = 2) =>
  stagedReadings(sheetOf(cycles, read), loop).readings;
const milliamps = (percent: number) => 4 + 0.16 * percent;

test("stages lie between the quantities that were read, whatever is missing", () => {
  const names = (read: Partial<Reading>) => stagesRead(staged(() => read)).map(({ stage }) => stage);
  expect(names({ signal: 12 })).toEqual(["sensor"]);
  expect(names({ signal: 12, value: 5 })).toEqual(["sensor", "input card and scaling"]);
  expect(names({ signal: 12, signalAtCard: 12, counts: 0, value: 5 })).toEqual([
    "sensor",
    "wiring",
    "input card",
    "scaling",
  ]);
  expect(names({ signalAtCard: 12, value: 5 })).toEqual(["sensor and wiring", "input card and scaling"]);
  expect(names({ counts: 0, value: 5 })).toEqual(["sensor and input card", "scaling"]);
  expect(names({ value: 5 })).toEqual(["whole loop"]);
});

test("a gain of 1.05 about 0 mA crosses zero at 0 mA, 1 % at 4 mA and 5 % at 20 mA", () => {
  const readings = staged((reference) => ({ signal: 1.05 * milliamps(reference) }));
  const line = stageLine({ stage: "sensor", input: "reference", output: "signal" }, readings, loop, 0);
  // Roundings of a line through exact points: a few units in the last place of 100.
  expectNear(line?.gain, 1.05, rounding);
  expectNear(line?.errorAtLower.percentSpan, 1.25, rounding);
  expectNear(line?.errorAtUpper.percentSpan, 6.25, 10 * rounding);
  const card = staged((reference) => ({
    signal: milliamps(reference),
    value: ((1.05 * milliamps(reference) - 4) / 16) * 10,
  }));
  const ofCard = stageLine({ stage: "input card and scaling", input: "signal", output: "value" }, card, loop, 0);
  expectNear(ofCard?.zeroCrossing?.value, 0, 1e-11, "0 mA, 25 % outside the range");
});

test("errors of the stages add up to the error of the loop at both ends", () => {
  const readings = staged((reference, place) => ({
    signal: milliamps(reference + 1 + 0.01 * (place % 3)),
    counts: Math.round(276.48 * (1.02 * reference + 0.3)),
    value: (0.97 * reference + 2) / 10,
  }));
  const stages = stagesRead(readings);
  const lines = stages.map((ends) => stageLine(ends, readings, loop, 0));
  const total = stageLine({ stage: "whole loop", input: "reference", output: "value" }, readings, loop, 0);
  // Each stage has its own input, so that the line of the next is read where the one before has brought it.
  const reached = lines.reduce((input, line) => input + stageErrorAt(line!.fit, input).percentSpan, 0);
  expectNear(reached, total!.errorAtLower.percentSpan, 0.01, "within the scatter planted");
});

test("the thermometer of GUM H.3 gives its line and uncertainties through the same road", () => {
  // Published to 4 digits: −0.1712 ± 0.0029 at 20 °C and 0.00218 ± 0.00067 per °C; temperatures times ten in percent,
  // so that the slope per percent is a tenth; half a unit of the last digit printed.
  const { t_k_degC = [], b_k_degC = [] } = readColumns("gum-h3-thermometer");
  const expected = readExpected<Record<string, number>>("gum-h3-thermometer");
  const readings = t_k_degC.map((t, index) => ({
    index,
    reading: { calibration: "C-1", phase: "as_found" as const, direction: "rising" as const, reference: 0 },
    direction: "rising" as const,
    cycle: 1,
    point: index,
    elapsed: index,
    percent: { reference: 10 * (t - 20), signal: 10 * (t - 20) + (b_k_degC[index] ?? 0) },
  }));
  const line = stageLine({ stage: "sensor", input: "reference", output: "signal" }, readings, loop, 0);
  expectNear(line?.errorAtLower.percentSpan, expected.intercept as number, 5e-5);
  expectNear(line?.errorAtLower.standardUncertainty, expected.interceptStdError as number, 5e-5);
  expectNear(10 * ((line?.gain ?? 0) - 1), expected.slope as number, 5e-6);
  expectNear(10 * (line?.gainStandardUncertainty ?? 0), expected.slopeStdError as number, 5e-6);
  expectNear(stageErrorAt(line!.fit, 100).percentSpan, expected.value as number, 5e-5);
  expectNear(stageErrorAt(line!.fit, 100).standardUncertainty, expected.valueUncertainty as number, 5e-5);
  expect(line?.excluded).toEqual([]);
});

test("one reading that was typed wrong is left out of the line and named", () => {
  const readings = staged((reference, place) => ({
    signal: place === 7 ? 2 * milliamps(reference) : milliamps(reference + 0.05 * Math.sin(place)),
  }));
  const line = stageLine({ stage: "sensor", input: "reference", output: "signal" }, readings, loop, 0);
  expect(line?.excluded).toEqual([7]);
  expectNear(line?.gain, 1, 0.002, "the wave planted has ±0.05 % of span");
});

test("a zero crossing is given only where the slope is above twice its uncertainty", () => {
  const readings = staged((reference, place) => ({ signal: milliamps(reference + 1 + 0.1 * (place % 2)) }));
  const line = stageLine({ stage: "sensor", input: "reference", output: "signal" }, readings, loop, 0);
  expect(line?.zeroCrossing).toBeUndefined();
});

test("too few readings and too little range give no line", () => {
  const ends = { stage: "sensor", input: "reference", output: "signal" } as const;
  expect(stageLine(ends, staged(() => ({ signal: 12 })).slice(0, 2), loop, 0)).toBeUndefined();
  expect(
    stageLine(
      ends,
      staged((reference) => ({ signal: 4 + reference / 10, reference: reference / 10 })),
      loop,
      0,
    ),
  ).toBeUndefined();
});

test("the line at an input is that of the fit", () => {
  expect(stageErrorAt(fitLine([0, 50, 100], [1, 1, 1]), 0)).toEqual({ percentSpan: 1, standardUncertainty: 0 });
});
