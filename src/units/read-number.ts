/** The sign that stands before the fraction in a whole file. */
export const decimalMarks = ["point", "comma"] as const;

export type DecimalMark = (typeof decimalMarks)[number];

/**
 * A number as it was written: its value, the unit word behind it, and how many digits follow the decimal mark. `step` is
 * the finest part of a fraction such as 4 1/16.
 */
export type WrittenNumber = { value: number; unit: string | null; decimals: number; step?: number };

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
 * @example readNumber("4 1/2 in", "point") // { value: 4.5, unit: "in", decimals: 1, step: 0.5 }
 */
export function readNumber(text: string, mark: DecimalMark): WrittenNumber | undefined {
  if (mark === "point" && plainNumber.test(text)) return readPlainNumber(text);
  const plain = text
    .trim()
    .replace(/^±\s*/u, "")
    .replace(minusSigns, "-")
    .replace(/^([+-])\s+/u, "$1");
  const inParts = readFraction(plain);
  if (inParts !== undefined) return inParts;
  if (plain.includes(mark === "comma" ? "." : ",")) return undefined;
  const match = numberWithUnit.exec(mark === "comma" ? plain.replace(",", ".") : plain);
  const digits = match?.[1]?.replace(groupMarks, "");
  if (digits === undefined) return undefined;
  const value = Number(digits);
  if (!Number.isFinite(value)) return undefined;
  return { value, unit: match?.[2]?.trim() ?? null, decimals: decimalsOf(digits) };
}

/** A fraction stands before the unit of a rule that is divided so: without it, 1/2 may be a day or one of two. */
const fractionPattern =
  /^([+-]?)(?:(\d{1,4})(?:\s+|-))?(\d{1,2})\/(2|4|8|16|32|64)\s*(in\.?|inch(?:es)?|"|″|ft|foot|feet|'|′)$/u;
const signsOfFractions: Readonly<Record<string, string>> = {
  ...{ "½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8" },
};

function readFraction(text: string): WrittenNumber | undefined {
  const plain = text.replace(/\s*([½¼¾⅛⅜⅝⅞])/u, (_, sign: string) => ` ${signsOfFractions[sign]}`).trim();
  const [, sign, wholes = "0", parts, of, unit = ""] = fractionPattern.exec(plain) ?? [];
  if (parts === undefined || Number(parts) >= Number(of)) return undefined;
  const value = (sign === "-" ? -1 : 1) * (Number(wholes) + Number(parts) / Number(of));
  const decimals = String(value).split(".")[1]?.length ?? 0;
  return { value, unit: unit.replace(/\.$/u, ""), decimals, step: 1 / Number(of) };
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
