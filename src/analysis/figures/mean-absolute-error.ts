import { mean } from "../../numeric/mean.ts";
import type { CurveReading } from "./error-curve.ts";
import { type Figure, notDetermined } from "./figure.ts";

/** How far the readings lie from the truth on average, whatever the sign. */
export type MeanAbsoluteError = { percentSpan: number; distance: number };

/**
 * Mean absolute error: the mean of the sizes of the errors of all readings used.
 *
 * Beside the greatest error it says whether one reading is off or all of them; beside the zero error, whether errors of
 * both signs hide behind a mean of none.
 *
 * @param readings any number; errors in percent of span
 * @param span of the range, distance, > 0
 * @returns percent of span and distance, both at least 0; not determined without a reading
 * Source: definition of the mean deviation from a given value; JCGM 100:2008 has no figure of this name.
 * @example meanAbsoluteError([-0.5, 0.25].map((error) => ({ point: 0, reference: 0, error, direction: "rising", cycle: 1 })),
 *   200) // { percentSpan: 0.375, distance: 0.75 }
 */
export function meanAbsoluteError(readings: readonly CurveReading[], span: number): Figure<MeanAbsoluteError> {
  if (readings.length === 0) return notDetermined("no usable reading");
  const percentSpan = mean(readings.map(({ error }) => Math.abs(error)));
  return { percentSpan, distance: (percentSpan * span) / 100 };
}
