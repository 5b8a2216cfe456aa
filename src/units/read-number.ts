/** The sign that stands before the fraction in a whole file. */
export type DecimalMark = "point" | "comma";

/** A number as it was written: its value, the unit word behind it, and how many digits follow the decimal mark. */
export type WrittenNumber = { value: number; unit: string | null; decimals: number };

/** What spreadsheets put between groups of three digits: plain, no-break, figure, thin, narrow no-break space, apostrophe. */
const groupMark = "[ \\u00a0\\u2007\\u2009\\u202f'’]";
const whole = `(?:\\d{1,3}(?:${groupMark}\\d{3})+|\\d+)`;
const fraction = `(?:\\d{3}(?:${groupMark}\\d{3})*(?:${groupMark}\\d{1,3})?|\\d+)`;
/** "12/01" and "8-Jan" are no numbers with a unit: a unit begins with no sign of arithmetic. */
const unitWord = "[^\\d.,\\s+\\-\u2212/*:=].*";
const minusSigns = /^[\u2212\u2013\ufe63\uff0d]/u;
const numberWithUnit = new RegExp(
  `^([+-]?(?:${whole}(?:\\.(?:${fraction}|(?!\\S)))?|\\.${fraction})(?:[eE][+-]?\\d+)?)\\s*(${unitWord})?$`,
  "su",
);

/** By far the most numbers are written so; they are read without the longer way. */
const plainNumber = /^-?\d{1,15}(?:\.\d{1,15})?$/u;
const groupMarks = new RegExp(groupMark, "gu");

/**
 * Reads one number as a spreadsheet may have saved it.
 *
 * @param text a cell: "12.02", "12,02 mA", "−0.5", "1 234,5", "±0.5"; spaces around it do not matter
 * @param mark the decimal mark of the file; the other one is not accepted
 * @returns value, unit word (null where there is none) and written decimals; `undefined` where the text is no number
 * Source: own choice of what to accept; thousands are set apart by a space, never by point or comma (ISO 80000-1:2022, 7.3.1).
 * @example readNumber("1 234,50 mm", "comma") // { value: 1234.5, unit: "mm", decimals: 2 }
 */
export function readNumber(text: string, mark: DecimalMark): WrittenNumber | undefined {
  if (mark === "point" && plainNumber.test(text)) return readPlainNumber(text);
  const plain = text
    .trim()
    .replace(/^±\s*/u, "")
    .replace(minusSigns, "-")
    .replace(/^([+-])\s+/u, "$1");
  if (plain.includes(mark === "comma" ? "." : ",")) return undefined;
  const match = numberWithUnit.exec(mark === "comma" ? plain.replace(",", ".") : plain);
  const digits = match?.[1]?.replace(groupMarks, "");
  if (digits === undefined) return undefined;
  const value = Number(digits);
  if (!Number.isFinite(value)) return undefined;
  return { value, unit: match?.[2]?.trim() ?? null, decimals: decimalsOf(digits) };
}

function readPlainNumber(text: string): WrittenNumber {
  const point = text.indexOf(".");
  return { value: Number(text), unit: null, decimals: point < 0 ? 0 : text.length - point - 1 };
}

function decimalsOf(digits: string): number {
  const [mantissa = "", exponent = "0"] = digits.toLowerCase().split("e");
  const written = mantissa.split(".")[1]?.length ?? 0;
  return Math.max(0, written - Number(exponent));
}
