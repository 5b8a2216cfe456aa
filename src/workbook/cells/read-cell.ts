import type { Column } from "../../model/column.ts";
import { type DecimalMark, readNumber } from "../../units/read-number.ts";
import { unitOf, unitTable } from "../../units/unit-table.ts";
import type { CellResult, CellValue } from "./cell-result.ts";
import type { UnitRow } from "./expected-unit.ts";
import { readChoice } from "./read-choice.ts";
import { isTime, readDate } from "./read-date.ts";
import { readNumberOrWords } from "./read-number-or-words.ts";
import { readQuantity } from "./read-quantity.ts";

const listMark = /[;+|,]/u;
const yesWords: ReadonlySet<string> = new Set(["yes", "y", "true", "1"]);
const noWords: ReadonlySet<string> = new Set(["no", "n", "false", "0"]);

/** Reads the trimmed text of one cell that is not empty, as its column says. */
export function readCell(
  text: string,
  column: Column,
  mark: DecimalMark,
  unitRow: UnitRow | undefined,
): CellResult<CellValue> {
  switch (column.reads) {
    case "text":
      return { value: text };
    case "number":
      return readQuantity(text, column, mark, unitRow);
    case "numberOrWords":
      return readNumberOrWords(text, mark, unitRow?.unit);
    case "choice":
      return readChoice(text, column.choices);
    case "choices":
      return readChoices(text, column.choices);
    case "wholeNumber":
      return readWholeNumber(text, mark);
    case "date":
      return readDate(text);
    case "time":
      return isTime(text) ? { value: text } : { code: "tables/cell-not-time", values: {} };
    case "yesNo":
      return readYesNo(text.toLowerCase());
    case "list":
      return { value: listed(text) };
    case "unit":
      return readUnit(text);
  }
}

/** What a column takes, in words, for a cell that should not be empty. */
export function acceptedWords(column: Column): string {
  switch (column.reads) {
    case "choice":
    case "choices":
      return `${column.choices.join(", ")} (${column.about})`;
    case "number":
    case "wholeNumber":
      return `a number: ${column.about}`;
    case "date":
      return `a date such as 2026-03-04: ${column.about}`;
    default:
      return column.about;
  }
}

function readWholeNumber(text: string, mark: DecimalMark): CellResult<number> {
  const written = readNumber(text, mark);
  const isWhole = written?.unit === null && Number.isSafeInteger(written.value) && written.value >= 1;
  return isWhole ? { value: written.value } : { code: "tables/cell-not-whole", values: {} };
}

function readYesNo(word: string): CellResult<boolean> {
  if (yesWords.has(word)) return { value: true };
  if (noWords.has(word)) return { value: false };
  return { code: "tables/cell-not-choice", values: { choices: "yes, no" } };
}

function listed(text: string): readonly string[] {
  const parts = text.split(listMark).map((part) => part.trim());
  return [...new Set(parts.filter((part) => part !== ""))];
}

/** Each of the listed words; the first that is none of the choices is the one to blame. */
function readChoices(text: string, choices: readonly string[]): CellResult<readonly string[]> {
  const read = listed(text).map((word) => readChoice(word, choices));
  const wrong = read.find((one) => "code" in one);
  if (wrong !== undefined) return wrong as CellResult<readonly string[]>;
  if (read.length === 0) return { code: "tables/cell-not-choice", values: { choices: choices.join(", ") } };
  return { value: [...new Set(read.flatMap((one) => ("value" in one ? [one.value] : [])))] };
}

function readUnit(text: string): CellResult<string> {
  const value = unitOf(text);
  if (value !== undefined) return { value };
  return { code: "tables/cell-not-choice", values: { choices: Object.keys(unitTable).join(", ") } };
}
