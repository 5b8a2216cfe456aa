import Papa from "papaparse";
import type { AnyTableName } from "../../model/table-names.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { columnNamed } from "../header-columns.ts";
import { unmarkedText } from "./marked-text.ts";
import type { Delimiter, RawRow } from "./raw-table.ts";

const delimiters: readonly Delimiter[] = [",", ";", "\t"];

/** The line in which some spreadsheets write the delimiter that they used. */
const delimiterLine = /^"?sep=([,;\t])"?[,;\t]*(?:\n|$)/iu;

/** The header is looked for in so many characters from the top. */
const headerWithin = 65_536;

/** The rows of a text that are not empty, each with its line, and the delimiter that parts its cells. */
export type SplitText = { rows: readonly RawRow[]; delimiter: Delimiter };

/** Splits the text of a file into rows and cells; what is wrong with its quotation marks is a problem at its line. */
export function splitText(text: string, table: AnyTableName, file: string, problems: ProblemList): SplitText {
  const lines = text.replace(/\r\n?/gu, "\n");
  const stated = delimiterLine.exec(lines);
  const body = stated === null ? lines : lines.slice(stated[0].length);
  const delimiter = (stated?.[1] as Delimiter | undefined) ?? bestDelimiter(body, table);
  const { data, errors } = Papa.parse<string[]>(body, { delimiter, newline: "\n" });
  const malformed = new Set(errors.filter(({ type }) => type === "Quotes").map(({ row }) => row));
  const rows: RawRow[] = [];
  let line = stated === null ? 1 : 2;
  for (const [index, cells] of data.entries()) {
    const isMalformed = malformed.has(index);
    if (isMalformed) problems.add("tables/quote", { file, line });
    // A malformed header still names columns; without it every cell below would be blamed as well.
    if ((!isMalformed || rows.length === 0) && cells.some((cell) => cell.trim() !== "")) {
      rows.push({ line, cells: cells.map(unmarkedText) });
    }
    line += 1 + newlinesIn(cells);
  }
  return { rows, delimiter };
}

/** The one with which the header gives most columns that the table has; else most cells; else the comma. */
function bestDelimiter(text: string, table: AnyTableName): Delimiter {
  const scored = delimiters.map((delimiter) => {
    const { data } = Papa.parse<string[]>(text.slice(0, headerWithin), { delimiter, newline: "\n" });
    const header = data.find((cells) => cells.some((cell) => cell.trim() !== "")) ?? [];
    const known = header.filter((cell) => columnNamed(table, cell) !== undefined).length;
    return { delimiter, known, cells: header.length };
  });
  scored.sort((a, b) => b.known - a.known || b.cells - a.cells);
  return scored[0]?.delimiter ?? ",";
}

function newlinesIn(cells: readonly string[]): number {
  let newlines = 0;
  for (const cell of cells) if (cell.includes("\n")) newlines += cell.split("\n").length - 1;
  return newlines;
}
