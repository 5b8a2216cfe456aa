import type { Instrument, Output } from "../../model/instrument.ts";
import { tableColumns } from "../../model/table-columns.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { marked, withDecimalMark } from "../../units/decimal-mark.ts";
import { limitWords } from "../../verdict/loop-check/limit-words.ts";
import { type ApplicableItem, applicableItems } from "../../verdict/loop-check/loop-items.ts";
import { loopLimits } from "../../verdict/loop-check/loop-limits.ts";
import { buildWorkbook, type Workbook } from "../../workbook/build-workbook.ts";
import type { RawTable } from "../../workbook/files/raw-table.ts";
import { writeDelimited } from "../../workbook/files/write-delimited.ts";
import { namedCalibrations } from "../../workbook/named-calibrations.ts";
import { mayHoldTable, readTables } from "../../workbook/read-tables.ts";
import type { Disk } from "../disk.ts";
import { tellStopsOf } from "./tell-stops-of.ts";

export type LoopCheckSheetOptions = { today: string; tag?: string | undefined; asGuide: boolean };

/** One check to be made: of a tag, under a calibration where the workbook names one. */
type PlannedCheck = { calibration: string; instrument: Instrument; outputs: readonly Output[] };

/**
 * The items of a loop check for the tags of a workbook, to be filled in: as rows of the table loop_checks, result left
 * empty, or as a guide that says what to do, what to write down and what is accepted. The readings need not be there yet.
 */
export async function loopCheckSheet(
  disk: Disk,
  path: string,
  { today, tag, asGuide }: LoopCheckSheetOptions,
): Promise<{ text: string; problems: ProblemList }> {
  const problems = new ProblemList();
  const found = await disk.read(path, mayHoldTable);
  if (found === undefined) problems.add("options/not-found", { file: path });
  for (const file of found?.files ?? []) problems.locate(file.name, file.path);
  const all = new ProblemList();
  const tables = await readTables(found?.files ?? [], all);
  const workbook = buildWorkbook(tables, { today }, all);
  if (found !== undefined) tellStopsOf(["instruments", "outputs"], { tables, all }, problems);
  const planned = plannedChecks(workbook, tables).filter(
    ({ instrument }) => tag === undefined || instrument.tag === tag,
  );
  if (planned.length === 0 && tag !== undefined && !problems.hasStop) {
    const choices = Array.from(workbook.instruments, ({ row }) => row.tag).join(", ");
    problems.add("options/loop-unknown", { file: "command line" }, { read: tag, values: { choices } });
  }
  return { text: asGuide ? guide(planned) : rows(planned), problems };
}

/** A calibration that has no readings yet is not among the workbook's, so that its name is taken from its row. */
function plannedChecks({ instruments, outputs }: Workbook, tables: readonly RawTable[]): readonly PlannedCheck[] {
  const named = namedCalibrations(tables);
  return Array.from(instruments, ({ row }) => row).flatMap((instrument) => {
    const own = outputs.of(instrument.tag).map(({ row }) => row);
    const calibrations = named.filter(({ tag }) => tag === instrument.tag).map(({ calibration }) => calibration);
    return (calibrations.length === 0 ? [""] : calibrations).map((calibration) => ({
      calibration,
      instrument,
      outputs: own,
    }));
  });
}

function rows(planned: readonly PlannedCheck[]): string {
  const columns = tableColumns("loop_checks").flatMap(({ name, bySheet }) => (bySheet === true ? [] : [name]));
  const lines = planned.flatMap(({ calibration, instrument, outputs }) =>
    applicableItems(instrument, outputs).map(({ key, unit = "" }) => {
      const cells: Readonly<Record<string, string>> = { calibration, item: key, unit };
      return columns.map((name) => cells[name] ?? "");
    }),
  );
  return writeDelimited([columns, ...lines], { newline: "\n" }).trimEnd();
}

function guide(planned: readonly PlannedCheck[]): string {
  return planned.map((check) => withDecimalMark(check.instrument.decimalMark, () => guideOf(check))).join("\n\n\n");
}

function guideOf({ calibration, instrument, outputs }: PlannedCheck): string {
  const limits = loopLimits({ instrument, calibration: { calibration, tag: instrument.tag }, outputs });
  const title = calibration === "" ? instrument.tag : `${instrument.tag}, calibration ${calibration}`;
  const items = applicableItems(instrument, outputs).map((item) => guideLines(item, limits.get(item.key)));
  return [title, ...items].join("\n\n");
}

function guideLines(
  { number, key, look, record, accepted, unit }: ApplicableItem,
  limit: { low?: number | undefined; high?: number | undefined } | undefined,
): string {
  const { low = null, high = null } = limit ?? {};
  const here = low === null && high === null ? "" : ` Here: ${limitWords({ low, high }, unit ?? null)}.`;
  return [
    `${String(number).padStart(2)}  ${key}${unit === undefined ? "" : ` [${unit}]`}`,
    `    do      ${look}`,
    `    write   ${record}`,
    `    accept  ${marked(accepted)}.${here}`,
  ].join("\n");
}
