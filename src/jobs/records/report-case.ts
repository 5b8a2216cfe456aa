import { assembleRecord } from "../../assembly/assemble-record.ts";
import type { Problem } from "../../problems/problem.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { sealRecord } from "../../proof/seal-record.ts";
import type { Disk } from "../disk.ts";
import type { CaseToReport, WrittenRecord } from "./made-before.ts";
import { recordPlace, writeDraft } from "./write-record.ts";

export type { CaseToReport, WrittenRecord } from "./made-before.ts";

/** What came of a calibration: its record, where it could be written, and what there is to say of it. */
export type ReportedCase = { written: WrittenRecord | undefined; problems: readonly Problem[] };

/** Makes records one by one or several at a time, and gives what came of each in the order of the cases. */
export type CaseReporter = (cases: AsyncIterable<CaseToReport>) => AsyncIterable<ReportedCase>;

/** Makes the record and the page of one calibration. */
export async function reportCase(disk: Pick<Disk, "read" | "writeTogether">, one: CaseToReport): Promise<ReportedCase> {
  const kept = one.isResumed === true ? await keptOf(disk, one) : undefined;
  if (kept !== undefined) return { written: kept, problems: [] };
  const { calibrationCase, context, out } = one;
  const problems = new ProblemList();
  const record = sealRecord(assembleRecord(calibrationCase, { ...context, warnings: calibrationCase.warnings }));
  const page = await writeDraft(disk, record, recordPlace(out, record), problems);
  return { written: page === undefined ? undefined : { record, page }, problems: problems.all };
}

async function keptOf(disk: Pick<Disk, "read">, one: CaseToReport): Promise<WrittenRecord | undefined> {
  const { madeBefore } = await import("./made-before.ts");
  return madeBefore(disk, one);
}

/** One after the other, each on the disk before the next is begun. */
export function oneByOne(disk: Pick<Disk, "read" | "writeTogether">): CaseReporter {
  return async function* (cases) {
    for await (const one of cases) yield await reportCase(disk, one);
  };
}
