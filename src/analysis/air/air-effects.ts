import { airError } from "./air-error.ts";
import {
  type Air,
  shortSpeedOfSound,
  speedOfSound,
  usualCarbonDioxideFraction,
  usualHumidityPercent,
  usualPressureHectopascals,
} from "./speed-of-sound.ts";

/**
 * Greatest part by which the two forms of the speed of sound may differ: own choice. Over all air that the long form is
 * vouched for they differ by 0.04 to 0.93 %, for the short form takes the air as dry and at one pressure.
 */
export const greatestDifferenceOfForms = 0.01;

/**
 * Air as far as it was measured, the rest as usual.
 *
 * @param measured temperature in °C; relative humidity in percent and pressure in hPa where they are known
 * @returns the air
 * Source: `usualHumidityPercent`, `usualPressureHectopascals`, `usualCarbonDioxideFraction`.
 * @example airOf({ temperatureCelsius: 20 }).relativeHumidityPercent // 50
 */
export function airOf(measured: {
  temperatureCelsius: number;
  relativeHumidityPercent?: number | undefined;
  pressureHectopascals?: number | undefined;
}): Air {
  const { temperatureCelsius, relativeHumidityPercent, pressureHectopascals } = measured;
  return {
    temperatureCelsius,
    relativeHumidityPercent: relativeHumidityPercent ?? usualHumidityPercent,
    pressureHectopascals: pressureHectopascals ?? usualPressureHectopascals,
    carbonDioxideFraction: usualCarbonDioxideFraction,
  };
}

/**
 * The speed of sound by both forms, and whether they agree.
 *
 * @param air as above
 * @returns both in m/s; false where they differ by more than a hundredth
 * Source: `speedOfSound`, `shortSpeedOfSound`; own choice of what agrees.
 * @example speedsOfSound(airOf({ temperatureCelsius: 20 })).agrees // true
 */
export function speedsOfSound(air: Air): { speed: number; shortSpeed: number; agrees: boolean } {
  const [speed, shortSpeed] = [speedOfSound(air), shortSpeedOfSound(air.temperatureCelsius)];
  return { speed, shortSpeed, agrees: Math.abs(speed / shortSpeed - 1) <= greatestDifferenceOfForms };
}

/**
 * What a change of the day's air does to a sensor that reckons with today's: one kelvin more, and saturated against dry.
 *
 * @param reference distance from the sensor's face
 * @param today the day's air
 * @returns errors, unit of the reference
 * Source: `airError`.
 * @example airEffects(1000, airOf({ temperatureCelsius: 20 })).perKelvin // -1.8144
 */
export function airEffects(reference: number, today: Air): { perKelvin: number; humidity: number } {
  const between = (assumed: Partial<Air>, actual: Partial<Air>) =>
    airError(reference, speedOfSound({ ...today, ...assumed }), speedOfSound({ ...today, ...actual }));
  return {
    perKelvin: between({}, { temperatureCelsius: today.temperatureCelsius + 1 }),
    humidity: between({ relativeHumidityPercent: 0 }, { relativeHumidityPercent: 100 }),
  };
}

/** An error at a distance from the sensor's face, and its parts: of the air, and what is left without that. */
export type AirPart = { reference: number; error: number; airError: number; left: number };

/**
 * Errors as they are and without what the air makes of them.
 *
 * @param errors at distances from the sensor's face, at least one
 * @param speeds of the air in which the sensor was taught, and of the day's air, m/s
 * @returns each error with its parts, and the error farthest from zero, as it is and without the air; unit of the errors
 * @throws TypeError without an error
 * Source: `airError`.
 * @example withoutAir([{ reference: 1000, error: 50 }], { taught: 343.2, today: 330 }).worstLeft // 10
 */
export function withoutAir(
  errors: readonly { reference: number; error: number }[],
  speeds: { taught: number; today: number },
): { parts: readonly AirPart[]; worstNow: number; worstLeft: number } {
  const parts = errors.map(({ reference, error }) => {
    const ofAir = airError(reference, speeds.taught, speeds.today);
    return { reference, error, airError: ofAir, left: error - ofAir };
  });
  return {
    parts,
    worstNow: farthestFromZero(parts.map(({ error }) => error)),
    worstLeft: farthestFromZero(parts.map(({ left }) => left)),
  };
}

function farthestFromZero(errors: readonly number[]): number {
  return errors.reduce((worst, error) => (Math.abs(error) > Math.abs(worst) ? error : worst));
}
