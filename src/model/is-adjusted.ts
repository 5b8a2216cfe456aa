import type { Calibration } from "./calibration.ts";

/** Whether a calibration names something that was done to the loop. */
export function isAdjusted({ adjustment }: Pick<Calibration, "adjustment">): boolean {
  return adjustment !== undefined && adjustment !== "none";
}
