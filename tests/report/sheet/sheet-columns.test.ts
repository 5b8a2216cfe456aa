import { expect, test } from "vitest";
import { phasesOf } from "../../../src/record/phases-of.ts";
import type { ReadingRecord } from "../../../src/record/record-schema.ts";
import type { SheetColumn } from "../../../src/report/sheet/sheet-column.ts";
import { sheetColumns } from "../../../src/report/sheet/sheet-columns.ts";
import { numberStyleOf } from "../../../src/report/style/number-style.ts";
import { demoRecord, demoRecords } from "../demo-records.ts";
import { printedNumber, workedFormula } from "../worked-formula.ts";

const sheets = demoRecords.flatMap((record) =>
  phasesOf(record).map(({ title, phase }) => ({
    label: `${record.instrument.tag}, ${title}`,
    phase,
    columns: sheetColumns(record, phase, numberStyleOf(record)),
  })),
);

const worked = (columns: readonly SheetColumn[]) =>
  columns.filter(({ formula, title }) => formula !== "" && title !== "verdict");

function numbersOf(columns: readonly SheetColumn[], reading: ReadingRecord): ReadonlyMap<string, number> {
  const printed = columns.map(({ letter, cell }) => [letter, cell(reading)] as const);
  return new Map(printed.filter(([, text]) => text !== "").map(([letter, text]) => [letter, printedNumber(text)]));
}

/** One unit of the last digit that is printed. */
function lastDigit(text: string): number {
  return 10 ** -(text.split(".")[1]?.length ?? 0);
}

/** A symmetric limit stands in brackets behind ±. */
const withoutSign = (formula: string) => formula.replace(/^±/u, "");

test("letters run from A without a gap", () => {
  for (const { columns } of sheets) {
    expect(columns.map(({ letter }) => letter).join("")).toBe("ABCDEFGHIJKLMNOPQRSTUVWXYZ".slice(0, columns.length));
  }
});

test("the direction and the verdict are words, and stand where the style of a sheet takes words to stand", () => {
  for (const { columns } of sheets) {
    const words = columns.flatMap(({ isNumber }, place) => (isNumber ? [] : [place]));
    // The row's number is a header, and the line comes before the columns: the second is the fourth child of its row.
    expect(words).toEqual([1, columns.length - 1]);
  }
});

test.each(sheets)(
  "every printed number of $label is what its formula makes of the printed ones",
  ({ phase, columns }) => {
    let followed = 0;
    for (const reading of phase.readings) {
      const numbers = numbersOf(columns, reading);
      for (const column of worked(columns)) {
        const text = column.cell(reading);
        if (text === "") continue;
        // Half a unit of the last digit that is printed, and 1e-9 for the arithmetic of a double.
        const allowed = lastDigit(text) / 2 + 1e-9;
        const result = workedFormula(withoutSign(column.formula), numbers);
        expect(Math.abs(result - printedNumber(text)), `${column.letter} = ${column.formula}`).toBeLessThanOrEqual(
          allowed,
        );
        followed += 1;
      }
    }
    expect(followed).toBeGreaterThanOrEqual(4 * phase.counted.used);
  },
);

test.each(sheets)(
  "every printed verdict of $label follows from the printed errors and the printed tolerance",
  ({ phase, columns }) => {
    const by = (title: string, unit?: string) =>
      columns.find((one) => one.title === title && (unit === undefined || one.unit === unit));
    const unit = by("indicated")?.unit;
    const judged = phase.readings.filter(({ verdict, leftOut }) => verdict !== undefined && leftOut === undefined);
    for (const reading of judged) {
      const errors = [by("error", unit), by("loop error")].flatMap((column) => (column ? [column.cell(reading)] : []));
      const limit = printedNumber(by("tolerance")?.cell(reading) ?? "");
      const isInside = errors.filter((text) => text !== "").every((text) => Math.abs(printedNumber(text)) <= limit);
      expect(by("verdict")?.cell(reading)).toBe(isInside ? "pass" : "fail");
    }
    expect(judged.length).toBe(phase.counted.used);
  },
);

test("a reading that was left out says so in the place of a verdict", () => {
  const { phase, columns } = sheets.find(({ label }) => label.startsWith("LT-640")) ?? sheets[0]!;
  const leftOut = phase.readings.find((reading) => reading.leftOut !== undefined);
  expect(leftOut && columns.at(-1)?.cell(leftOut)).toBe("left out");
});

test("a tolerance that differs upwards and downwards prints both", () => {
  const record = structuredClone(demoRecord("ZT-201"));
  record.instrument.toleranceMinus = 0.1;
  const phase = record.phases.asFound!;
  for (const reading of phase.readings) reading.toleranceLow = -4.8;
  const limit = sheetColumns(record, phase, numberStyleOf(record)).find(({ title }) => title === "tolerance");
  expect(limit?.formula).toBe("−(0.1 % × 4800) / +(0.2 % × 4800)");
  expect(limit?.cell(phase.readings[0]!)).toBe("−4.800 / +9.600");
});
