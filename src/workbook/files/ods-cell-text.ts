import { elapsedText, momentText, numberText } from "./spreadsheet-text.ts";

/** A cell of an .ods file: the value that it holds, the text that it shows, and over how many cells it goes. */
export type OdsCell = {
  type: string;
  value: string;
  formula: string;
  shown: string;
  repeated: number;
  rows: number;
  columns: number;
};

type Doubt = { why: "uncalculated"; formula: string } | { why: "shown otherwise"; shown: string; holds: string };

/** The text of a cell, and what it does not say by it. */
export function odsCellText(cell: OdsCell): { text: string; doubt?: Doubt } {
  const { type, value, formula, shown } = cell;
  if (formula !== "" && type === "" && shown === "") return { text: "", doubt: { why: "uncalculated", formula } };
  if (["float", "currency", "percentage"].includes(type)) return numberCell(cell);
  if (type === "date") return { text: momentText(value) };
  if (type === "time") return { text: timeText(value) };
  if (type === "boolean") return { text: value };
  return { text: shown === "" && type === "string" ? value : shown };
}

/** The number that the cell holds, with the zeros and the unit that it shows. */
function numberCell({ type, value, shown }: OdsCell): { text: string; doubt?: Doubt } {
  const number = Number(value);
  if (value === "" || !Number.isFinite(number)) return { text: shown };
  const isPercent = type === "percentage";
  const scaled = isPercent ? Number((number * 100).toPrecision(15)) : number;
  const decimals = decimalsShown(scaled, shown);
  if (decimals === undefined) {
    return { text: numberText(number), doubt: { why: "shown otherwise", shown, holds: numberText(number) } };
  }
  const unit = isPercent ? "%" : unitShown(shown);
  const format = `0${decimals > 0 ? `.${"0".repeat(decimals)}` : ""}`;
  const text = numberText(scaled, format);
  return { text: unit === "" ? text : `${text} ${unit}` };
}

/** A number as any country writes it. */
const writtenNumber = /[.,]?\d(?:[\d\s.,'’]*\d)?(?:E[+-]?\d+)?/u;

/** How many decimals a text shows of a number; undefined where it shows another number. */
function decimalsShown(number: number, shown: string): number | undefined {
  if (shown === "") return 0;
  const [digits = "", ...further] = shown.match(new RegExp(writtenNumber, "gu")) ?? [];
  if (further.length > 0) return undefined;
  const plain = digits.replace(/[\s'’]/gu, "");
  if (plain.includes("E"))
    return isNear(Number(plain.replace(",", ".")), number, 0.05 * Math.abs(number)) ? 0 : undefined;
  const decimals = /[.,](\d+)$/u.exec(plain)?.[1]?.length ?? 0;
  const whole = Number(plain.replace(/\D/gu, ""));
  // The last mark may part thousands, and then nothing is behind the point.
  return [decimals, 0].find((count) => isNear(whole / 10 ** count, number, roundedBy(count)));
}

/** Half of the last digit, and what a double adds to it. */
function roundedBy(decimals: number): number {
  return 0.5000001 * 10 ** -decimals;
}

function isNear(shown: number, number: number, gap: number): boolean {
  return Math.abs(shown - Math.abs(number)) <= gap;
}

/** Whatever stands behind the last digit, such as "mA", or before the first, such as a sign of money. */
function unitShown(shown: string): string {
  const [, before = "", behind = ""] = /^([^\d]*)[\s\S]*?([^\d]*)$/u.exec(shown) ?? [];
  const money = before.replace(/[\s.,+\-\u2212(]/gu, "");
  return `${money}${behind.replace(/[)\s]+$/u, "").trim()}`.trim();
}

/** "PT14H05M00S" as 14:05:00; more than a day stays what it is, hours. */
function timeText(value: string): string {
  const [, hours = "0", minutes = "0", seconds = "0"] = /^PT(?:(\d+)H)?(?:(\d+)M)?(?:([\d.,]+)S)?$/u.exec(value) ?? [];
  return elapsedText(3600 * Number(hours) + 60 * Number(minutes) + Number(seconds.replace(",", ".")));
}
