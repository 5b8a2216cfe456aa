import { assembleRecord } from "../../assembly/assemble-record.ts";
import type { Problem } from "../../problems/problem.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { sealRecord } from "../../proof/seal-record.ts";
import type { Disk } from "../disk.ts";
import type { CaseToReport, WrittenRecord } from "./made-before.ts";
import { recordFiles, recordPlace, writeDraft } from "./write-record.ts";

export type { CaseToReport, WrittenRecord } from "./made-before.ts";

/** What came of a calibration: its record, where it could be written, and what there is to say of it. */
export type ReportedCase = { written: WrittenRecord | undefined; problems: readonly Problem[] };

/** Makes records one by one or several at a time, and gives what came of each in the order of the cases. */
export type CaseReporter = (cases: AsyncIterable<CaseToReport>) => AsyncIterable<ReportedCase>;

type Disks = Pick<Disk, "read" | "writeTogether">;

/** Makes the record and the page of one calibration; what it gives back writes them. */
async function makeCase(disk: Disks, one: CaseToReport): Promise<() => Promise<ReportedCase>> {
  const kept = one.isResumed === true && (await (await import("./made-before.ts")).madeBefore(disk, one));
  if (kept) return async () => ({ written: kept, problems: [] });
  const { calibrationCase, context, out } = one;
  const record = sealRecord(assembleRecord(calibrationCase, { ...context, warnings: calibrationCase.warnings }));
  const place = recordPlace(out, record);
  const files = await recordFiles(record, place);
  return async () => {
    const problems = new ProblemList();
    const page = await writeDraft(disk, files, place, problems);
    return { written: page === undefined ? undefined : { record, page }, problems: problems.all };
  };
}

/**
 * Makes one record after the other, and writes one after the other: while the disk takes one, the next is made. Whoever
 * hands it more than two holds more than two.
 */
export function casesInTurn(disk: Disks): (one: CaseToReport) => Promise<ReportedCase> {
  let made: Promise<unknown> = Promise.resolve();
  let written: Promise<unknown> = Promise.resolve();
  return (one) => {
    const making = made.then(() => makeCase(disk, one));
    const writing = Promise.all([making, written]).then(([write]) => write());
    made = settled(making);
    written = settled(writing);
    return writing;
  };
}

/** When a fault ends the one, whoever waits for it is told; the next begins all the same. */
function settled(task: Promise<unknown>): Promise<unknown> {
  return task.catch(() => undefined);
}

/** In this thread, each on the disk before the next but one is begun. */
export function oneByOne(disk: Disks): CaseReporter {
  return async function* (cases) {
    const report = casesInTurn(disk);
    let before: Promise<ReportedCase> | undefined;
    for await (const one of cases) {
      const now = report(one);
      now.catch(() => undefined);
      if (before !== undefined) yield await before;
      before = now;
    }
    if (before !== undefined) yield await before;
  };
}
