import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { spanOf } from "../../src/record/range.ts";
import type { CalibrationRecord } from "../../src/record/record-schema.ts";
import { type Cell, isFormula } from "../../src/spreadsheet/cell.ts";
import { Grid } from "../../src/spreadsheet/grid.ts";
import { recordSheets } from "../../src/spreadsheet/record-workbook.ts";
import { type WrittenSheet, writeWorkbook } from "../../src/spreadsheet/write-workbook.ts";
import { columnLetters } from "../../src/units/column-letters.ts";
import { howMany } from "../how-many.ts";
import { demoRecords } from "../report/demo-records.ts";
import { writeGeneratedWorkbook } from "./generated-workbook.ts";
import { describeWithProgram } from "./needs-program.ts";
import { type Recalculated, recalculated } from "./recalculated.ts";
import { recordsOfFolder } from "./records-of-folder.ts";

/** Two programs that sum in another order, and a floor of what a small difference of large numbers is known to: as with R. */
const relativeTolerance = 1e-9;
const absoluteTolerancePartOfScale = 1e-12;

const demo = fileURLToPath(new URL("../../data-demo", import.meta.url));
const wrongNumber = 77_777;
const wrongWord = "planted";

describeWithProgram(
  "soffice",
  "LibreOffice reckons each formula to what the record says, whatever was kept beside it",
  (soffice) => {
    it("in the demonstration, in loops that were generated, and in some of the demonstration with one reading changed", async () => {
      const generated = await generatedRecords();
      const changed = await recordsWithOneReadingChanged();
      const plain = [...demoRecords, ...generated].map((record) => ({ record, sheets: recordSheets(record) }));
      const some = demoRecords.flatMap((record, index) => (index % 3 === 0 ? [[record, changed[index]] as const] : []));
      const moved = some.map(([record, other]) => withTyped(record, other as CalibrationRecord));
      const books = [...plain, ...moved];
      const found = await recalculated(soffice, await written(books.map(({ sheets }) => sheets.map(planted))));
      const compared = books.map((book, index) => differences(book, found[index] as Recalculated));
      expect(compared.flatMap(({ different }) => different)).toEqual([]);
      expect(compared.reduce((sum, { held }) => sum + held, 0)).toBeGreaterThan(howMany(22_000, 45_000));
      // A reading is in its own row, in its test point, and in most figures.
      for (const [index, { sheets }] of moved.entries()) {
        expect(numbersApart(recordSheets(some[index]![0]), sheets)).toBeGreaterThan(10);
      }
    });

    it("and would be told apart if it did not: nothing agrees where the other program is told not to reckon", async () => {
      const record = demoRecords[0] as CalibrationRecord;
      const book = { record, sheets: recordSheets(record) };
      const [found] = await recalculated(soffice, await written([book.sheets.map(planted)]), 1);
      const { held, different } = differences(book, found as Recalculated);
      expect(held).toBeGreaterThan(200);
      expect(different.length).toBeGreaterThanOrEqual(held);
    });
  },
);

function written(books: readonly (readonly WrittenSheet[])[]): Promise<readonly Uint8Array[]> {
  return Promise.all(books.map(writeWorkbook));
}

async function generatedRecords(): Promise<readonly CalibrationRecord[]> {
  const found: CalibrationRecord[] = [];
  // Of each twenty-one loops, which hold every unit, signal, rule and gap.
  for (const seed of [20260504, 20260505, 20260506].slice(0, howMany(1, 3))) {
    const folder = writeGeneratedWorkbook(seed);
    found.push(...(await recordsOfFolder(folder)).records);
    rmSync(folder, { recursive: true });
  }
  return found;
}

/** The demonstration, with the signal, or else the controller's value, of the third reading of each calibration moved a little. */
async function recordsWithOneReadingChanged(): Promise<readonly CalibrationRecord[]> {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-moved-"));
  cpSync(demo, folder, { recursive: true });
  const file = join(folder, "readings.csv");
  const rows = readFileSync(file, "latin1").split("\n");
  const columns = (rows[0] as string).split(";");
  const seen = new Map<string, number>();
  const moved = rows.map((row) => {
    const cells = row.split(";");
    const times = (seen.get(cells[0] as string) ?? 0) + 1;
    seen.set(cells[0] as string, times);
    const place = ["signal", "value"].map((name) => columns.indexOf(name)).find((at) => /^\d/u.test(cells[at] ?? ""));
    if (times !== 3 || place === undefined) return row;
    return cells.map((cell, at) => (at === place ? lastDigitMoved(cell) : cell)).join(";");
  });
  writeFileSync(file, moved.join("\n"), "latin1");
  const { records } = await recordsOfFolder(folder);
  rmSync(folder, { recursive: true });
  return records;
}

function lastDigitMoved(cell: string): string {
  return cell.replace(/\d$/u, (digit) => `${digit === "9" ? 8 : Number(digit) + 1}`);
}

type Book = { record: CalibrationRecord; sheets: readonly WrittenSheet[] };

/**
 * The workbook of one record into which the one number was typed in which another record differs: its formulas are those
 * of the one, and what they have to give is what the other says.
 */
function withTyped(record: CalibrationRecord, other: CalibrationRecord): Book {
  const [own, others] = [recordSheets(record), recordSheets(other)];
  let typed = 0;
  const sheets = own.map((sheet, index) =>
    mapped(sheet, (cell, row, column) => {
      const wanted = others[index]?.grid.rows[row]?.cells[column] ?? null;
      if (isFormula(cell)) return { formula: cell.formula, is: isFormula(wanted) ? wanted.is : wrongWord };
      if (typeof cell !== "number" || cell === wanted || sheet.grid.name !== "Readings") return cell;
      typed += 1;
      return wanted;
    }),
  );
  expect([record.calibration.calibration, typed]).toEqual([record.calibration.calibration, 1]);
  return { record: other, sheets };
}

function mapped(
  { grid, ...rest }: WrittenSheet,
  change: (cell: Cell, row: number, column: number) => Cell,
): WrittenSheet {
  const copy = new Grid(grid.name);
  for (const [row, { kind, cells }] of grid.rows.entries()) {
    copy.add(
      cells.map((cell, column) => change(cell, row, column)),
      kind,
    );
  }
  return { ...rest, grid: copy };
}

/** A sheet whose kept results are all wrong. */
function planted(sheet: WrittenSheet): WrittenSheet {
  return mapped(sheet, (cell) =>
    isFormula(cell) ? { ...cell, is: typeof cell.is === "string" ? wrongWord : wrongNumber } : cell,
  );
}

/** What an error, which is a small difference of large numbers, is a part of: distances, percent of span; U is none. */
const scaleOf: Readonly<Record<string, (span: number) => number>> = {
  Readings: (span) => span,
  Figures: () => 100,
  Uncertainty: () => 0,
  Decision: (span) => span,
  Outputs: (span) => span,
  Picture: (span) => span,
};

/** Every formula that does not give what the record says, or gives no number where the record says nothing of it. */
function differences({ record, sheets }: Book, found: Recalculated) {
  const span = spanOf(record.instrument);
  const different: string[] = [];
  let held = 0;
  for (const { grid } of sheets) {
    const scale = absoluteTolerancePartOfScale * (scaleOf[grid.name]?.(span) ?? 1);
    for (const [row, { cells }] of grid.rows.entries()) {
      for (const [column, cell] of cells.entries()) {
        if (!isFormula(cell)) continue;
        if (cell.is !== undefined) held += 1;
        const value = found.get(grid.name)?.[row]?.[column] ?? null;
        if (agrees(cell.is, value, scale)) continue;
        const place = `${record.calibration.calibration}, ${grid.name}!${columnLetters(column)}${row + 1} ${cells[0]}`;
        different.push(`${place}: ${cell.is} in the record, ${value} there; ${cell.formula.slice(0, 150)}`);
      }
    }
  }
  return { held, different };
}

function agrees(is: Cell | undefined, value: unknown, scale: number): boolean {
  if (typeof is === "string") return is === value;
  if (typeof value !== "number") return is === undefined && value !== null && !/^#|^Err:|^planted$/u.test(`${value}`);
  if (is === undefined) return value !== wrongNumber;
  return Math.abs(value - Number(is)) <= Math.max(relativeTolerance * Math.abs(Number(is)), scale);
}

/** How many formulas have another number in one than in the other. */
function numbersApart(some: readonly WrittenSheet[], others: readonly WrittenSheet[]): number {
  return some
    .flatMap(({ grid }, sheet) =>
      grid.rows.flatMap(({ cells }, row) =>
        cells.map((cell, column) => [cell, others[sheet]?.grid.rows[row]?.cells[column] ?? null] as const),
      ),
    )
    .filter(([one, other]) => isFormula(one) && isFormula(other) && one.is !== other.is).length;
}
