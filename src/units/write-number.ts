import { decimalSign } from "./decimal-mark.ts";

const minus = "\u2212";

/** No number is written with more. */
const mostDecimals = 100;

/**
 * A number with a fixed count of decimals, as it is printed.
 *
 * @param value any finite number
 * @param decimals digits behind the point, 0 or more
 * @returns text with a true minus sign (U+2212) and the decimal mark of now (`withDecimalMark`), never in exponent form;
 *   a value that rounds to zero has no sign
 * @throws RangeError for a value that is not finite
 * Source: rounding half away from zero, as `writeToPlace`.
 * @example writeFixed(-0.4996, 2) // "−0.50"
 */
export function writeFixed(value: number, decimals: number): string {
  return writeToPlace(value, -decimals);
}

/**
 * A signed number with a fixed count of decimals: errors are printed so, for the sign carries the meaning.
 *
 * @param value any finite number
 * @param decimals digits behind the point, 0 or more
 * @returns as `writeFixed`, with "+" before what is greater than zero at that rounding
 * @throws RangeError for a value that is not finite
 * Source: own choice.
 * @example writeSigned(0.25, 2) // "+0.25"
 */
export function writeSigned(value: number, decimals: number): string {
  const text = writeFixed(value, decimals);
  return value > 0 && /[1-9]/u.test(text) ? `+${text}` : text;
}

/**
 * A number with a count of significant digits, never in exponent form: "0.00001234", "12300".
 *
 * @param value any finite number
 * @param digits 1 to 17
 * @returns text with a true minus sign, zeros kept
 * @throws RangeError for a value that is not finite
 * Source: own choice.
 * @example writeSignificant(0.00123449, 4) // "0.001234"
 */
export function writeSignificant(value: number, digits: number): string {
  return writeToPlace(value, placeOfSignificant(value, digits));
}

/**
 * How many decimals show a value to so many significant digits.
 *
 * @param value not zero
 * @param digits significant digits
 * @returns decimals, 0 where the value is so large that they end before the point, never more than 100
 * @throws RangeError for a value that is not finite
 * Source: own choice. Reads the rounded value's exponent, so that 0.0996 to two digits counts as 0.10.
 * @example decimalsForSignificant(0.0996, 2) // 2
 */
export function decimalsForSignificant(value: number, digits: number): number {
  return Math.max(0, -placeOfSignificant(value, digits));
}

/**
 * A number rounded to a decimal place: 0 is ones, 2 is hundreds, -3 is thousandths.
 *
 * What is rounded is the shortest decimal number that stands for the double, which is the one that was typed: 1.005 is
 * half of a hundredth and goes up, though the double itself lies a little below.
 *
 * @param value any finite number
 * @param place power of ten of the last digit, at least -100
 * @returns text with a true minus sign, never in exponent form; a value that rounds to zero has no sign
 * @throws RangeError for a value that is not finite
 * Source: common practice: a half goes away from zero, whatever the sign.
 * @example writeToPlace(-12350, 2) // "−12400"
 */
export function writeToPlace(value: number, place: number): string {
  const plain = place <= 0 && place >= -mostOfPlain ? plainFixed(value, -place) : undefined;
  if (plain !== undefined) return plain;
  const { digits, lastPlace } = decimalOf(value);
  const kept = shortened(digits, place - lastPlace);
  const decimals = Math.max(0, -place);
  const text = withZeros(kept, Math.max(0, place)).padStart(decimals + 1, "0");
  const written = decimals === 0 ? text : `${text.slice(0, -decimals)}${decimalSign()}${text.slice(-decimals)}`;
  return value < 0 && kept !== "0" ? minus + written : written;
}

/**
 * The place of the last digit where a number is written with so many significant ones.
 *
 * @param value any finite number
 * @param digits significant digits, 1 to 17
 * @returns power of ten, at least -100; that of the rounded value, so that 0.0996 to two digits counts as 0.10
 * @throws RangeError for a value that is not finite
 * Source: own choice.
 * @example placeOfSignificant(1234, 2) // 2
 */
export function placeOfSignificant(value: number, digits: number): number {
  const { digits: all, lastPlace } = decimalOf(value);
  const surplus = all.length - digits;
  const isLonger = shortened(all, surplus).length > digits;
  return Math.max(-mostDecimals, lastPlace + surplus + (isLonger ? 1 : 0));
}

/**
 * A number with the digits that it was typed with, as far as a stored number shows them.
 *
 * @param value any finite number
 * @returns no more than twelve significant digits and no zeros at the end; six digits for one so small or great that it
 *   would need an exponent
 * Source: own choice: twelve digits are what rounding of stored decimal numbers leaves alone.
 * @example writePlain(0.1 + 0.2) // "0.3"
 */
export function writePlain(value: number): string {
  const shortest = String(Number(value.toPrecision(12)));
  const decimals = shortest.includes("e") ? decimalsForSignificant(value, 6) : (shortest.split(".")[1]?.length ?? 0);
  return writeFixed(value, decimals);
}

/** Decimals up to which, and units of the last of them up to which, a double is known to far less than `besideHalf`. */
const mostOfPlain = 12;
const mostUnits = 1e9;
const besideHalf = 1e-6;

/**
 * The same by the engine's own way, where it is certain to be the same: the engine rounds the double, not the decimal
 * number that stands for it, which differs only beside a half of the last digit. A page has tens of thousands of numbers.
 */
function plainFixed(value: number, decimals: number): string | undefined {
  const size = Math.abs(value);
  const units = size * 10 ** decimals;
  if (!(units < mostUnits) || Math.abs(units - Math.floor(units) - 0.5) < besideHalf) return undefined;
  const text = size.toFixed(decimals);
  const written = decimalSign() === "." ? text : text.replace(".", decimalSign());
  return value < 0 && units > 0.5 ? minus + written : written;
}

/**
 * The shortest decimal number that stands for a double: its digits, without sign and point, and the place of the last.
 * Digits stay text, for a page has tens of thousands of numbers.
 */
function decimalOf(value: number): { digits: string; lastPlace: number } {
  if (!Number.isFinite(value)) throw new RangeError(`only a finite number is written, not ${value}`);
  const [mantissa = "", exponent] = Math.abs(value).toExponential().split("e");
  const digits = mantissa.replace(".", "");
  return { digits, lastPlace: Number(exponent) - (digits.length - 1) };
}

/** Without so many of its last digits, a half rounded up; with zeros behind it where the count is negative. */
function shortened(digits: string, count: number): string {
  if (count <= 0) return withZeros(digits, -count);
  const kept = count < digits.length ? digits.slice(0, -count) : "0";
  return (digits[digits.length - count] ?? "0") >= "5" ? String(BigInt(kept) + 1n) : kept;
}

function withZeros(digits: string, count: number): string {
  return digits === "0" ? digits : digits + "0".repeat(count);
}
