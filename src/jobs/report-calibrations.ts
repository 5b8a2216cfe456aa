import type { ProblemList } from "../problems/problem-list.ts";
import { assembleRecord } from "../record/assemble-record.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import { safeFileName } from "../record/safe-file-name.ts";
import { sealRecord } from "../record/seal-record.ts";
import { renderPage } from "../report/page.tsx";
import type { CalibrationCase } from "../workbook/calibration-case.ts";
import { type DecisionOptions, readDecision } from "./decision-options.ts";
import { CannotWrite, type Disk } from "./disk.ts";
import { drawPictures } from "./draw-pictures.ts";
import { type ReadingOptions, readWorkbook, type WorkbookReading } from "./read-workbook.ts";

export type ReportOptions = ReadingOptions & {
  out: string;
  tag?: string | undefined;
  calibration?: string | undefined;
  softwareVersion: string;
  /** Decision rule, guard factor and draws as they were typed; what they lack comes from the workbook. */
  decision?: DecisionOptions | undefined;
  /** Called after each calibration, for whoever shows progress. */
  onWritten?: (done: number, all: number) => void;
};

/** A record that was written, and where its page is. */
export type WrittenRecord = { record: SealedRecord; page: string };

export type Reports = { written: readonly WrittenRecord[]; reading: WorkbookReading };

/** Makes the record and the page of each calibration that is asked for and that no problem stops. */
export async function reportCalibrations(disk: Disk, workbook: string, options: ReportOptions): Promise<Reports> {
  const reading = await readWorkbook(disk, workbook, options);
  const decision = readDecision(options.decision ?? {}, reading.problems);
  if (decision === undefined) return { written: [], reading };
  const chosen = chosenCases(reading, options);
  const written: WrittenRecord[] = [];
  let done = 0;
  for (const calibrationCase of chosen) {
    const record = sealRecord(
      assembleRecord(calibrationCase, {
        softwareVersion: options.softwareVersion,
        digests: reading.digests,
        warnings: calibrationCase.warnings,
        ...decision,
      }),
    );
    const page = await writeRecord(disk, record, options.out, reading.problems);
    if (page !== undefined) written.push({ record, page });
    done += 1;
    options.onWritten?.(done, chosen.length);
  }
  return { written, reading };
}

/** The cases of the tag and the calibration asked for; a name that the workbook does not have is a problem. */
function chosenCases(
  { cases, problems }: WorkbookReading,
  { tag, calibration }: ReportOptions,
): readonly CalibrationCase[] {
  const place = { file: "command line" };
  if (tag !== undefined && !cases.some((found) => found.calibration.row.tag === tag) && !problems.hasStop) {
    const choices = [...new Set(cases.map((found) => found.calibration.row.tag))].join(", ");
    problems.add("options/tag-unknown", place, { read: tag, values: { choices } });
  }
  if (
    calibration !== undefined &&
    !cases.some((found) => found.calibration.row.calibration === calibration) &&
    !problems.hasStop
  ) {
    const choices = cases.map((found) => found.calibration.row.calibration).join(", ");
    problems.add("options/calibration-unknown", place, { read: calibration, values: { choices } });
  }
  const chosen = cases.filter(
    ({ calibration: { row } }) =>
      (tag === undefined || row.tag === tag) && (calibration === undefined || row.calibration === calibration),
  );
  if (chosen.length === 0 && tag !== undefined && calibration !== undefined && !problems.hasStop) {
    problems.add("options/calibration-of-another-tag", place, { read: calibration, values: { tag } });
  }
  return chosen;
}

/** The path of the page; nothing, and a problem, where the disk refuses. */
async function writeRecord(
  disk: Disk,
  record: SealedRecord,
  out: string,
  problems: ProblemList,
): Promise<string | undefined> {
  const folder = `${out}/${safeFileName(record.instrument.tag)}`;
  const name = safeFileName(record.calibration.calibration);
  const page = `${folder}/${name}.html`;
  const files = [
    { path: page, text: renderPage(record, await drawPictures(record)) },
    { path: `${folder}/${name}.json`, text: `${JSON.stringify(record, null, 2)}\n` },
  ];
  try {
    await disk.writeTogether(files);
    return page;
  } catch (fault) {
    if (!(fault instanceof CannotWrite)) throw fault;
    problems.add("options/cannot-write", { file: page }, { values: { why: fault.message } });
    return undefined;
  }
}
