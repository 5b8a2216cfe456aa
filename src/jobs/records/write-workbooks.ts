import type { ProblemList } from "../../problems/problem-list.ts";
import { checkSeal } from "../../proof/check-seal.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { recordSheets } from "../../spreadsheet/record-workbook.ts";
import { writeWorkbook } from "../../spreadsheet/write-workbook.ts";
import type { Disk } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { readRecordFiles } from "./read-record-files.ts";
import { recordPlace } from "./record-place.ts";

/**
 * Writes a spreadsheet with live formulas for each record, at the place that its page would have below a folder.
 *
 * @returns paths of those that were written; a record that was changed after it was sealed stops before any is
 */
export async function writeWorkbooks(
  disk: Disk,
  paths: readonly string[],
  out: string,
  problems: ProblemList,
): Promise<readonly string[]> {
  const files = await readRecordFiles(disk, paths, problems);
  for (const { path, written } of files) {
    if (checkSeal(written).length > 0) problems.add("filing/seal-broken", { file: path });
  }
  if (problems.hasStop) return [];
  const written: string[] = [];
  for (const [place, record] of placesOf(files, out)) {
    const path = `${place}.xlsx`;
    const bytes = await writeWorkbook(recordSheets(record));
    if (!(await writeOrTell(() => disk.writeTogether([{ path, text: bytes }]), path, problems))) break;
    written.push(path);
  }
  return written;
}

/** Each record once, by its fingerprint; revisions and records of one name lie beside each other. */
function placesOf(files: readonly { record: SealedRecord }[], out: string): ReadonlyMap<string, SealedRecord> {
  const places = new Map<string, SealedRecord>();
  const records = new Map(files.map(({ record }) => [record.seal.sha256, record]));
  for (const record of records.values()) {
    const revision = record.revision > 1 ? `_r${record.revision}` : "";
    const place = `${recordPlace(out, record)}${revision}`;
    places.set(places.has(place) ? `${place}_${record.seal.sha256.slice(0, 8)}` : place, record);
  }
  return places;
}
