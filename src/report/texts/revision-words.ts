import type { CalibrationRecord } from "../../record/record-schema.ts";

/** What follows the number of a record that replaces another; nothing for a first issue. */
export function revisionWords({ revision }: Pick<CalibrationRecord, "revision">): string {
  return revision === 1 ? "" : `, revision ${revision}`;
}

/** The same for the kind of the document. */
export function amendmentWords({ revision }: Pick<CalibrationRecord, "revision">): string {
  return revision === 1 ? "" : `, amendment ${revision - 1}`;
}
