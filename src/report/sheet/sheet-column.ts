import type { ReadingRecord } from "../../record/record-schema.ts";
import { writeFixed, writeSigned } from "../../units/write-number.ts";
import type { LetterOf } from "./sheet-formulas.ts";

/** One lettered column of the working sheet. */
export type SheetColumn = {
  key: string;
  letter: string;
  title: string;
  unit: string;
  /** How the column follows from other columns, by their letters; empty for what was read. */
  formula: string;
  isNumber: boolean;
  cell: (reading: ReadingRecord) => string;
};

/** A column before it has its letter; formulas name other columns by key. */
export type UnletteredColumn = Omit<SheetColumn, "letter" | "formula"> & {
  formula?: (letter: LetterOf) => string;
  /** The formula at work on printed numbers, where the printed result could differ from what they give. */
  work?: (printed: (key: string) => number) => number;
};

/** A number with fixed decimals; nothing where there is none. */
export function fixedText(value: number | undefined, decimals: number): string {
  return value === undefined ? "" : writeFixed(asWorked(value, decimals), decimals);
}

/** A signed number with fixed decimals; nothing where there is none. */
export function signedText(value: number | undefined, decimals: number): string {
  return value === undefined ? "" : writeSigned(asWorked(value, decimals), decimals);
}

/** Digits behind those that are printed in which a double still says what a decimal calculator says. */
const soundDigits = 5;

/** Without what binary storage adds to a decimal number: half a digit is rounded as whoever works on paper rounds it. */
function asWorked(value: number, decimals: number): number {
  return Number(value.toFixed(Math.min(decimals + soundDigits, 100)));
}
