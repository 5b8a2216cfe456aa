import type { CalibrationRecord } from "../record/record-schema.ts";
import { safeFileName } from "./safe-file-name.ts";

/** Where a record's page lies inside a folder of filed records: a folder for the tag, then date, calibration, revision. */
export function filedPath({ instrument, calibration, revision }: CalibrationRecord): string {
  const date = calibration.performedOn ?? "no-date";
  return `${safeFileName(instrument.tag)}/${date}_${safeFileName(calibration.calibration)}_r${revision}.html`;
}
