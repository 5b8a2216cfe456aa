import type { Column } from "../../model/column.ts";
import type { Place } from "../../problems/problem.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import type { DecimalMark } from "../../units/read-number.ts";
import { isQuantity } from "../cells/read-number-or-words.ts";
import { placeOfCell } from "./place-of-table.ts";
import type { Delimiter, RawRows, RawSheet } from "./raw-table.ts";

/** A number with exactly one comma or point: the digits before the mark, the mark, the digits behind it. */
const oneMark = /^[\s±+\-\u2212\u2013]*(\d[\d \u00a0\u2007\u2009\u202f'’]*)?([.,])(\d*)(?![\d.,])/u;

/** "1,234" could be a thousand and some; "0,234" and "12,34" could not. */
const wholeOfGroup = /^[1-9]\d{0,2}$/u;

type RowsOfTable = { file: string; sheet?: RawSheet | undefined; rows: RawRows };
type MarkedCell = Place & { text: string };
type Votes = { comma?: MarkedCell; point?: MarkedCell; commas: number; points: number; sureCommas: number };

/**
 * Settles the decimal mark of a whole table from the cells of its number columns. Both marks in one table are
 * refused; so are commas that could all be thousands marks, unless the delimiter shows that they are not.
 */
export function settleDecimalMark(
  table: RowsOfTable & { delimiter: Delimiter | null },
  columns: readonly (Column | undefined)[],
  problems: ProblemList,
): DecimalMark {
  const votes = countVotes(table, columns);
  const { comma, point } = votes;
  if (comma === undefined) return "point";
  const { text: read, ...place } = comma;
  if (point !== undefined) {
    const { column = "", cell, line } = point;
    const other = cell === undefined ? `line ${line}, column ${column}` : `cell ${cell}, column ${column}`;
    problems.add("tables/decimal-mark-mixed", place, { read, values: { other, otherText: point.text } });
    return votes.commas > votes.points ? "comma" : "point";
  }
  const delimiterTells = table.delimiter === ";" || table.delimiter === "\t";
  if (votes.sureCommas === 0 && !delimiterTells) {
    problems.add("tables/decimal-mark-ambiguous", place, { read });
  }
  return "comma";
}

function countVotes({ rows, ...table }: RowsOfTable, columns: readonly (Column | undefined)[]): Votes {
  const votes: Votes = { commas: 0, points: 0, sureCommas: 0 };
  const numbers = [...columns.entries()].filter(
    ([, column]) => column?.reads === "number" || column?.reads === "numberOrWords",
  );
  for (const { line, cells } of rows) {
    for (const [index, column] of numbers) {
      const text = cells[index] ?? "";
      if (column?.reads === "numberOrWords" && !isQuantity(text, "point") && !isQuantity(text, "comma")) continue;
      const match = oneMark.exec(text);
      if (match === null || !/\d/u.test(match[0])) continue;
      const cell = () => ({ ...placeOfCell(table, line, index, column?.name), text: text.trim() });
      if (match[2] === ".") {
        votes.points += 1;
        votes.point ??= cell();
      } else {
        votes.commas += 1;
        votes.comma ??= cell();
        if (!couldBeGroup(match)) votes.sureCommas += 1;
      }
    }
  }
  return votes;
}

function couldBeGroup([, before = "", , behind = ""]: readonly string[]): boolean {
  return behind.length === 3 && wholeOfGroup.test(before.trim());
}
