import { safeFileName } from "../../filing/safe-file-name.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { TableName } from "../../model/table-names.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { planSheet, type TextRows } from "../../sheet/plan-sheet.ts";
import { type Cells, carriedTables, type SheetData } from "../../sheet/sheet-data.ts";
import { buildWorkbook, type Workbook } from "../../workbook/build-workbook.ts";
import { mayHoldTable, readTables } from "../../workbook/read-tables.ts";
import { textRows } from "../../workbook/text-rows.ts";
import type { Disk } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { countOf } from "./reading-rows.ts";
import { tellStopsOf } from "./tell-stops-of.ts";

export type SheetOptions = {
  today: string;
  version: string;
  out: string;
  tag?: string | undefined;
  calibration?: string | undefined;
  points?: string | undefined;
  cycles?: string | undefined;
  /** A form for the pen in the place of the sheet. */
  onPaper: boolean;
};

/**
 * Writes an entry sheet for each calibration that is asked for, or a form for the pen. The readings need not be there
 * yet; those that are come along.
 *
 * @returns paths of the files; none where something stops it
 */
export async function writeSheets(
  disk: Disk,
  path: string,
  options: SheetOptions,
  problems: ProblemList,
): Promise<readonly string[]> {
  const found = await disk.read(path, mayHoldTable);
  if (found === undefined) problems.add("options/not-found", { file: path });
  const all = new ProblemList();
  const tables = await readTables(found?.files ?? [], all);
  const workbook = buildWorkbook(tables, { today: options.today }, all);
  for (const file of found?.files ?? []) problems.locate(file.name, file.path);
  tellStopsOf(carriedTables, { tables, all }, problems);
  const points = countOf("points", options.points, { least: 2, most: 101 }, problems);
  const cycles = countOf("cycles", options.cycles, { least: 1, most: 50 }, problems);
  const texts = new Map(tables.map((raw) => [raw.table, textRows(raw, "point").map(({ cells }) => cells)]));
  const textsOf = (table: TableName) => texts.get(table) ?? [];
  const read = new Set(textsOf("readings").map((cells) => cells.calibration));
  const wanted = wantedCalibrations({ calibrations: textsOf("calibrations"), read }, workbook, options, problems);
  if (problems.hasStop) return [];
  const sheets = wanted.map((one) => sheetOf(one, { textsOf, workbook, options, points, cycles }));
  const { sheetPage, paperPage } = await import("../../sheet/sheet-page.tsx");
  const files = sheets.map((data) => ({
    path: `${options.out}/${safeFileName(`${data.tag}_${data.calibration}`)}_${options.onPaper ? "form" : "sheet"}.html`,
    text: options.onPaper ? paperPage(data) : sheetPage(data),
  }));
  if (!(await writeOrTell(() => disk.writeTogether(files), options.out, problems))) return [];
  return files.map((file) => file.path);
}

type Wanted = { calibration: string; instrument: Instrument };
type Source = {
  textsOf: (table: TableName) => readonly Cells[];
  workbook: Workbook;
  options: SheetOptions;
  points: number | undefined;
  cycles: number | undefined;
};

/** The rows of the calibrations, and which of them have readings. */
type Known = { calibrations: readonly Cells[]; read: ReadonlySet<string | undefined> };

function wantedCalibrations(
  known: Known,
  { instruments }: Workbook,
  { tag, calibration, today }: SheetOptions,
  problems: ProblemList,
): readonly Wanted[] {
  const byTag = new Map(Array.from(instruments, ({ row }) => [row.tag, row] as const));
  if (tag !== undefined && !byTag.has(tag)) {
    const choices = [...byTag.keys()].join(", ");
    problems.add("options/loop-unknown", { file: "command line" }, { read: tag, values: { choices } });
    return [];
  }
  const instrument = tag === undefined ? undefined : byTag.get(tag);
  const { calibrations } = known;
  if (instrument !== undefined && calibration === undefined) return openCalibrations(instrument, known, today);
  const named = calibrations.filter((cells) => calibration === undefined || cells.calibration === calibration);
  if (named.length === 0 && calibration !== undefined) {
    if (instrument !== undefined) return [{ calibration, instrument }];
    const choices = calibrations.map((cells) => cells.calibration ?? "").join(", ");
    problems.add("options/calibration-unknown", { file: "command line" }, { read: calibration, values: { choices } });
  }
  return named.flatMap((cells) => {
    const own = byTag.get(cells.tag ?? "");
    if (tag !== undefined && cells.tag !== tag) {
      const read = cells.calibration ?? "";
      problems.add("options/calibration-of-another-tag", { file: "command line" }, { read, values: { tag } });
    }
    return own === undefined ? [] : [{ calibration: cells.calibration ?? "", instrument: own }];
  });
}

/** A tag alone asks for its calibrations that have no readings yet, or for one that the workbook does not name. */
function openCalibrations(instrument: Instrument, { calibrations, read }: Known, today: string): readonly Wanted[] {
  const open = calibrations.filter(({ tag, calibration }) => tag === instrument.tag && !read.has(calibration));
  if (open.length > 0) return open.map(({ calibration = "" }) => ({ calibration, instrument }));
  const names = new Set(calibrations.map((cells) => cells.calibration));
  const first = `${instrument.tag}-${today}`;
  const later = Array.from({ length: names.size + 1 }, (_, place) => `${first}-${place + 2}`);
  return [{ calibration: [first, ...later].find((name) => !names.has(name)) ?? first, instrument }];
}

function sheetOf(
  { calibration, instrument }: Wanted,
  { textsOf, workbook, options, points, cycles }: Source,
): SheetData {
  const ofCalibration = (table: TableName) => textsOf(table).filter((cells) => cells.calibration === calibration);
  const ofTag = (table: TableName) => textsOf(table).filter((cells) => cells.tag === instrument.tag);
  const texts: TextRows = {
    ...{ instruments: ofTag("instruments"), outputs: ofTag("outputs"), controller_limits: ofTag("controller_limits") },
    ...{ standards: textsOf("standards"), candidates: [] },
    ...{ calibrations: ofCalibration("calibrations"), readings: ofCalibration("readings") },
    ...{ trips: ofCalibration("trips"), loop_checks: ofCalibration("loop_checks") },
  };
  const everyCalibration = textsOf("calibrations");
  return planSheet({
    ...{ instrument, calibration, texts, program: options.version, madeOn: options.today },
    outputs: workbook.outputs.of(instrument.tag).map(({ row }) => row),
    points: points ?? instrument.pointsNeeded ?? 5,
    cycles: cycles ?? 3,
    people: [...new Set(everyCalibration.flatMap((cells) => cells.performed_by ?? []))].toSorted(),
  });
}
