import { safeFileName } from "../../filing/safe-file-name.ts";

/** Where a record of its own lies below a folder, without the ending. */
export function recordPlace(
  out: string,
  { instrument, calibration }: { instrument: { tag: string }; calibration: { calibration: string } },
): string {
  return `${out}/${safeFileName(instrument.tag)}/${safeFileName(calibration.calibration)}`;
}
