import { recordPage } from "../../src/jobs/records/write-record.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { demoRecords } from "./demo-records.ts";

const pages = new Map<CalibrationRecord, Promise<string>>();

/** The page of a record, sealed; those of the demo plant, which nobody changes, are drawn once for all tests. */
export function drawnPage(record: CalibrationRecord): Promise<string> {
  const page = pages.get(record) ?? recordPage(sealRecord(record));
  if (demoRecords.includes(record)) pages.set(record, page);
  return page;
}
