import * as z from "zod";
import type { EffectWeight } from "../verdict/teaching/effect-weight.ts";
import { phaseNames } from "./phase-name.ts";

const finite = z.number();
const weight = z.enum(["small", "counts", "beyond"] satisfies EffectWeight[]);

const soundAirSchema = z.strictObject({
  temperature: finite.describe("°C"),
  relativeHumidity: finite.describe("percent"),
  pressure: finite.describe("hPa"),
  assumed: z.array(z.enum(["relative humidity", "pressure"])).describe("not stated, so taken as usual"),
  speed: finite.describe("m/s, Cramer 1993"),
  shortSpeed: finite.describe("m/s, ISO 9613-1: temperature alone"),
  agrees: z.boolean().describe("the two forms differ by no more than is stated"),
  isInStatedRange: z.boolean().describe("temperature, pressure and humidity lie where the long form is vouched for"),
});

const effect = z.strictObject({ distance: finite, weight });

/** Sound in air: what the air does to an ultrasonic sensor; distances in the instrument's unit. */
export const soundSchema = z.strictObject({
  isCompensated: z.boolean(),
  air: soundAirSchema.nullable(),
  taught: z.strictObject({ temperature: finite, speed: finite }).nullable().describe("the air that the sensor assumes"),
  effects: z
    .strictObject({
      reference: finite.describe("the far end of the range"),
      tolerance: finite.describe("the lesser side of the tolerance there"),
      perKelvin: effect.describe("error that one kelvin makes there"),
      humidity: effect.describe("from dry to saturated air"),
    })
    .nullable(),
  errorAtUpperEnd: finite.nullable().describe("error that the day's air makes at the far end without correction"),
  explained: z.array(
    z.strictObject({
      phase: z.enum(phaseNames),
      points: z.array(z.strictObject({ reference: finite, error: finite, airError: finite, left: finite })),
      worstNow: finite.describe("error of the reading farthest from zero"),
      worstLeft: finite.describe("the same when the air's error is taken off each reading"),
    }),
  ),
  expected: z.array(
    z.strictObject({
      extreme: z.enum(["coldest", "hottest"]),
      temperature: finite,
      speed: finite,
      isInStatedRange: z.boolean(),
      errorAtLower: finite,
      errorAtUpper: finite,
      toleranceAtUpper: finite,
    }),
  ),
  notDetermined: z.record(z.string(), z.string()),
});

export type SoundRecord = z.infer<typeof soundSchema>;
