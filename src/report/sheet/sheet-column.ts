import type { ReadingRecord } from "../../record/record-schema.ts";
import { writeFixed, writeSigned } from "../../units/write-number.ts";
import type { LetterOf } from "./sheet-formulas.ts";

/** One lettered column of the working sheet. */
export type SheetColumn = {
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
  key: string;
  formula?: (letter: LetterOf) => string;
};

/** A number with fixed decimals; nothing where there is none. */
export function fixedText(value: number | undefined, decimals: number): string {
  return value === undefined ? "" : writeFixed(value, decimals);
}

/** A signed number with fixed decimals; nothing where there is none. */
export function signedText(value: number | undefined, decimals: number): string {
  return value === undefined ? "" : writeSigned(value, decimals);
}
