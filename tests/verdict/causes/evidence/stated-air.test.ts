import { expect, test } from "vitest";
import { statedAirOf } from "../../../../src/verdict/causes/evidence/stated-air.ts";
import {
  airTemperature,
  bothEndsTaughtWrong,
  datumShifted,
  endsTaughtWrong,
} from "../../../../src/verdict/causes/sensor-line-causes.ts";
import { idsOf, planted } from "../planted.ts";

const sensorLineCauses = [airTemperature, bothEndsTaughtWrong, datumShifted, endsTaughtWrong];

// Taught at 20 °C, the day 30 °C: √(293.15/303.15) = 0.98337 by the short form of ISO 9613-1, which takes the air as
// dry: with the vapour of half-saturated air at 30 °C Cramer's is 0.14 % from it.
const gain = Math.sqrt(293.15 / 303.15);
const ofDay = (taughtAt: number, airTemperature: number, temperatureCompensated = false) => ({
  instrument: { principle: "ultrasonic" as const, taughtAt, temperatureCompensated },
  calibration: { airTemperature },
});
/** 200 to 1200 mm: what is shown of a part of the range, in air of that gain and shifted by a part of the span. */
const shown = (shift: number) => (part: number) => ((200 + 1000 * part) * gain - 200) / 1000 + shift;

test("the air is that of its own arithmetic, at both ends of the range", () => {
  const evidence = planted({ seen: shown(0.02) }, ofDay(20, 30));
  const air = statedAirOf(evidence, evidence.stages[0]!)!;
  expect(Math.abs(air.gain / gain - 1)).toBeLessThan(0.002);
  expect(Math.abs(air.near - 100 * (gain - 1) * 0.2)).toBeLessThan(0.03);
  expect(Math.abs(air.far - 100 * (gain - 1) * 1.2)).toBeLessThan(0.25);
});

test("a shift beside the air of the day: both are named", () => {
  expect(idsOf(sensorLineCauses, planted({ seen: shown(0.02) }, ofDay(20, 30)))).toEqual([
    "datum-shifted",
    "air-temperature",
  ]);
});

test("air that is as it was taught, or that the sensor corrects for, is excluded", () => {
  for (const setting of [ofDay(20, 20), ofDay(20, 30, true)]) {
    const evidence = planted({ seen: (part) => part + 0.02 }, setting);
    expect(statedAirOf(evidence, evidence.stages[0]!)).toBeUndefined();
    expect(idsOf(sensorLineCauses, evidence)).toEqual(["datum-shifted"]);
  }
});
