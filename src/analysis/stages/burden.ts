/** What stands in series with the sensor, in Ω; the cable both ways. */
export type SeriesResistance = { card: number; barrier: number; cable: number };

/**
 * The greatest resistance that a supply can drive a current through, beside the sensor: R_max = (V_supply − V_min) / I.
 *
 * @param supplyVoltage V_supply, V
 * @param leastDeviceVoltage V_min, the least voltage that the sensor lives on, V
 * @param currentAmperes I, the highest that the loop may give, A
 * @returns Ω; below zero where the supply is less than the sensor needs
 * Source: Ohm's law; at 20 mA a loop without margin would never report a fault.
 * @example greatestBurden(24, 12, 0.021) // 571.4
 */
export function greatestBurden(supplyVoltage: number, leastDeviceVoltage: number, currentAmperes: number): number {
  return (supplyVoltage - leastDeviceVoltage) / currentAmperes;
}

/**
 * The supply voltage that a two-wire loop needs: V = V_min + I · R.
 *
 * @param leastDeviceVoltage V_min, the least voltage that the sensor lives on, V
 * @param currentAmperes I, the greatest current, A
 * @param resistance R, everything in series with the sensor, Ω
 * @returns V
 * Source: Ohm's law.
 * @example requiredSupply(12, 0.022, 250) // 17.5
 */
export function requiredSupply(leastDeviceVoltage: number, currentAmperes: number, resistance: number): number {
  return leastDeviceVoltage + currentAmperes * resistance;
}

/**
 * Everything in series with the sensor: R = R_card + R_barrier + R_cable.
 *
 * @param parts each in Ω, the cable there and back
 * @returns Ω
 * Source: Kirchhoff's voltage law.
 * @example totalResistance({ card: 250, barrier: 28, cable: 22 }) // 300
 */
export function totalResistance({ card, barrier, cable }: SeriesResistance): number {
  return card + barrier + cable;
}

/**
 * Resistance of a cable there and back: 2 · ρ · L.
 *
 * @param ohmsPerKilometre of one core at its temperature, Ω/km
 * @param lengthMetres L, one way, m
 * @returns Ω
 * Source: two cores of one length in series.
 * @example cableResistance(39, 100) // 7.8
 */
export function cableResistance(ohmsPerKilometre: number, lengthMetres: number): number {
  return (2 * ohmsPerKilometre * lengthMetres) / 1000;
}
