import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { decimalsOf } from "../../units/decimal-mark.ts";
import { type NumberStyle, readableDecimals } from "../style/number-style.ts";
import type { UnletteredColumn } from "./sheet-column.ts";

/** Decimals of a working sheet: of distances, of shares, which are differences of them, and of percentages. */
export type SheetDigits = { distance: number; share: number; percent: number };

/** Enough for any sheet whose inputs were typed. */
const mostFurther = 9;
/** What a computer's own rounding may be, in units of the last printed digit. */
const closeCall = 1e-6;

/**
 * One digit more than elsewhere on the page, and so many for the distances that whoever works from the printed ones
 * finds the printed results: every share and every percentage.
 */
export function sheetDigitsOf(
  record: CalibrationRecord,
  style: NumberStyle,
  columnsWith: (phase: PhaseRecord, digits: SheetDigits) => readonly UnletteredColumn[],
): SheetDigits {
  const share = style.distance + 1;
  const digitsWith = (further: number) => ({
    ...{ distance: readableDecimals(record, share + further), share, percent: style.percent + 1 },
  });
  const all = phasesOf(record).map(({ phase }) => phase);
  for (let further = 0; further < mostFurther; further += 1) {
    const digits = digitsWith(further);
    if (all.every((phase) => agrees(phase, columnsWith(phase, digits)))) return digits;
  }
  return digitsWith(mostFurther);
}

/** Whether each printed result is what the printed numbers before it give. */
function agrees({ readings }: PhaseRecord, columns: readonly UnletteredColumn[]): boolean {
  const byKey = new Map(columns.map((column) => [column.key, column]));
  const worked = columns.flatMap(({ work, cell }) => (work === undefined ? [] : [{ work, cell }]));
  return readings.every((reading) => {
    const numbers = new Map<string, number>();
    const printed = (key: string) => {
      const known = numbers.get(key) ?? numberOf(byKey.get(key)?.cell(reading) ?? "");
      numbers.set(key, known);
      return known;
    };
    return worked.every(({ work, cell }) => {
      const text = cell(reading);
      if (text === "") return true;
      const step = 10 ** -decimalsOf(text);
      return isRoundedTo(numberOf(text), work(printed), step);
    });
  });
}

/** Whether a result reads so when it is rounded; half a step is rounded away from zero, as everywhere on the page. */
function isRoundedTo(printed: number, result: number, step: number): boolean {
  const off = Math.abs(result - printed) / step;
  return off < 0.5 - closeCall || (off < 0.5 + closeCall && Math.abs(printed) > Math.abs(result));
}

/** The number that a cell prints. */
function numberOf(text: string): number {
  return Number(text.replace("−", "-").replace(",", "."));
}
