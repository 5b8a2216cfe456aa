import { expect, test } from "vitest";
import {
  airEffects,
  airOf,
  greatestDifferenceOfForms,
  speedsOfSound,
  withoutAir,
} from "../../../src/analysis/air/air-effects.ts";
import { soundSpeedOfMixture } from "../../computed/demo/sound-speed-of-mixture.mjs";
import { expectNear } from "../sample-loop.ts";

test("what was not measured of the air is as usual: 50 %, 1013.25 hPa", () => {
  expect(airOf({ temperatureCelsius: 4 })).toMatchObject({
    relativeHumidityPercent: 50,
    pressureHectopascals: 1013.25,
  });
  expect(airOf({ temperatureCelsius: 4, relativeHumidityPercent: 80, pressureHectopascals: 990 })).toMatchObject({
    ...{ temperatureCelsius: 4, relativeHumidityPercent: 80, pressureHectopascals: 990 },
  });
});

test("both forms agree in usual air; air so wet and thin that they differ by over 1 % is doubted", () => {
  expectNear(speedsOfSound(airOf({ temperatureCelsius: 4 })).speed, 334.075531816092, 1e-9); // sums near 300
  expect(speedsOfSound(airOf({ temperatureCelsius: 4 })).agrees).toBe(true);
  expect(greatestDifferenceOfForms).toBe(0.01);
  const wet = airOf({ temperatureCelsius: 45, relativeHumidityPercent: 100, pressureHectopascals: 800 });
  expect(speedsOfSound(wet).agrees).toBe(false);
});

test("a kelvin at 20 °C is 0.18 % of the distance, dry against saturated air 0.365 %", () => {
  const { perKelvin, humidity } = airEffects(1200, airOf({ temperatureCelsius: 20 }));
  expectNear(perKelvin, -2.18, 0.02); // 0.1816 % of 1200 mm, two digits
  expectNear(Math.abs(humidity), 4.4, 0.05);
});

test("an error is split in the ratio of the speeds, and the worst is the one farthest from zero", () => {
  const speeds = { taught: soundSpeedOfMixture(20, 50), today: soundSpeedOfMixture(4, 50) };
  const part = speeds.taught / speeds.today - 1;
  const errors = [
    { reference: 1000, error: 30 },
    { reference: 200, error: -12 },
  ];
  const { parts, worstNow, worstLeft } = withoutAir(errors, speeds);
  for (const { reference, error, airError, left } of parts) {
    expectNear(airError, part * reference, 1e-12);
    expectNear(airError + left, error, 1e-12);
  }
  expect(worstNow).toBe(30);
  expectNear(worstLeft, -12 - part * 200, 1e-12);
});
