import Papa from "papaparse";
import type { AnyTableName } from "../../model/table-names.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { columnNamed } from "../header-columns.ts";
import { unmarkedText } from "./marked-text.ts";
import { PackedRows } from "./packed-rows.ts";
import type { Delimiter, RawRow, RawRows } from "./raw-table.ts";

const delimiters: readonly Delimiter[] = [",", ";", "\t"];

/** The line in which some spreadsheets write the delimiter that they used. */
const delimiterLine = /^"?sep=([,;\t])"?[,;\t]*(?:\n|$)/iu;

/** The header is looked for in so many characters from the top. */
const headerWithin = 65_536;

/** The first row of a text that is not empty, those behind it, each with its line, and the delimiter of its cells. */
export type SplitText = { header: RawRow | undefined; rows: RawRows; delimiter: Delimiter };

/**
 * Splits the text of a file, which comes in pieces, into rows and cells; what is wrong with its quotation marks is a problem
 * at its line.
 */
export function splitText(
  pieces: Iterable<string>,
  table: AnyTableName,
  file: string,
  problems: ProblemList,
): SplitText {
  const text = withLineFeeds(pieces);
  const beginning = text.next().value ?? "";
  const stated = delimiterLine.exec(beginning);
  const body = (stated === null ? beginning : beginning.slice(stated[0].length)).replace(/^\ufeff/u, "");
  const delimiter = (stated?.[1] as Delimiter | undefined) ?? bestDelimiter(body, table);
  const rows = new PackedRows();
  let header: RawRow | undefined;
  let line = stated === null ? 1 : 2;
  for (const { cells, isMalformed } of parsedRows(body, text, delimiter)) {
    if (isMalformed) problems.add("tables/quote", { file, line });
    // A malformed header still names columns; without it every cell below would be blamed as well.
    if ((!isMalformed || header === undefined) && cells.some((cell) => cell.trim() !== "")) {
      const row = { line, cells: cells.map(unmarkedText) };
      if (header === undefined) header = detached(row);
      else rows.push(row);
    }
    line += 1 + newlinesIn(cells);
  }
  return { header, rows: rows.end(), delimiter };
}

/** A text with one kind of line end; its first piece is long enough to hold the header. */
function* withLineFeeds(pieces: Iterable<string>): Generator<string, undefined> {
  let held = "";
  let isBegun = false;
  for (const piece of pieces) {
    held += piece;
    if (!isBegun && held.length < headerWithin) continue;
    isBegun = true;
    // The line feed that belongs to a carriage return may come with the next piece.
    const end = held.endsWith("\r") ? held.length - 1 : held.length;
    yield held.slice(0, end).replace(/\r\n?/gu, "\n");
    held = held.slice(end);
  }
  yield held.replace(/\r\n?/gu, "\n");
}

type ParsedRow = { cells: readonly string[]; isMalformed: boolean };

/** The rows of a text; one that a piece ends in is parsed with the piece behind it. */
function* parsedRows(first: string, more: Iterable<string>, delimiter: Delimiter): Iterable<ParsedRow> {
  // The parser itself, for Papa.parse takes a whole text, or a stream and then answers later.
  const parser = new Papa.Parser({ delimiter, newline: "\n" });
  let text = first;
  for (const piece of more) {
    const { rows, end } = parsed(parser, text, false);
    yield* rows;
    text = text.slice(end) + piece;
  }
  yield* parsed(parser, text, true).rows;
}

function parsed(parser: Papa.Parser, text: string, isLast: boolean) {
  const { data, errors, meta } = parser.parse(text, 0, !isLast) as Papa.ParseResult<string[]>;
  const malformed = new Set(errors.filter(({ type }) => type === "Quotes").map(({ row }) => row));
  return {
    rows: data.map((cells, index): ParsedRow => ({ cells, isMalformed: malformed.has(index) })),
    end: meta.cursor,
  };
}

/** With texts of its own: a part of a text keeps the whole of it in memory. */
function detached(row: RawRow): RawRow {
  return JSON.parse(JSON.stringify(row)) as RawRow;
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
