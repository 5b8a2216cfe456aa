import type { Direction } from "../../model/calibration-words.ts";
import type { CurvePoint } from "./error-curve.ts";
import { type Figure, notDetermined } from "./figure.ts";

export type MaximumMeasuredError = { percentSpan: number; point: number; direction: Direction };

/**
 * Maximum measured error: the mean error of one direction at one test point that is farthest from zero.
 *
 * @param curve test points; means in percent of span
 * @returns a(j, up) or a(j, down) with its sign, its test point (nominal position, distance) and its direction;
 *   the first by rising distance where several are equally far
 * Source: IEC 61298-2:2008, "maximum measured error", from memory.
 * @example maximumMeasuredError([{ point: 5, reference: 5, up: 0.1, down: -0.3, mean: -0.1 }])
 *   // { percentSpan: -0.3, point: 5, direction: "falling" }
 */
export function maximumMeasuredError(curve: readonly CurvePoint[]): Figure<MaximumMeasuredError> {
  let worst: MaximumMeasuredError | undefined;
  for (const { point, up, down } of curve) {
    for (const [percentSpan, direction] of [
      [up, "rising"],
      [down, "falling"],
    ] as const) {
      if (percentSpan !== null && (worst === undefined || Math.abs(percentSpan) > Math.abs(worst.percentSpan))) {
        worst = { percentSpan, point, direction };
      }
    }
  }
  return worst ?? notDetermined("no usable reading");
}
