import { assembleRecord, type RecordContext } from "../../assembly/assemble-record.ts";
import type { Problem } from "../../problems/problem.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { sealRecord } from "../../proof/seal-record.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { CalibrationCase } from "../../workbook/calibration-case.ts";
import type { Disk } from "../disk.ts";
import { recordPlace, writeDraft } from "./write-record.ts";

/** A calibration with all that its record takes: plain data, so that another thread can make it. */
export type CaseToReport = { calibrationCase: CalibrationCase; context: Omit<RecordContext, "warnings">; out: string };

/** A record that was written, and where its page is. */
export type WrittenRecord = { record: SealedRecord; page: string };

/** What came of a calibration: its record, where it could be written, and what there is to say of it. */
export type ReportedCase = { written: WrittenRecord | undefined; problems: readonly Problem[] };

/** Makes records one by one or several at a time, and gives what came of each in the order of the cases. */
export type CaseReporter = (cases: AsyncIterable<CaseToReport>) => AsyncIterable<ReportedCase>;

/** Makes the record and the page of one calibration. */
export async function reportCase(
  disk: Pick<Disk, "read" | "writeTogether">,
  { calibrationCase, context, out }: CaseToReport,
): Promise<ReportedCase> {
  const problems = new ProblemList();
  const record = sealRecord(assembleRecord(calibrationCase, { ...context, warnings: calibrationCase.warnings }));
  const page = await writeDraft(disk, record, recordPlace(out, record), problems);
  return { written: page === undefined ? undefined : { record, page }, problems: problems.all };
}

/** One after the other, each on the disk before the next is begun. */
export function oneByOne(disk: Pick<Disk, "read" | "writeTogether">): CaseReporter {
  return async function* (cases) {
    for await (const one of cases) yield await reportCase(disk, one);
  };
}
