import type { DecimalMark } from "./read-number.ts";

const signs: Readonly<Record<DecimalMark, string>> = { point: ".", comma: "," };

/** What numbers are written with now; a point, but inside `withDecimalMark`. */
let current: DecimalMark = "point";

/**
 * What is written while a function runs, with the decimal mark that its reader knows. Numbers become text in many places
 * and are told by nobody for whom, so that the mark is set once around all of it.
 *
 * @param mark that of the record, or nothing: then it stays as it is
 * @param write what it does before it first waits is written so; what a promise does later is not
 * @returns what the function returns
 * Source: own choice. ISO 80000-1:2009, 7.3.2 allows a comma or a point.
 * @example withDecimalMark("comma", () => decimalSign()) // ","
 */
export function withDecimalMark<Written>(mark: DecimalMark | undefined, write: () => Written): Written {
  const before = current;
  current = mark ?? before;
  try {
    return write();
  } finally {
    current = before;
  }
}

/**
 * The mark that numbers are written with now.
 *
 * @returns its name, as a workbook states it
 * Source: own choice.
 * @example decimalMark() // "point"
 */
export function decimalMark(): DecimalMark {
  return current;
}

/**
 * The sign between the ones and the tenths.
 *
 * @returns a point or a comma
 * Source: own choice.
 * @example decimalSign() // "."
 */
export function decimalSign(): string {
  return signs[current];
}

/** Digits, a point and digits, but not in a name, a version, a clause or another longer run of numbers. */
const pointed = /(?<![\w.,])(?<ones>\d+)\.(?<decimals>\d+)(?![\w.]*\d)/gu;

/**
 * A text of the program's own in which decimal numbers stand written out, such as a formula.
 *
 * @param text written with points
 * @returns the same with the mark of now; clause numbers and versions such as 5.2.2 stay
 * Source: own choice.
 * @example withDecimalMark("comma", () => marked("k = 1.96, see 5.2.2")) // "k = 1,96, see 5.2.2"
 */
export function marked(text: string): string {
  return current === "point" ? text : text.replace(pointed, `$<ones>${signs[current]}$<decimals>`);
}

/**
 * How many decimals a number was written with.
 *
 * @param text a number as it is written, with either mark
 * @returns digits behind the mark, 0 where there is none
 * Source: own choice.
 * @example decimalsOf("+0,25") // 2
 */
export function decimalsOf(text: string): number {
  return /[.,](?<decimals>\d+)$/u.exec(text)?.groups?.decimals?.length ?? 0;
}
