import type { Texts } from "../../workbook/smallest-workbook.ts";
import type { Writing } from "./written-tables.ts";

// What a cell says, read by another hand than the program: a few lines that know nothing of its tables and units.

const columns = ["point", "reference", "signal", "signal_at_card", "counts", "value"] as const;
export type NumberColumn = (typeof columns)[number];

/** Of every line of a table, what the cells under each name say; a number in the unit behind it, where there is one. */
export type SaidLine = { line: number; said: ReadonlyMap<string, Said> };
export type Said = { text: string; number: number | undefined };

const factors: Readonly<Record<string, number>> = {
  ...{ mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 },
  ...{ mA: 1, A: 1000, µA: 0.001, V: 1, mV: 0.001 },
};

/** Splits the lines of a text by what parts its cells; quotation marks as in every such file. */
export function saidLines(
  text: string,
  { delimiter, mark }: Writing,
  unitOf: (column: string) => string | undefined,
): readonly SaidLine[] {
  const [header = [], ...lines] = text
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => cellsOf(line, delimiter));
  const names = header.map((name) => name.trim().toLowerCase());
  return lines.map((cells, place) => ({
    line: place + 2,
    said: new Map(
      cells.map((cell, index) => {
        const name = names[index] ?? `cell ${index + 1}`;
        const isNumber = columns.some((column) => column === name);
        return [name, { text: cell.trim(), number: isNumber ? numberIn(cell, mark, unitOf(name)) : undefined }];
      }),
    ),
  }));
}

function cellsOf(line: string, delimiter: string): readonly string[] {
  const cells: string[] = [];
  let cell = "";
  let isQuoted = false;
  for (const character of line) {
    if (character === '"') isQuoted = !isQuoted;
    else if (character === delimiter && !isQuoted) {
      cells.push(cell);
      cell = "";
    } else cell += character;
  }
  return [...cells, cell];
}

/** A number with the mark of its file, in the unit of its column; nothing where it is no number that one may read. */
function numberIn(cell: string, mark: Writing["mark"], own: string | undefined): number | undefined {
  const match = /^([+\-\u2212]?\s*[\d\s\u00a0\u202f]*(?:[.,]\d*)?(?:[eE][+-]?\d+)?)\s*([^\d\s].*)?$/u.exec(cell.trim());
  const digits = match?.[1]?.replace(/[\s\u00a0\u202f]/gu, "") ?? "";
  if (digits === "" || (mark === "." ? digits.includes(",") : digits.includes("."))) return undefined;
  const value = Number(digits.replace(",", ".").replace("\u2212", "-"));
  const unit = match?.[2]?.trim();
  if (unit === undefined || unit === own) return value;
  const [from, to] = [factors[unit], factors[own ?? ""]];
  return from === undefined || to === undefined ? undefined : (value * from) / to;
}

export function readingsText(texts: Texts): string {
  return String(texts["readings.csv"] ?? "");
}
