import { expect, test } from "vitest";
import {
  type Air,
  isInStatedRange,
  shortSpeedOfSound,
  speedOfSound,
  waterVapourFraction,
} from "../../../src/analysis/air/speed-of-sound.ts";
import { soundSpeedOfMixture } from "../../computed/demo/sound-speed-of-mixture.mjs";
import { expectNear } from "../sample-loop.ts";

const air = (temperatureCelsius: number, relativeHumidityPercent: number, pressureHectopascals = 1013.25): Air =>
  Object.freeze({ temperatureCelsius, relativeHumidityPercent, pressureHectopascals, carbonDioxideFraction: 0.0004 });

test("23 °C, 50 %, 1013.25 hPa: 345.86652 m/s, IEC 61094-2:2009, table F.1", () => {
  expectNear(speedOfSound(air(23, 50)), 345.86652, 0.000005); // half a unit of the last printed digit
});

test("4 °C as in the docblock of the record's part, and dry air has no water", () => {
  expectNear(speedOfSound(air(4, 50)), 334.075531816092, 1e-9); // a few roundings of sums near 300
  expect(waterVapourFraction(air(23, 0))).toBe(0);
});

// Some of these were noted with three decimals only: half a unit of the last.
test.each([
  [0, 331.4477, 331.6035, 331.759],
  [10, 337.4593, 337.781, 338.103],
  [20, 343.3595, 343.9869, 344.6135],
  [30, 349.1481, 350.3102, 351.4698],
])("%d °C, dry, 50 and 100 %%: as a second transcription of the coefficients gave it", (t, dry, half, saturated) => {
  expectNear(speedOfSound(air(t, 0)), dry, 0.0005);
  expectNear(speedOfSound(air(t, 50)), half, 0.0005);
  expectNear(speedOfSound(air(t, 100)), saturated, 0.0005);
});

test("pressure counts as two ideal gases say, at 750 hPa too: the long form and γRT/M agree within 0.1 %", () => {
  for (const t of [0, 4, 10, 20, 30])
    for (const humidity of [0, 50, 100]) {
      const mixture = soundSpeedOfMixture(t, humidity);
      // Heat capacities of textbooks are good to 0.1 %, the speed to half of that; the long form lies within that.
      expectNear(speedOfSound(air(t, humidity, 1008)) / mixture - 1, 0, 1e-3, `${t} °C ${humidity} %`);
    }
  // Less pressure, the same humidity: more of the air is water, which is light.
  expect(speedOfSound(air(25, 100, 750))).toBeGreaterThan(speedOfSound(air(25, 100, 1013.25)) + 0.5);
  expect(waterVapourFraction(air(25, 100, 750))).toBeGreaterThan(1.3 * waterVapourFraction(air(25, 100, 1013.25)));
});

test("the short form is that of ISO 9613-1: 343.2 m/s at 20 °C, 331.286 at 0 °C, 360.333 at 50 °C", () => {
  expect(shortSpeedOfSound(20)).toBe(343.2);
  // Three decimals: half a unit of the last.
  for (const [t, speed] of [
    [-20, 318.927],
    [0, 331.286],
    [10, 337.296],
    [30, 349.005],
    [50, 360.333],
  ] as const)
    expectNear(shortSpeedOfSound(t), speed, 0.0005);
});

test("over all air that the long form is stated for, the two forms differ by 0.03 to 0.94 %", () => {
  let [least, greatest] = [1, 0];
  for (let t = 0; t <= 30; t += 2)
    for (let humidity = 0; humidity <= 100; humidity += 10)
      for (let pressure = 750; pressure <= 1020; pressure += 30) {
        const one = air(t, humidity, pressure);
        expect(isInStatedRange(one)).toBe(true);
        const difference = speedOfSound(one) / shortSpeedOfSound(t) - 1;
        least = Math.min(least, difference);
        greatest = Math.max(greatest, difference);
      }
  expect(least).toBeGreaterThan(0.0003);
  expect(greatest).toBeGreaterThan(0.009);
  expect(greatest).toBeLessThan(0.0094);
});

test("one kelvin is 0.17 % in dry air by the short form and 0.18 % in air of 50 % at 20 °C, as the trade has it", () => {
  // Two digits: half a unit of the last.
  expectNear(100 * (shortSpeedOfSound(21) / shortSpeedOfSound(20) - 1), 0.17, 0.005);
  expectNear(100 * (speedOfSound(air(21, 50)) / speedOfSound(air(20, 50)) - 1), 0.18, 0.005);
});

test("beyond 0 to 30 °C, 750 to 1020 hPa the long form is not vouched for", () => {
  expect([air(-0.1, 50), air(30.1, 50), air(20, 50, 749), air(20, 50, 1021)].map(isInStatedRange)).toEqual([
    false,
    false,
    false,
    false,
  ]);
});
