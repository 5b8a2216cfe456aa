/** Signals by which a sensor says that it has no measurement; a side that is not defined is absent. */
export type FaultLevels = { low?: number | undefined; high?: number | undefined };

/**
 * The fault levels of a 4–20 mA signal where the workbook names none.
 *
 * Source: NAMUR NE 43: failure information at 3.6 mA and below or at 21.0 mA and above; 3.8 to 20.5 mA is measurement.
 */
export const milliampFaultLevels: FaultLevels = Object.freeze({ low: 3.6, high: 21 });

/**
 * Whether a signal is a fault report rather than a measurement.
 *
 * @param signal in the unit of the levels
 * @param levels at or below `low`, at or above `high`
 * @returns the side on which it lies, or "none"
 * Source: NAMUR NE 43.
 * @example faultSide(3.55, milliampFaultLevels) // "low"
 */
export function faultSide(signal: number, levels: FaultLevels): "low" | "high" | "none" {
  if (levels.low !== undefined && signal <= levels.low) return "low";
  if (levels.high !== undefined && signal >= levels.high) return "high";
  return "none";
}
