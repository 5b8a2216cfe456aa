import { assembleRecord } from "../../assembly/assemble-record.ts";
import type { Problem } from "../../problems/problem.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { sealRecord } from "../../proof/seal-record.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { type IndexRow, indexRow } from "../../report/columns/index-columns.tsx";
import type { Disk } from "../disk.ts";
import type { CaseToReport, WrittenRecord } from "./made-before.ts";
import { recordPlace } from "./record-place.ts";
import { recordFiles, writeDraft } from "./write-record.ts";

export type { CaseToReport, WrittenRecord } from "./made-before.ts";

/** What is left of a record that was written: its page and its row of the index; itself where it was not let go. */
export type WrittenLine = { page: string; row: IndexRow; isKept?: boolean; record?: SealedRecord };

/** What came of a calibration: its record, where it could be written, and what there is to say of it. */
export type ReportedCase = { written: WrittenLine | undefined; problems: readonly Problem[] };

/** Makes records one by one or several at a time, and gives what came of each in the order of the cases. */
export type CaseReporter = (cases: AsyncIterable<CaseToReport>) => AsyncIterable<ReportedCase>;

type Disks = Pick<Disk, "read" | "writeTogether">;

/** Makes the record and the page of one calibration; what it gives back writes them. */
async function makeCase(disk: Disks, one: CaseToReport): Promise<() => Promise<ReportedCase>> {
  const kept = one.isResumed === true && (await (await import("./made-before.ts")).madeBefore(disk, one));
  if (kept) return async () => ({ written: lineOf(kept, one.out), problems: [] });
  const { calibrationCase, context, out } = one;
  const record = sealRecord(assembleRecord(calibrationCase, { ...context, warnings: calibrationCase.warnings }));
  const place = recordPlace(out, record);
  const files = await recordFiles(record, place);
  return async () => {
    const problems = new ProblemList();
    const page = await writeDraft(disk, files, place, problems);
    return { written: page === undefined ? undefined : lineOf({ record, page }, out), problems: problems.all };
  };
}

function lineOf(written: WrittenRecord, out: string): WrittenLine {
  return { ...written, row: indexRow(written.record, written.page.slice(out.length + 1)) };
}

/** What is sent to another thread: not the record, which is a thousand times its line. */
export function withoutRecord({ written, problems }: ReportedCase): ReportedCase {
  if (written === undefined) return { written, problems };
  const { record: _, ...line } = written;
  return { written: line, problems };
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
