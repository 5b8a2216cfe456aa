import { describe, expect, test } from "vitest";
import { assembleSound } from "../../src/assembly/assemble-sound.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { soundSchema } from "../../src/record/sound-schema.ts";
import { expectNear } from "../analysis/sample-loop.ts";
import { frozen } from "../charts/frozen.ts";
import { sampleRecord } from "../charts/sample-record.ts";
import { soundSpeedOfMixture } from "../computed/demo/sound-speed-of-mixture.mjs";
import { demoRecord } from "../report/demo-records.ts";

type Changes = { instrument?: Partial<CalibrationRecord["instrument"]>; calibration?: object };

/** An invented ultrasonic loop, 200 to 1200 mm, ±0.5 %; taught at 20 °C, read at 4 °C. */
function ultrasonic({ instrument = {}, calibration = {} }: Changes = {}): CalibrationRecord {
  const record = structuredClone(sampleRecord());
  const own = { principle: "ultrasonic" as const, temperatureCompensated: false, taughtAt: 20 };
  Object.assign(record.instrument, own, instrument);
  Object.assign(record.calibration, { airTemperature: 4 }, calibration);
  return frozen(record);
}

const soundOf = (changes?: Changes) => assembleSound(ultrasonic(changes)).sound;

test("at 4 °C, 50 %, 1013.25 hPa sound travels at 334.0755 m/s, and both are said to be assumed", () => {
  const air = soundOf()?.air;
  expectNear(air?.speed, 334.075531816092, 1e-9); // a few roundings of sums near 300
  expect(air?.assumed).toEqual(["relative humidity", "pressure"]);
  expect(air?.agrees).toBe(true);
  expect(soundOf({ calibration: { relativeHumidity: 80, pressure: 1000 } })?.air?.assumed).toEqual([]);
});

test("each point's error is split into that of the air and what is left, in the ratio of the speeds", () => {
  const [found] = soundOf()?.explained ?? [];
  const part = soundSpeedOfMixture(20, 50) / soundSpeedOfMixture(4, 50) - 1;
  for (const { reference, error, airError, left } of found?.points ?? []) {
    // Two ideal gases at 1008 hPa: 0.03 % of the distance apart from the polynomial at 1013.25 hPa.
    expectNear(airError, part * reference, 0.0003 * reference);
    expectNear(airError + left, error, 1e-12); // a rounding of numbers near 100
  }
  expect(found?.points).toHaveLength(11);
});

test("worst now is the reading farthest from zero, worst left that of the readings without the air", () => {
  const record = ultrasonic();
  const { explained, air, taught } = assembleSound(record).sound ?? {};
  const share = (taught?.speed ?? 0) / (air?.speed ?? 1) - 1;
  const readings = record.phases.asFound?.readings ?? [];
  const worst = (of: (reading: (typeof readings)[number]) => number) =>
    Math.max(...readings.map((reading) => Math.abs(of(reading))));
  expectNear(
    Math.abs(explained?.[0]?.worstNow ?? 0),
    worst(({ errorDistance = 0 }) => errorDistance),
    0,
  );
  expectNear(
    Math.abs(explained?.[0]?.worstLeft ?? 0),
    worst(({ errorDistance = 0, reference }) => errorDistance - share * reference),
    1e-11, // rounding of distances near 1000
  );
});

test("LT-318: the air explains most of the error, and what is left is what was planted", () => {
  const [found] = demoRecord("LT-318").sound?.explained ?? [];
  expect(Math.abs(found?.worstNow ?? 0)).toBeGreaterThan(36); // the tolerance, 1 % of 3600 mm
  expect(Math.abs(found?.worstLeft ?? 0)).toBeLessThan(9); // a quarter of it
  for (const { reference, left } of found?.points ?? []) {
    const planted = 3600 * (0.0005 + (0.001 * (reference - 400)) / 3600);
    // Noise 0.05 % of 3600 mm over six readings, four of it; the demo's two gases are 0.02 % of the distance apart.
    expectNear(left, planted, (4 * 1.83) / Math.sqrt(6) + 0.0002 * reference, `${reference} mm`);
  }
});

test("as left is explained too where nothing touched the sensor, and not where it was taught anew", () => {
  const phases = (calibration: object) => soundOf({ calibration })?.explained.map(({ phase }) => phase);
  expect(phases({})).toEqual(["asFound", "asLeft"]);
  expect(phases({ adjustment: "none" })).toEqual(["asFound", "asLeft"]);
  expect(phases({ adjustment: "re-scale" })).toEqual(["asFound", "asLeft"]);
  for (const adjustment of ["re-teach", "repair", "replace"]) expect(phases({ adjustment })).toEqual(["asFound"]);
});

test("a sensor that corrects itself has nothing to explain, and what it would read otherwise", () => {
  const sound = soundOf({ instrument: { temperatureCompensated: true } });
  expect(sound?.isCompensated).toBe(true);
  expect(sound?.explained).toEqual([]);
  expectNear(sound?.errorAtUpperEnd, 1200 * 0.029669, 0.01); // 343.98689 / 334.07553 − 1, to its digits
});

describe("whether a kelvin or the humidity matters", () => {
  test("one kelvin at 20 °C is 0.18 % of the distance: 2.2 of 5 mm, which counts", () => {
    const effects = soundOf({ calibration: { airTemperature: 20 } })?.effects;
    expectNear(effects?.perKelvin.distance, -2.18, 0.02); // 0.1816 % of 1200 mm, two digits
    expect(effects?.perKelvin.weight).toBe("counts");
    // 0.365 % of 1200 mm between dry and saturated air: 4.4 mm.
    expectNear(Math.abs(effects?.humidity.distance ?? 0), 4.4, 0.05);
    expect(effects?.humidity.weight).toBe("counts");
  });

  test("of a tolerance with two sides the lesser counts", () => {
    const tolerances = [
      { tolerance: 2, toleranceMinus: 0.1 },
      { tolerance: 0.1, toleranceMinus: 2 },
    ].map((instrument) => soundOf({ instrument })?.effects?.tolerance);
    for (const tolerance of tolerances) expectNear(tolerance, 1, 1e-12); // 0.1 % of 1000 mm
  });

  test("beside ±20 mm neither matters; beside ±1 mm a kelvin is more than the whole", () => {
    const wide = soundOf({ instrument: { tolerance: 2 } })?.effects;
    expect([wide?.perKelvin.weight, wide?.humidity.weight]).toEqual(["small", "small"]);
    expect(soundOf({ instrument: { tolerance: 0.1 } })?.effects?.perKelvin.weight).toBe("beyond");
  });
});

test("colder air than when taught reads long, hotter short; the extremes beyond 0 to 30 °C are marked", () => {
  const expected = soundOf({ instrument: { airMin: -10, airMax: 28 } })?.expected ?? [];
  expect(expected.map(({ extreme, isInStatedRange }) => [extreme, isInStatedRange])).toEqual([
    ["coldest", false],
    ["hottest", true],
  ]);
  expect(expected[0]?.errorAtUpper).toBeGreaterThan(0);
  expect(expected[1]?.errorAtUpper).toBeLessThan(0);
  const [coldest] = expected;
  expectNear((coldest?.errorAtUpper ?? 0) / (coldest?.errorAtLower ?? 1), 6, 1e-12); // 1200 mm against 200 mm
});

test("what is not stated says so", () => {
  const withoutAir = soundOf({ calibration: { airTemperature: undefined } });
  expect(withoutAir).toMatchObject({ air: null, effects: null, explained: [], errorAtUpperEnd: null });
  expect(withoutAir?.notDetermined.air).toBeDefined();
  const untaught = soundOf({ instrument: { taughtAt: undefined } });
  expect(untaught).toMatchObject({ taught: null, explained: [], expected: [] });
  expect(untaught?.notDetermined.taught).toBeDefined();
  expect(untaught?.effects).not.toBeNull();
});

test("only an ultrasonic sensor has the part, and it is what the schema describes", () => {
  expect(assembleSound(sampleRecord())).toEqual({});
  expect(soundSchema.parse(soundOf())).toEqual(soundOf());
  expect(soundSchema.safeParse({ ...soundOf(), colour: "red" }).success).toBe(false);
});
