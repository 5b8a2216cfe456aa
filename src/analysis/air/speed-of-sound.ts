/** Air as sound meets it; what was not measured is taken from the usual values below. */
export type Air = {
  temperatureCelsius: number;
  /** percent, 0 to 100 */
  relativeHumidityPercent: number;
  pressureHectopascals: number;
  /** amount of carbon dioxide in the amount of air, 0 to 1 */
  carbonDioxideFraction: number;
};

/** Relative humidity taken where none is stated, percent: middle of all there are, own choice. */
export const usualHumidityPercent = 50;
/** Pressure taken where none is stated, hPa: standard atmosphere, ISO 2533:1975, exact. */
export const usualPressureHectopascals = 1013.25;
/** Mole fraction of carbon dioxide: IEC 61094-2:2009, table F.1. */
export const usualCarbonDioxideFraction = 0.0004;

const zeroCelsius = 273.15;

/** Cramer's a0 to a15, for t in °C, p in Pa, mole fractions 0 to 1; result in m/s. */
const cramer = [
  331.5024, 0.603055, -0.000528, 51.471935, 0.1495874, -0.000782, -1.82e-7, 3.73e-8, -2.93e-10, -85.20931, -0.228525,
  5.91e-5, -2.835149, -2.15e-13, 29.179762, 0.000486,
] as const;

/**
 * Speed of sound in humid air.
 *
 * c = a0 + a1 t + a2 t² + (a3 + a4 t + a5 t²) xw + (a6 + a7 t + a8 t²) p + (a9 + a10 t + a11 t²) xc + a12 xw² + a13 p²
 * + a14 xc² + a15 xw p xc, with t in °C, p in Pa, xw and xc the mole fractions of water vapour and carbon dioxide.
 *
 * @param air temperature in °C, relative humidity in percent, pressure in hPa, carbon dioxide as a fraction
 * @returns m/s; vouched for by its author from 0 to 30 °C, 750 to 1020 hPa, xw up to 0.06, xc up to 0.01 (see
 *   `isInStatedRange`); beyond that the polynomial goes on
 * Faults: none.
 * Source: O. Cramer, J. Acoust. Soc. Am. 93, 2510 (1993), p. 2514; the same in IEC 61094-2:2009,
 * annex F.
 * @example speedOfSound({ temperatureCelsius: 23, relativeHumidityPercent: 50, pressureHectopascals: 1013.25,
 *   carbonDioxideFraction: 0.0004 }) // 345.86652, IEC 61094-2:2009, table F.1
 */
export function speedOfSound(air: Air): number {
  const [a0, a1, a2, a3, a4, a5, a6, a7, a8, a9, a10, a11, a12, a13, a14, a15] = cramer;
  const t = air.temperatureCelsius;
  const p = 100 * air.pressureHectopascals;
  const xw = waterVapourFraction(air);
  const xc = air.carbonDioxideFraction;
  const quadratic = (constant: number, linear: number, square: number) => constant + linear * t + square * t * t;
  return (
    quadratic(a0, a1, a2) +
    quadratic(a3, a4, a5) * xw +
    quadratic(a6, a7, a8) * p +
    quadratic(a9, a10, a11) * xc +
    a12 * xw * xw +
    a13 * p * p +
    a14 * xc * xc +
    a15 * xw * p * xc
  );
}

/**
 * Mole fraction of water vapour in humid air: xw = (H/100) · f · psv / p.
 *
 * f = 1.00062 + 3.14e-8 p + 5.6e-7 t² (enhancement factor), psv = exp(1.2378847e-5 T² − 1.9121316e-2 T + 33.93711047 −
 * 6.3431645e3/T) in Pa (saturation vapour pressure), T = t + 273.15 in K, p in Pa.
 *
 * @param air as above; carbon dioxide plays no part
 * @returns fraction, 0 to 1
 * Faults: none.
 * Source: R. S. Davis, Metrologia 29, 67 (1992) (CIPM-81/91); the same in IEC 61094-2:2009, annex F.
 * @example waterVapourFraction({ temperatureCelsius: 23, relativeHumidityPercent: 0, pressureHectopascals: 1013.25,
 *   carbonDioxideFraction: 0.0004 }) // 0
 */
export function waterVapourFraction(air: Omit<Air, "carbonDioxideFraction">): number {
  const kelvin = air.temperatureCelsius + zeroCelsius;
  const pascals = 100 * air.pressureHectopascals;
  const saturation = Math.exp(
    1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin + 33.93711047 - 6.3431645e3 / kelvin,
  );
  const enhancement = 1.00062 + 3.14e-8 * pascals + 5.6e-7 * air.temperatureCelsius ** 2;
  return ((air.relativeHumidityPercent / 100) * enhancement * saturation) / pascals;
}

/**
 * Speed of sound by the short form c = 343.2 · √(T/293.15), which knows the temperature alone.
 *
 * @param temperatureCelsius above −273.15
 * @returns m/s
 * Faults: none.
 * Source: ISO 9613-1:1993, equation (A.5).
 * @example shortSpeedOfSound(20) // 343.2
 */
export function shortSpeedOfSound(temperatureCelsius: number): number {
  return 343.2 * Math.sqrt((temperatureCelsius + zeroCelsius) / 293.15);
}

/**
 * Whether an air lies where the author of the long form vouches for it.
 *
 * @param air as above
 * @returns true for 0 to 30 °C, 750 to 1020 hPa, xw up to 0.06, xc up to 0.01
 * Faults: none.
 * Source: O. Cramer, J. Acoust. Soc. Am. 93, 2510 (1993).
 * @example isInStatedRange({ temperatureCelsius: -5, relativeHumidityPercent: 50, pressureHectopascals: 1013.25,
 *   carbonDioxideFraction: 0.0004 }) // false
 */
export function isInStatedRange(air: Air): boolean {
  const { temperatureCelsius: t, pressureHectopascals: p, carbonDioxideFraction: xc } = air;
  return t >= 0 && t <= 30 && p >= 750 && p <= 1020 && waterVapourFraction(air) <= 0.06 && xc <= 0.01;
}
