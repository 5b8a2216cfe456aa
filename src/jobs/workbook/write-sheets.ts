import { safeFileName } from "../../filing/safe-file-name.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { TableName } from "../../model/tables.ts";
import type { ProblemCode } from "../../problems/catalogue.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { planSheet, type TextRows } from "../../sheet/plan-sheet.ts";
import type { Cells, SheetData } from "../../sheet/sheet-data.ts";
import { buildWorkbook, type Workbook } from "../../workbook/build-workbook.ts";
import type { RawTable } from "../../workbook/files/raw-table.ts";
import { mayHoldTable, readTables } from "../../workbook/read-tables.ts";
import { textRows } from "../../workbook/text-rows.ts";
import type { Disk } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { countOf } from "./reading-rows.ts";

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
  tellOfCarried(all, tables, problems);
  const points = countOf("points", options.points, { least: 2, most: 101 }, problems);
  const cycles = countOf("cycles", options.cycles, { least: 1, most: 50 }, problems);
  const read = new Set(textsOf(tables, "readings").map((cells) => cells.calibration));
  const wanted = wantedCalibrations(
    { calibrations: textsOf(tables, "calibrations"), read },
    workbook,
    options,
    problems,
  );
  if (problems.hasStop) return [];
  const sheets = wanted.map((one) => sheetOf(one, { tables, workbook, options, points, cycles }));
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
  tables: readonly RawTable[];
  workbook: Workbook;
  options: SheetOptions;
  points: number | undefined;
  cycles: number | undefined;
};

/** A table that is to be typed need not be there, and may have no rows. */
const mayBeUnfinished: ReadonlySet<string> = new Set(["tables/missing", "tables/empty"] satisfies ProblemCode[]);

/** Whatever comes with a sheet has to be right; what is to be typed may be unfinished. */
function tellOfCarried(all: ProblemList, tables: readonly RawTable[], problems: ProblemList): void {
  const carried = ["instruments", "outputs", "standards", "controller_limits", "candidates"];
  const files = tables.filter(({ table }) => carried.includes(table)).map(({ file }) => file);
  for (const { code, severity, place, read, values } of all.all) {
    const isOfLoop = files.includes(place.file) || (code === "tables/missing" && values.table === "instruments");
    const isUnread = code.startsWith("tables/") && place.line === undefined && !mayBeUnfinished.has(code);
    if (severity === "stop" && (isOfLoop || isUnread)) problems.add(code, place, { read, values });
  }
}

function textsOf(tables: readonly RawTable[], table: TableName): readonly Cells[] {
  const raw = tables.find((one) => one.table === table);
  return raw === undefined ? [] : textRows(raw, "point").map(({ cells }) => cells);
}

/** The rows of the calibrations, and which of them have readings. */
type Known = { calibrations: readonly Cells[]; read: ReadonlySet<string | undefined> };

function wantedCalibrations(
  known: Known,
  { instruments }: Workbook,
  { tag, calibration, today }: SheetOptions,
  problems: ProblemList,
): readonly Wanted[] {
  const byTag = new Map(instruments.map(({ row }) => [row.tag, row]));
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
  { tables, workbook, options, points, cycles }: Source,
): SheetData {
  const ofCalibration = (table: TableName) =>
    textsOf(tables, table).filter((cells) => cells.calibration === calibration);
  const ofTag = (table: TableName) => textsOf(tables, table).filter((cells) => cells.tag === instrument.tag);
  const texts: TextRows = {
    ...{ instruments: ofTag("instruments"), outputs: ofTag("outputs"), controller_limits: ofTag("controller_limits") },
    ...{ standards: textsOf(tables, "standards"), candidates: [] },
    ...{ calibrations: ofCalibration("calibrations"), readings: ofCalibration("readings") },
    ...{ trips: ofCalibration("trips"), loop_checks: ofCalibration("loop_checks") },
  };
  const everyCalibration = textsOf(tables, "calibrations");
  return planSheet({
    ...{ instrument, calibration, texts, program: options.version, madeOn: options.today },
    outputs: workbook.outputs.map(({ row }) => row).filter(({ tag }) => tag === instrument.tag),
    points: points ?? instrument.pointsNeeded ?? 5,
    cycles: cycles ?? 3,
    people: [...new Set(everyCalibration.flatMap((cells) => cells.performed_by ?? []))].toSorted(),
  });
}
