import type { RanWith } from "../../assembly/assemble-record.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { hasGuardFactor, type RuleOverride, ruleOf } from "../../verdict/decision/rule-of.ts";
import type { HeldCase } from "../../workbook/calibration-case.ts";
import { type AskedCalibration, isAsked, type NamedCalibration } from "../../workbook/named-calibrations.ts";
import type { Disk } from "../disk.ts";
import type { FiledFolder, filedBefore } from "../filing/filed-before.ts";
import { type DecisionOptions, readDecision } from "../workbook/decision-options.ts";
import { type ReadingOptions, readWorkbook, type WorkbookReading } from "../workbook/read-workbook.ts";
import { type CaseReporter, type CaseToReport, oneByOne, type WrittenLine } from "./report-case.ts";

export type ReportOptions = ReadingOptions & {
  out: string;
  tag?: string | undefined;
  calibration?: string | undefined;
  softwareVersion: string;
  /** Digest and self-test of the program, for the record. */
  ranWith?: RanWith | undefined;
  /** Decision rule, guard factor and draws as they were typed; what they lack comes from the workbook. */
  decision?: DecisionOptions | undefined;
  /** Folder of filed records whose earlier ones each record takes as its history. */
  filed?: FiledFolder | undefined;
  /** Called with each record that was written: who needs something of it takes that, so that two thousand are not held. */
  onRecord?: (written: WrittenLine) => void;
  /** How so many records are made; one after the other where it gives nothing. */
  reporterFor?: (records: number) => Promise<CaseReporter | undefined>;
  /** Whether records stay that lie there already and were made of the same rows. */
  isResumed?: boolean | undefined;
  /** Asked before each calibration: once it says so, no other is begun. */
  isStopped?: () => boolean;
  /** Called after each calibration, for whoever shows progress. */
  onWritten?: (done: number, all: number) => void;
};

/** The pages that were written. */
export type Reports = { written: readonly string[]; reading: WorkbookReading };

/** Makes the record and the page of each calibration that is asked for and that no problem stops. */
export async function reportCalibrations(disk: Disk, workbook: string, options: ReportOptions): Promise<Reports> {
  const reading = await readWorkbook(disk, workbook, options);
  const decision = readDecision(options.decision ?? {}, reading.problems);
  const before = options.filed && (await beforeIn(options.filed, reading.problems));
  if (decision === undefined || (options.filed && !before)) return { written: [], reading };
  const chosen = chosenCases(reading, options);
  refuseUnusedFactor(chosen, options.decision?.guardFactor, decision.ruleOverride, reading.problems);
  if (reading.problems.all.some(({ code }) => code === "options/overridden")) return { written: [], reading };
  const report = (await options.reporterFor?.(chosen.length)) ?? oneByOne(disk);
  const written: string[] = [];
  let done = 0;
  for await (const reported of report(casesToReport(chosen, { reading, decision, before }, options))) {
    for (const { code, place, read, values, belongsTo } of reported.problems) {
      reading.problems.add(code, place, { read, values, belongsTo });
    }
    if (reported.written !== undefined) {
      written.push(reported.written.page);
      options.onRecord?.(reported.written);
    }
    done += 1;
    options.onWritten?.(done, chosen.length);
  }
  return { written, reading };
}

async function beforeIn(filed: FiledFolder, problems: ProblemList): ReturnType<typeof filedBefore> {
  const { filedBefore } = await import("../filing/filed-before.ts");
  return filedBefore(filed, problems);
}

type Ground = {
  reading: WorkbookReading;
  decision: NonNullable<ReturnType<typeof readDecision>>;
  before: Awaited<ReturnType<typeof filedBefore>>;
};

/** Each case with its history, looked up when its turn comes; none after it was said to stop. */
async function* casesToReport(
  chosen: readonly HeldCase[],
  { reading, decision, before }: Ground,
  { softwareVersion, ranWith, out, isResumed, isStopped }: ReportOptions,
): AsyncGenerator<CaseToReport> {
  for (const { read } of chosen) {
    if (isStopped?.()) return;
    const calibrationCase = read();
    const filed = await before?.(calibrationCase.calibration.row);
    if (before !== undefined && filed === undefined) continue;
    const context = { softwareVersion, ranWith, digests: reading.digests, ...decision, ...filed };
    yield { calibrationCase, context, out, isResumed };
  }
}

/** A guard factor for a rule that has no guard band would be passed over. */
function refuseUnusedFactor(
  cases: readonly HeldCase[],
  read: string | undefined,
  ruleOverride: RuleOverride,
  problems: ProblemList,
): void {
  if (read === undefined) return;
  const unused = cases.find((one) => !hasGuardFactor(ruleOf(one.read().instrument.row, ruleOverride).name));
  if (unused === undefined) return;
  const why = `the decision rule of ${unused.tag} is ${ruleOf(unused.read().instrument.row, ruleOverride).name}`;
  const values = { option: "--guard-factor", why, accepted: "the option with --rule guard band" };
  problems.add("options/overridden", { file: "command line" }, { read, values });
}

/** The cases of the tag and the calibration asked for; a name that the workbook does not have is a problem. */
function chosenCases(reading: WorkbookReading, asked: AskedCalibration): readonly HeldCase[] {
  noteUnknownNames(reading, asked);
  return reading.cases.filter((one) => isAsked(one, asked));
}

/** Told whatever else is wrong; of a workbook that names no calibration at all nothing can be said. */
function noteUnknownNames({ named, problems }: WorkbookReading, { tag, calibration }: AskedCalibration): void {
  if (named.length === 0) return;
  const place = { file: "command line" };
  const isTagKnown = tag === undefined || named.some((one) => one.tag === tag);
  const isCalibrationKnown = calibration === undefined || named.some((one) => one.calibration === calibration);
  if (!isTagKnown) {
    problems.add("options/tag-unknown", place, { read: tag, values: { choices: choicesOf(named, "tag") } });
  }
  if (!isCalibrationKnown) {
    const choices = choicesOf(named, "calibration");
    problems.add("options/calibration-unknown", place, { read: calibration, values: { choices } });
  }
  if (isTagKnown && isCalibrationKnown && !named.some((one) => isAsked(one, { tag, calibration }))) {
    problems.add("options/calibration-of-another-tag", place, { read: calibration, values: { tag: tag ?? "" } });
  }
}

function choicesOf(named: readonly NamedCalibration[], which: keyof NamedCalibration): string {
  return [...new Set(named.map((one) => one[which]))].filter((name) => name !== "").join(", ");
}
