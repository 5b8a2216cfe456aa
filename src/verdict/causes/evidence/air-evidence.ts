import { isGasOfItsOwn, mediumOf } from "../../../model/medium.ts";
import type { Evidence } from "../finding.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { thresholds } from "./thresholds.ts";

const zeroCelsius = 273.15;

/** What the air temperature says of a gain about the face of an ultrasonic sensor. */
export type AirEvidence = {
  /** Whether the gain is that of the air that the thermometer showed; undefined where it cannot be told. */
  agrees?: boolean;
  evidence: Evidence[];
};

/**
 * Compares the gain of an ultrasonic sensor about its own face with the speed of sound on the day.
 *
 * A sensor that takes the air to be as warm as when it was taught indicates x · c(taught) / c(air), so that its gain is
 * √(T taught / T air), both in kelvin; the air that a gain would need follows from it.
 *
 * @param evidence of a phase: taught_at and air_temperature
 * @param gain about the face, 1 for no error
 * @returns whether both agree within 4 K, and the temperatures; neither in a gas of its own, of which √T alone says nothing
 * Source: c ∝ √T of an ideal gas, c(T) = 331.3 m/s · √(1 + T/273.15); −0.17 %/K near 20 °C follows.
 * @example airEvidence({ instrument: { taughtAt: 20 }, calibration: { airTemperature: 30 } }, 0.98334).agrees // true
 */
export function airEvidence({ instrument, calibration }: CauseEvidence, gain: number): AirEvidence {
  const { taughtAt } = instrument;
  const { airTemperature } = calibration;
  if (taughtAt === undefined || gain <= 0 || isGasOfItsOwn(mediumOf(calibration, instrument))) return { evidence: [] };
  const needed = (taughtAt + zeroCelsius) / gain ** 2 - zeroCelsius;
  const numbers: Evidence[] = [
    { name: "air temperature when taught", value: taughtAt, unit: "°C" },
    { name: "air temperature that this gain needs", value: needed, unit: "°C" },
  ];
  if (airTemperature === undefined) return { evidence: numbers };
  numbers.push({ name: "air temperature on the day", value: airTemperature, unit: "°C" });
  return { agrees: Math.abs(needed - airTemperature) <= thresholds.airWithinKelvin, evidence: numbers };
}
