import { idealOutput } from "../../analysis/readings/ideal-characteristic.ts";
import { loopOf } from "../../analysis/readings/loop.ts";
import { phases } from "../../model/calibration-words.ts";
import type { Instrument } from "../../model/instrument.ts";
import { evenPoints } from "../../model/test-points.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import type { DecimalMark } from "../../units/read-number.ts";
import { writePlain } from "../../units/write-number.ts";
import { buildWorkbook, type Workbook } from "../../workbook/build-workbook.ts";
import type { RawTable } from "../../workbook/files/raw-table.ts";
import { writeDelimited } from "../../workbook/files/write-delimited.ts";
import type { WrittenCell } from "../../workbook/files/write-spreadsheet.ts";
import { namedCalibrations } from "../../workbook/named-calibrations.ts";
import { mayHoldTable, readTables } from "../../workbook/read-tables.ts";
import type { Disk } from "../disk.ts";
import { tellStopsOf } from "./tell-stops-of.ts";

export type ReadingRowsOptions = {
  today: string;
  tag?: string | undefined;
  calibration?: string | undefined;
  /** How many points from end to end, and how many runs out and back; as they were typed. */
  points?: string | undefined;
  cycles?: string | undefined;
  /** One phase; both where it is left out. */
  phase?: string | undefined;
};

/** Common practice: five points, three runs out and back. */
const usual = { points: 5, cycles: 3 } as const;
const most = { points: 101, cycles: 50 } as const;

/** The readings to be taken of a tag as rows of the table readings: everything is there but what is read. */
export async function readingRows(
  disk: Disk,
  path: string,
  options: ReadingRowsOptions,
): Promise<{ text: string; problems: ProblemList }> {
  const problems = new ProblemList();
  const found = await disk.read(path, mayHoldTable);
  if (found === undefined) problems.add("options/not-found", { file: path });
  const all = new ProblemList();
  const tables = await readTables(found?.files ?? [], all);
  const workbook = buildWorkbook(tables, { today: options.today }, all);
  tellStopsOf(["instruments"], { tables, all }, problems);
  const points = countOf("points", options.points, { least: 2, most: most.points }, problems) ?? usual.points;
  const cycles = countOf("cycles", options.cycles, { least: 1, most: most.cycles }, problems) ?? usual.cycles;
  const wanted = phasesOf(options.phase, problems);
  const instruments = Array.from(workbook.instruments, ({ row }) => row).filter((row) => isWanted(row, options.tag));
  if (instruments.length === 0 && !problems.hasStop) tellNoLoop(workbook, options.tag, problems);
  if (problems.hasStop) return { text: "", problems };
  const columns = columnsOf(instruments);
  const mark = markOf(instruments);
  const rows = instruments.flatMap((instrument) =>
    calibrationsOf(instrument.tag, tables, workbook, options.calibration).flatMap((calibration) =>
      wanted.flatMap((phase) =>
        withDecimalMark(mark, () => rowsOf({ instrument, calibration, phase, points, cycles }, columns)),
      ),
    ),
  );
  return { text: writeDelimited([columns, ...rows], { newline: "\n", mark }).trimEnd(), problems };
}

/** A table has one mark: a comma where every loop in it asks for one. */
function markOf(instruments: readonly Instrument[]): DecimalMark {
  return instruments.every(({ decimalMark }) => decimalMark === "comma") ? "comma" : "point";
}

function isWanted({ tag }: Instrument, wanted: string | undefined): boolean {
  return wanted === undefined || tag === wanted;
}

export function countOf(
  option: "points" | "cycles",
  read: string | undefined,
  { least, most: greatest }: { least: number; most: number },
  problems: ProblemList,
): number | undefined {
  if (read === undefined) return undefined;
  const count = Number(read.trim() || Number.NaN);
  if (Number.isInteger(count) && count >= least && count <= greatest) return count;
  const values = { option: `--${option}`, accepted: `a whole number from ${least} to ${greatest}` };
  problems.add("options/not-understood", { file: "command line" }, { read, values });
  return undefined;
}

function phasesOf(read: string | undefined, problems: ProblemList): readonly string[] {
  if (read === undefined) return phases;
  const found = phases.find(
    (phase) =>
      phase ===
      read
        .trim()
        .toLowerCase()
        .replace(/[\s-]+/gu, "_"),
  );
  if (found !== undefined) return [found];
  const values = { option: "--phase", accepted: phases.join(", ") };
  problems.add("options/not-understood", { file: "command line" }, { read, values });
  return [];
}

function tellNoLoop({ instruments }: Workbook, tag: string | undefined, problems: ProblemList): void {
  const choices = Array.from(instruments, ({ row }) => row.tag).join(", ");
  problems.add("options/loop-unknown", { file: "command line" }, { read: tag ?? "", values: { choices } });
}

/** Those of the tag that have no readings yet, or all of them; without any the cell is left to be filled in. */
function calibrationsOf(
  tag: string,
  tables: readonly RawTable[],
  { readings }: Workbook,
  wanted: string | undefined,
): readonly string[] {
  if (wanted !== undefined) return [wanted];
  const own = namedCalibrations(tables).flatMap((one) => (one.tag === tag ? [one.calibration] : []));
  const open = own.filter((calibration) => !readings.has(calibration));
  return open.length > 0 ? open : own.length > 0 ? own : [""];
}

/** Columns of what a loop has: counts and a controller's value only where it says what they should be. */
function columnsOf(instruments: readonly Instrument[]): readonly string[] {
  const has = (key: "countsLower" | "valueLower") => instruments.some((instrument) => instrument[key] !== undefined);
  return [
    ...["calibration", "phase", "cycle", "direction", "point", "reference", "signal"],
    ...(has("countsLower") ? ["counts"] : []),
    ...(has("valueLower") ? ["value"] : []),
    "remark",
  ];
}

type Plan = { instrument: Instrument; calibration: string; phase: string; points: number; cycles: number };

function rowsOf(
  { instrument, calibration, phase, points, cycles }: Plan,
  columns: readonly string[],
): readonly (readonly WrittenCell[])[] {
  const places = evenPoints(instrument, points);
  return Array.from({ length: cycles }, (_, place) => place + 1).flatMap((cycle) =>
    (["rising", "falling"] as const).flatMap((direction) =>
      (direction === "rising" ? places : places.toReversed()).map((point) => {
        const remark = expectedWords(instrument, point);
        const cells: Readonly<Record<string, WrittenCell>> = { calibration, phase, cycle, direction, point, remark };
        return columns.map((name) => cells[name] ?? "");
      }),
    ),
  );
}

/** What the loop should give there, for whoever stands before it. */
function expectedWords(instrument: Instrument, point: number): string {
  const { signal, counts, value } = loopOf(instrument).characteristics;
  const shown = (expected: number, unit: string) => `${writePlain(Number(expected.toFixed(4)))} ${unit}`.trim();
  const expected = [
    shown(idealOutput(signal, point), instrument.signalUnit),
    ...(counts ? [shown(Math.round(idealOutput(counts, point)), "counts")] : []),
    ...(value ? [shown(idealOutput(value, point), instrument.valueUnit ?? "")] : []),
  ];
  return `expected ${expected.join(", ")}`;
}
