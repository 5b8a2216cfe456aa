import { fileURLToPath } from "node:url";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { frozen } from "../charts/frozen.ts";
import { recordsOfFolder } from "../outside/records-of-folder.ts";

/** The records of the demo plant, which nobody changes, and what is told of its tables. */
export const { records: demoRecords, problems: demoProblems } = frozen(
  await recordsOfFolder(fileURLToPath(new URL("../../data-demo", import.meta.url))),
);

export function demoRecord(tag: string): CalibrationRecord {
  const record = demoRecords.find(({ instrument }) => instrument.tag === tag);
  if (record === undefined) throw new RangeError(`demoRecord: data-demo has no ${tag}`);
  return record;
}
