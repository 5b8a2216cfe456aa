import type { RecordSummary } from "./record-summary-schema.ts";

/** What a record says of which sensor it was. */
export type OfSensor = Pick<RecordSummary, "serial" | "adjustment">;

/**
 * Whether the errors of two records that follow each other may be held against each other: the serial number did not
 * change, or a record says that the sensor was replaced, so that the line of drift breaks there by itself.
 *
 * @param before record, summary
 * @param now the next one
 * @returns false where the serial numbers differ and nobody wrote of a replacement
 * Source: own choice: a number that is not stated tells nothing.
 * @example isSameSensor({ serial: "A-1", adjustment: "none" }, { serial: "A-2", adjustment: "none" }) // false
 */
export function isSameSensor(before: OfSensor, now: OfSensor): boolean {
  if (before.serial === null || now.serial === null || before.serial === now.serial) return true;
  return before.adjustment === "replace" || now.adjustment === "replace";
}
