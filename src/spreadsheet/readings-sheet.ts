import type { NamedPhase } from "../record/phases-of.ts";
import { phasesOf } from "../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { sheetColumns } from "../report/sheet/sheet-columns.ts";
import { numberStyleOf } from "../report/style/number-style.ts";
import { columnLetters } from "../units/column-letters.ts";
import { Grid } from "./grid.ts";
import { type LoopCells, loopCells } from "./loop-cells.ts";
import { furtherColumns, type ReadingColumn, readingCells } from "./readings-columns.ts";

/** Where the readings of a phase stand. */
export type PhaseReadings = NamedPhase<PhaseRecord> & {
  first: number;
  last: number;
  /** Addresses of a column by its key: of all readings, or of one row. */
  column: (key: string) => string;
  /** One cell of it. */
  at: (key: string, row: number) => string;
};

/** The sheet of readings, and where everything on it stands, for the formulas of the others. */
export type ReadingsSheet = { grid: Grid; loop: LoopCells; phases: readonly PhaseReadings[] };

/** Every reading with its errors, limits and verdict, in the lettered columns of the record's page and some behind them. */
export function readingsSheet(record: CalibrationRecord): ReadingsSheet {
  const grid = new Grid("Readings");
  grid.add([`Readings of ${record.instrument.tag}, ${record.calibration.calibration}`], "title");
  grid.add([
    "Shaded numbers were typed, or are values where their sheet says so; every other number is a formula. Columns have the letters that they have in the working of the record's page.",
  ]);
  const loop = loopCells(grid, record);
  return { grid, loop, phases: phasesOf(record).map((named) => phaseBlock(record, named, grid, loop)) };
}

function phaseBlock(
  record: CalibrationRecord,
  named: NamedPhase<PhaseRecord>,
  grid: Grid,
  loop: LoopCells,
): PhaseReadings {
  const { phase, title } = named;
  const columns = [...pageColumns(record, phase), ...furtherColumns(record, phase)];
  const letters = new Map(columns.map(({ key }, index) => [key, columnLetters(index)]));
  const letter = (key: string) => {
    const found = letters.get(key);
    if (found === undefined) throw new RangeError(`readingsSheet: no column ${key}`);
    return found;
  };
  grid.begin(title);
  grid.add(
    columns.map((column) => column.title),
    "heading",
  );
  grid.add(columns.map(({ unit }) => unit));
  grid.add(columns.map(({ how }) => how));
  const first = grid.next;
  const cellOf = readingCells({ record, phase, loop, has: (key) => letters.has(key) });
  for (const reading of phase.readings) {
    const row = grid.next;
    grid.add(columns.map(({ key }) => cellOf(key, reading, (of) => `${letter(of)}${row}`)));
  }
  const last = grid.next - 1;
  return {
    ...named,
    ...{ first, last },
    column: (key) => grid.range(letter(key), first, last),
    at: (key, row) => grid.at(letter(key), row),
  };
}

/** Columns of the page, with its formulas in words. */
function pageColumns(record: CalibrationRecord, phase: PhaseRecord): readonly ReadingColumn[] {
  return sheetColumns(record, phase, numberStyleOf(record)).map(({ key, title, unit, formula }) => ({
    ...{ key, title, unit },
    how: formula,
  }));
}
