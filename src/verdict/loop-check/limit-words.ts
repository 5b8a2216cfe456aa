import { isInside, type NumberLimits, storedDigits } from "../../units/is-inside.ts";
import { decimalsForSignificant, writeFixed } from "../../units/write-number.ts";

const digitsShown = 5;
const mostDigits = 15;

/**
 * Limits in words.
 *
 * @param limits either side or both
 * @param unit printed behind them; null for none
 * @param digits significant digits, 5 where left out
 * @returns "12 to 30 V", "12 V or more", "571.43 Ω at most", with true minus signs
 * Source: own choice.
 * @example limitWords({ low: 12, high: 30 }, "V") // "12 to 30 V"
 */
export function limitWords({ low, high }: NumberLimits, unit: string | null, digits = digitsShown): string {
  const words = (value: number, behind: string | null) => numberWords(value, behind, digits);
  if (low === null) return high === null ? "no limit" : `${words(high, unit)} at most`;
  if (high === null) return `${words(low, unit)} or more`;
  return low === high ? `exactly ${words(low, unit)}` : `${words(low, null)} to ${words(high, unit)}`;
}

/**
 * A number with its unit, for a sentence.
 *
 * @param value any finite number
 * @param unit null for none
 * @param digits significant digits, 5 where left out
 * @returns the number without zeros at the end, with a true minus sign
 * Source: own choice.
 * @example numberWords(571.42857, "Ω") // "571.43 Ω"
 */
export function numberWords(value: number, unit: string | null, digits = digitsShown): string {
  const rounded = Number(value.toPrecision(digits));
  const text = writeFixed(rounded, Math.min(decimalsForSignificant(rounded, digits), decimalsOf(rounded)));
  return unit === null ? text : `${text} ${unit}`;
}

/**
 * A number that must not be exceeded, for a sentence: rounded down, so that what is printed is allowed.
 *
 * @param value above zero
 * @param unit null for none
 * @param digits significant digits
 * @returns the number without zeros at the end
 * Source: own choice.
 * @example mostWords(4.358899, "mm", 2) // "4.3 mm"
 */
export function mostWords(value: number, unit: string | null, digits: number): string {
  const nearest = Number(value.toPrecision(digits));
  const step = 10 ** (Math.floor(Math.log10(value)) - digits + 1);
  return numberWords(nearest > value * (1 + storedDigits) ? nearest - step : nearest, unit, digits);
}

/**
 * A number that breaks its limits, in words, with as many digits as it takes to see that.
 *
 * @param value outside the limits
 * @param limits either side or both
 * @param unit printed behind each; null for none
 * @param origin where the number comes from, printed behind it; may be empty
 * @returns a clause for a sentence
 * Source: own choice: printed numbers must not say the opposite of what was decided.
 * @example outsideWords(11.4, { low: 12, high: 30 }, "V", "") // "11.4 V where 12 to 30 V is allowed"
 */
export function outsideWords(value: number, limits: NumberLimits, unit: string | null, origin: string): string {
  const rounded = (one: number | null) => (one === null ? null : Number(one.toPrecision(digitsShown)));
  const showsIt = !isInside(Number(value.toPrecision(digitsShown)), {
    low: rounded(limits.low),
    high: rounded(limits.high),
  });
  const digits = showsIt ? digitsShown : mostDigits;
  return `${numberWords(value, unit, digits)}${origin} where ${limitWords(limits, unit, digits)} is allowed`;
}

function decimalsOf(value: number): number {
  const [mantissa = "", exponent = "0"] = String(value).split("e");
  return Math.max(0, (mantissa.split(".")[1]?.length ?? 0) - Number(exponent));
}
