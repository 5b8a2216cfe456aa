import { writeSheets } from "../../src/jobs/workbook/write-sheets.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import type { PlannedRow, SheetData } from "../../src/sheet/sheet-data.ts";
import { changed, type Entries, noEntries, textAt } from "../../src/sheet/state/entries.ts";
import { inFolder, memoryDisk } from "../jobs/memory-disk.ts";
import { smallestWorkbook, type Texts } from "../workbook/smallest-workbook.ts";

export const at = "2026-11-27T10:31:05+01:00";
export const today = "2026-11-27";

const unread = { ...smallestWorkbook, "readings.csv": "calibration,phase,direction,reference,signal\n" };

/** The sheet that the command makes of a workbook: of the smallest one without its readings where none is given. */
export async function sheetOf(texts: Texts = unread, asked: { tag?: string; calibration?: string } = { tag: "LT-1" }) {
  const disk = memoryDisk(inFolder("book", texts));
  const options = { today, version: "0.3.0", out: "sheets", onPaper: false, points: "5", cycles: "1", ...asked };
  const [path = ""] = await writeSheets(disk, "book", options, new ProblemList());
  const json = /id="sheet-data">(.*?)<\/script>/su.exec(disk.written.get(path) ?? "")?.[1] ?? "";
  return JSON.parse(json) as SheetData;
}

export function rowOf(data: SheetData, id: string): PlannedRow {
  const row = data.planned.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`rowOf: the sheet has no row ${id}`);
  return row;
}

/** Texts typed into a sheet, a step each. */
export function typed(
  data: SheetData,
  cells: readonly (readonly [row: string, column: string, text: string])[],
): Entries {
  return cells.reduce(
    (so, [row, column, after]) =>
      changed(so, [{ at, row, column, before: textAt(so, rowOf(data, row), column), after }]),
    noEntries,
  );
}

/** The signals of the smallest workbook, out and back, with decimal commas. */
export function wholeRun(data: SheetData): Entries {
  const signals = ["4,01", "8,01", "12,01", "16,01", "20,01"];
  const places = ["0", "25", "50", "75", "100"];
  const run = (direction: string, mark: (text: string) => string) =>
    places.map((place, index) => [`as_found/1/${direction}/${place}`, "signal", mark(signals[index] ?? "")] as const);
  return typed(data, [...run("rising", String), ...run("falling", (text) => text.replace(",", "."))]);
}
