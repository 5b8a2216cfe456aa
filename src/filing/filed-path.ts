import type { CalibrationRecord } from "../record/record-schema.ts";
import { safeFileName } from "./safe-file-name.ts";

/**
 * Where a record's page lies inside a folder of filed records: a folder for the tag, then date, calibration, revision.
 *
 * @param time the how manieth page of that revision it is: more than 1 where those before it were withdrawn, and stay
 */
export function filedPath({ instrument, calibration, revision }: CalibrationRecord, time = 1): string {
  const date = calibration.performedOn ?? "no-date";
  const again = time === 1 ? "" : `_again${time}`;
  return `${safeFileName(instrument.tag)}/${date}_${safeFileName(calibration.calibration)}_r${revision}${again}.html`;
}
