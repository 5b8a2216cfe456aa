import { expect, test } from "vitest";
import { axisCharacteristic, inUnitOf, stagedReadings } from "../../../src/analysis/stages/staged-readings.ts";
import { loop, reading, signalLoop } from "../sample-loop.ts";

test("every quantity stands in percent of span, a reverse-acting value too", () => {
  const reverse = {
    ...loop,
    characteristics: {
      ...loop.characteristics,
      value: { rangeLower: 0, rangeUpper: 100, outputAtLower: 10, outputAtUpper: 0 },
    },
  };
  const read = { signal: 12.5, signalAtCard: 12, counts: 13824, value: 2.5 };
  const [staged] = stagedReadings([reading(50, read)], reverse).readings;
  expect(staged?.percent).toEqual({ reference: 50, signal: 53.125, signalAtCard: 50, counts: 50, value: 75 });
});

test("what the instrument does not describe and what somebody rejected is left out", () => {
  const { readings } = stagedReadings(
    [reading(10, { rejected: "slipped" }), reading(50, { signal: 12, value: 5 })],
    signalLoop,
  );
  expect(readings).toHaveLength(1);
  expect(readings[0]).toMatchObject({ index: 1, percent: { reference: 50, signal: 50 } });
});

test("times count where every reading has one and the clock moves; else the order of the table", () => {
  const at = (time?: string) => reading(50, time === undefined ? {} : { time });
  const elapsed = (...times: (string | undefined)[]) => {
    const staged = stagedReadings(times.map(at), signalLoop);
    return [staged.isByClock, ...staged.readings.map((one) => one.elapsed)];
  };
  expect(elapsed("2026-03-03T23:59", "2026-03-04T00:01:30")).toEqual([true, 0, 2.5]);
  expect(elapsed("08:00", "08:10")).toEqual([true, 0, 10]);
  expect(elapsed("08:10", "08:00", "08:20")).toEqual([true, 0, 0, 0]);
  expect(elapsed("08:00", undefined)).toEqual([false, 0, 1]);
  expect(elapsed("08:00", "08:00")).toEqual([false, 0, 1]);
});

test("percent of span goes back into mA, mm and counts", () => {
  expect(inUnitOf(loop, "signal", 50)).toBe(12);
  expect(inUnitOf(loop, "reference", 25)).toBe(25);
  expect(inUnitOf(loop, "counts", 100)).toBe(27648);
  expect(axisCharacteristic(loop, "signalAtCard")).toBe(loop.characteristics.signal);
  expect(() => inUnitOf(signalLoop, "value", 1)).toThrow(TypeError);
});
