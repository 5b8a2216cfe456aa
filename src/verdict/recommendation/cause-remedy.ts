import type { Remedy } from "../causes/cause.ts";
import { causeOf } from "../causes/cause-of.ts";
import type { Finding } from "../causes/finding.ts";

/**
 * What cures a cause.
 *
 * @param finding id of its cause, and where in the loop it was found
 * @returns place and words; for what only new zero and span, or another sensor, can cure: "sensor"
 * @throws RangeError for an id that no cause has
 * Source: the cause's own entry; the trade's order: measure, mend what is around the sensor, teach, and replace last.
 * @example remedyOf({ id: "current-limited", stage: "sensor" }).cures // "wiring"
 */
export function remedyOf({ id, stage }: Pick<Finding, "id" | "stage">): Remedy {
  const { remedy, remedyAtSensor } = causeOf(id);
  return stage === "sensor" ? (remedyAtSensor ?? remedy) : remedy;
}
