import type { CurveReading } from "./error-curve.ts";
import { type Figure, notDetermined } from "./figure.ts";

/**
 * Inaccuracy: the greatest positive and the greatest negative error of any single reading.
 *
 * @param readings any number; errors in percent of span
 * @returns two numbers in percent of span: `positive` at least 0, `negative` at most 0; 0 where no reading lies on
 *   that side
 * Source: ANSI/ISA-51.1-1979 (R1993), "accuracy, measured"; IEC 61298-2:2008, "inaccuracy".
 * @example inaccuracy([{ point: 0, reference: 0, error: -0.32, direction: "rising", cycle: 1 },
 *   { point: 5, reference: 5, error: 0.26, direction: "rising", cycle: 1 }]) // { positive: 0.26, negative: -0.32 }
 */
export function inaccuracy(readings: readonly CurveReading[]): Figure<{ positive: number; negative: number }> {
  if (readings.length === 0) return notDetermined("no usable reading");
  let positive = 0;
  let negative = 0;
  for (const { error } of readings) {
    positive = Math.max(positive, error);
    negative = Math.min(negative, error);
  }
  return { positive, negative };
}
