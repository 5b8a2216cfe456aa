import { greatestOf } from "../../numeric/least-and-greatest.ts";
import { decimalsOf } from "../../units/decimal-mark.ts";

/** Width of a decimal point beside that of a digit, in the font of the page. */
const pointWidth = 0.45;

/** The most room, in digits, that a number of a column takes behind its decimal point, and the point. */
export function widestDecimals(column: readonly string[]): number {
  return Math.max(0, greatestOf(column.filter(isNumber).map(widthOfDecimals)));
}

/** The room, in digits, that a number leaves behind it so that its decimal point stands below those of its column. */
export function roomAfter(text: string, widest: number): number {
  return isNumber(text) ? Number((widest - widthOfDecimals(text)).toFixed(2)) : 0;
}

function isNumber(text: string): boolean {
  return /\d$/u.test(text);
}

/** Digits behind the last decimal point, and the point. */
function widthOfDecimals(text: string): number {
  const decimals = decimalsOf(text);
  return decimals === 0 ? 0 : decimals + pointWidth;
}
