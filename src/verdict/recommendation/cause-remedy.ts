import type { Remedy } from "../causes/cause.ts";
import { causeOf } from "../causes/cause-of.ts";
import type { Finding } from "../causes/finding.ts";

/**
 * What cures a cause.
 *
 * @param finding id of its cause, where in the loop it was found, and what it does not exclude
 * @returns place and words; for what only new zero and span, or another sensor, can cure: "sensor"
 * @throws RangeError for an id that no cause has
 * Source: the cause's own entry; the trade's order: measure, mend what is around the sensor, teach, and replace last.
 * @example remedyOf({ id: "current-limited", stage: "sensor" }).cures // "wiring"
 */
export function remedyOf({
  id,
  stage,
  rivals = [],
}: Pick<Finding, "id" | "stage"> & Partial<Pick<Finding, "rivals">>): Remedy {
  const { remedy, remedyAt, remedyBeside } = causeOf(id);
  if (remedyBeside !== undefined && rivals.some((rival) => rival.id === remedyBeside.rival)) return remedyBeside.remedy;
  return remedyAt?.[stage] ?? remedy;
}
