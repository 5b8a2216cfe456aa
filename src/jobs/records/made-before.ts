import { inputsOf, type RecordContext } from "../../assembly/assemble-record.ts";
import { canonicalText } from "../../proof/canonical-text.ts";
import { readSealedRecord } from "../../record/read-sealed-record.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { CalibrationCase } from "../../workbook/calibration-case.ts";
import type { Disk } from "../disk.ts";
import { recordPlace } from "./record-place.ts";
import { recordJson } from "./write-record.ts";

/** A calibration with all that its record takes: plain data, so that another thread can make it. */
export type CaseToReport = {
  calibrationCase: CalibrationCase;
  context: Omit<RecordContext, "warnings">;
  out: string;
  /** Whether a record stays that lies there already and was made of the same rows. */
  isResumed?: boolean | undefined;
};

/** A record that was written, or kept as it lay there, and where its page is. */
export type WrittenRecord = { record: SealedRecord; page: string; isKept?: boolean };

/**
 * The record of a calibration that lies there already, where both of its files are whole and it was made by this very
 * program of the same rows with the same warnings; else nothing, and it is to be made.
 */
export async function madeBefore(
  disk: Pick<Disk, "read">,
  { calibrationCase, context, out }: CaseToReport,
): Promise<WrittenRecord | undefined> {
  const { instrument, calibration } = calibrationCase;
  const place = recordPlace(out, { instrument: instrument.row, calibration: calibration.row });
  const page = `${place}.html`;
  const [text, json] = await Promise.all([textAt(disk, page), textAt(disk, `${place}.json`)]);
  const found = text === undefined ? undefined : readSealedRecord(text, page);
  if (found === undefined || !("record" in found) || recordJson(found.written) !== json) return undefined;
  return isOfSame(found.record, calibrationCase, context) ? { record: found.record, page, isKept: true } : undefined;
}

function isOfSame(
  { software, inputs, warnings }: SealedRecord,
  calibrationCase: CaseToReport["calibrationCase"],
  { softwareVersion, ranWith, digests }: CaseToReport["context"],
): boolean {
  const now = inputsOf(calibrationCase, digests);
  return (
    software.version === softwareVersion &&
    software.sha256 === ranWith?.sha256 &&
    canonicalText(inputs.rows) === canonicalText(now.rows) &&
    canonicalText(filesBesideRows(inputs)) === canonicalText(filesBesideRows(now)) &&
    canonicalText(warnings.map(({ code }) => code)) === canonicalText(calibrationCase.warnings.map(({ code }) => code))
  );
}

/** Files of which a record holds not every row that it rests on: they have to be the same as a whole. */
function filesBesideRows({ files, rows }: SealedRecord["inputs"]) {
  const held = new Set<string>([...Object.keys(rows), "loop_checks", "controller_limits", "trips"]);
  return files
    .filter(({ tables }) => !tables.every((table) => held.has(table)))
    .map(({ name, sha256 }) => [name, sha256]);
}

async function textAt(disk: Pick<Disk, "read">, path: string): Promise<string | undefined> {
  const found = await disk.read(path);
  const [file] = found?.isFolder === false ? found.files : [];
  return file && new TextDecoder().decode(file.bytes);
}
