const minus = "\u2212";

/** From here on `toFixed` writes exponents, and every double is a whole number. */
const exponentFrom = 1e21;

/** As many decimals as `toFixed` can write. */
const mostDecimals = 100;

/**
 * A number with a fixed count of decimals, as it is printed.
 *
 * @param value any finite number
 * @param decimals digits behind the point, 0 or more
 * @returns text with a true minus sign (U+2212), never in exponent form; a value that rounds to zero has no sign
 * @throws RangeError for a value that is not finite
 * Source: rounding half away from zero of the decimal value that the double holds (ECMAScript `toFixed`).
 * @example writeFixed(-0.4996, 2) // "−0.50"
 */
export function writeFixed(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`writeFixed: requires a finite value, got ${value}`);
  const size = Math.abs(value);
  const digits = size < exponentFrom ? size.toFixed(decimals) : wholeDigits(size, decimals);
  return value < 0 && Number(digits) !== 0 ? minus + digits : digits;
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
  return value > 0 && Number(text) !== 0 ? `+${text}` : text;
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
  if (value === 0) return (0).toFixed(Math.max(0, digits - 1));
  return writeFixed(Number(value.toPrecision(digits)), decimalsForSignificant(value, digits));
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
  if (!Number.isFinite(value)) throw new RangeError(`decimalsForSignificant: requires a finite value, got ${value}`);
  const exponent = Number(value.toExponential(digits - 1).split("e")[1]);
  return Math.min(mostDecimals, Math.max(0, digits - 1 - exponent));
}

function wholeDigits(size: number, decimals: number): string {
  const fraction = decimals > 0 ? `.${"0".repeat(decimals)}` : "";
  return `${BigInt(size)}${fraction}`;
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
