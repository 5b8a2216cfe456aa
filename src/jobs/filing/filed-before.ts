import { type CalibrationAtHand, earlierRecords, type FiledRate } from "../../filing/earlier-records.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { currentRecordsByTag } from "../../filing/latest-records.ts";
import { readFiledRecord } from "../../filing/read-filed-record.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { recordSummary } from "../../record/record-summary.ts";
import type { RecordSummary } from "../../record/record-summary-schema.ts";
import { openFolder } from "./open-folder.ts";

/** A folder of filed records, and the disk that it lies on. */
export type FiledFolder = { disk: FilingDisk; path: string };

/** What a folder tells a record that is about to be made. */
export type FiledBefore = { history: readonly RecordSummary[]; filedRate: FiledRate };

/**
 * What was filed before a calibration; each page is read once. Nothing, and a problem, where there is no such folder, and
 * where a page that was filed before cannot be read.
 */
export async function filedBefore(
  { disk, path }: FiledFolder,
  problems: ProblemList,
): Promise<((atHand: CalibrationAtHand) => Promise<FiledBefore | undefined>) | undefined> {
  const index = await openFolder(disk, path, problems);
  if (index === undefined) return undefined;
  const byTag = currentRecordsByTag(index.entries);
  const summaryByPath = new Map<string, RecordSummary | undefined>();
  return async (atHand) => {
    const { ofTag, rate } = earlierRecords(byTag, atHand);
    for (const entry of ofTag) {
      if (summaryByPath.has(entry.path)) continue;
      const found = await readFiledRecord(disk, path, entry);
      summaryByPath.set(entry.path, "record" in found ? recordSummary(found.record) : undefined);
      if ("says" in found) problems.add("options/filed-page", { file: `${path}/${entry.path}` }, { values: found });
    }
    const history = ofTag.flatMap((entry) => summaryByPath.get(entry.path) ?? []);
    return history.length === ofTag.length ? { history, filedRate: rate } : undefined;
  };
}
