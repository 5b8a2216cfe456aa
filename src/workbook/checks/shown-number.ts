import { writeSignificant } from "../../units/write-number.ts";

const shownDigits = 6;

/** A number as a sentence names it: six significant digits, without zeros at the end. */
export function shownNumber(value: number): string {
  const text = writeSignificant(value, shownDigits);
  return text.includes(".") ? text.replace(/\.?0+$/u, "") : text;
}
