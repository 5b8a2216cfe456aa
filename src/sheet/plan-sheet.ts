import type { Instrument, Output } from "../model/instrument.ts";
import { spanOf } from "../model/range.ts";
import { tableColumns } from "../model/table-columns.ts";
import { evenPoints, gapShare } from "../model/test-points.ts";
import { digestOf, toHex } from "../record/file-digest.ts";
import { decimalMarks, readNumber } from "../units/read-number.ts";
import { applicableItems, foldedKey } from "../verdict/loop-check/loop-items.ts";
import type { TextTable } from "../workbook/text-rows.ts";
import {
  type CarriedTableName,
  type Cells,
  carriedTables,
  type PlannedRow,
  type SheetData,
  sheetForm,
} from "./sheet-data.ts";

/** Rows as text of each table, numbers with a point: what a workbook holds of one calibration. */
export type TextRows = Readonly<
  Record<CarriedTableName | "calibrations" | "readings" | "trips" | "loop_checks", readonly Cells[]>
>;

export type SheetPlan = {
  instrument: Instrument;
  outputs: readonly Output[];
  calibration: string;
  texts: TextRows;
  points: number;
  cycles: number;
  people: readonly string[];
  program: string;
  madeOn: string;
};

/**
 * The sheet of one calibration: what comes with it, and every row to be filled in, in the order of the work.
 *
 * @param plan the loop, the rows that the workbook has, points and cycles to be read
 * @returns data of the sheet
 * Source: own choice; the order of work of IEC 61298-2: rising, then falling, cycle by cycle.
 */
export function planSheet(plan: SheetPlan): SheetData {
  const { instrument, calibration, texts, program, madeOn, people } = plan;
  const planned = [
    calibrationRow(plan),
    ...phaseRows(plan, "as_found"),
    ...phaseRows(plan, "as_left"),
    ...texts.trips.map((cells, place) => given("trips", place, cells)),
    ...checkRows(plan),
  ];
  const carried = carriedTables.map((table) => textTable(table, texts[table]));
  const content = { tag: instrument.tag, calibration, carried, planned };
  return {
    form: sheetForm,
    sheet: `S-${toHex(digestOf(new TextEncoder().encode(JSON.stringify(content)))).slice(0, 8)}`,
    program,
    madeOn,
    mark: instrument.decimalMark ?? decimalMarks[0],
    people,
    ...content,
  };
}

function calibrationRow({ instrument, calibration, texts }: SheetPlan): PlannedRow {
  const [there] = texts.calibrations;
  const cells = there ?? { calibration, tag: instrument.tag };
  return { id: "calibration", table: "calibrations", cells, ...(there && { isGiven: true }) };
}

function given(table: PlannedRow["table"], place: number, cells: Cells): PlannedRow {
  return { id: `${table}!${place + 1}`, table, cells, isGiven: true };
}

/** A row for each reading to be taken; one that was taken already stands in its place. */
function phaseRows(plan: SheetPlan, phase: "as_found" | "as_left"): readonly PlannedRow[] {
  const { instrument, calibration, points, cycles } = plan;
  const there = plan.texts.readings.flatMap((cells, place) =>
    cells.phase === phase ? [given("readings", place, cells)] : [],
  );
  const left = new Set(there);
  const places = evenPoints(instrument, points);
  const rows = Array.from({ length: cycles }, (_, place) => String(place + 1)).flatMap((cycle) =>
    (["rising", "falling"] as const).flatMap((direction) =>
      (direction === "rising" ? places : places.toReversed()).map((point): PlannedRow => {
        const cells = { calibration, phase, cycle, direction, point: String(point) };
        const taken = [...left].find((row) => isSame(row.cells, cells, instrument));
        if (taken !== undefined) left.delete(taken);
        return taken ?? { id: [phase, cycle, direction, point].join("/"), table: "readings", cells };
      }),
    ),
  );
  return [...rows, ...left];
}

function isSame(there: Cells, planned: Cells, instrument: Instrument): boolean {
  const number = (text: string | undefined) => readNumber(text ?? "", "point")?.value ?? Number.NaN;
  const at = number(there.point ?? there.reference);
  return (
    there.direction === planned.direction &&
    (there.cycle === undefined || there.cycle === planned.cycle) &&
    Math.abs(at - number(planned.point)) <= gapShare * spanOf(instrument)
  );
}

/** A row for each item of the list; those that the workbook answers already come in their place, own ones last. */
function checkRows({ instrument, outputs, calibration, texts }: SheetPlan): readonly PlannedRow[] {
  const there = texts.loop_checks.map((cells, place) => given("loop_checks", place, cells));
  const items = applicableItems(instrument, outputs);
  const keys = items.map(({ key }) => foldedKey(key));
  const own = there.filter(({ cells }) => !keys.includes(foldedKey(cells.item ?? "")));
  const listed = items.flatMap(({ key, unit }): readonly PlannedRow[] => {
    const answered = there.filter(({ cells }) => foldedKey(cells.item ?? "") === foldedKey(key));
    const cells = { calibration, item: key, ...(unit !== undefined && { unit }) };
    return answered.length > 0 ? answered : [{ id: `check/${key}`, table: "loop_checks", cells }];
  });
  return [...listed, ...own];
}

function textTable(table: CarriedTableName, rows: readonly Cells[]): TextTable<CarriedTableName> {
  const used = tableColumns(table).filter(({ name }) => rows.some((cells) => (cells[name] ?? "") !== ""));
  const columns = used.map(({ name }) => name);
  return { table, columns, rows: rows.map((cells) => columns.map((name) => cells[name] ?? "")) };
}
