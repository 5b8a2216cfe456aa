import type { Column } from "../model/column.ts";
import { type AnyTableName, tableColumns } from "../model/tables.ts";
import type { ProblemList } from "../problems/problem-list.ts";
import type { RawTable } from "./files/raw-table.ts";
import { columnNamed, foldedColumnName, headerColumns } from "./header-columns.ts";
import { nearestWord } from "./nearest-word.ts";

/** Reports columns that are missing, that stand there twice, or that the table does not have. */
export function checkHeader(table: RawTable<AnyTableName>, firstLook: boolean, problems: ProblemList): void {
  reportMissing(table, firstLook, problems);
  const firstPlaces = new Map<Column, number>();
  for (const [index, text] of table.header.entries()) {
    if (text === "") continue;
    const place = { file: table.file, line: table.headerLine, column: text };
    const column = columnNamed(table.table, text);
    if (column === undefined) {
      problems.add("tables/column-unknown", place, { values: unknownValues(table, text) });
      continue;
    }
    const first = firstPlaces.get(column);
    if (first === undefined) firstPlaces.set(column, index + 1);
    else problems.add("tables/column-twice", place, { values: { first } });
  }
}

function reportMissing(
  { table, file, header, headerLine }: RawTable<AnyTableName>,
  firstLook: boolean,
  problems: ProblemList,
): void {
  const present = new Set(headerColumns(table, header));
  const needed = neededColumns(tableColumns(table), firstLook);
  const columns = needed.map(({ name }) => name).join(", ");
  for (const column of needed) {
    if (present.has(column)) continue;
    problems.add("tables/column-missing", { file, line: headerLine }, { values: { column: column.name, columns } });
  }
}

/** The columns that every row must fill in. */
export function neededColumns(columns: readonly Column[], firstLook: boolean): readonly Column[] {
  return columns.filter(({ required, missingAtFirstLook }) => required && !(firstLook && missingAtFirstLook));
}

/** "Reference (mm)" was meant as the column reference; the unit stands in the instrument's row. */
const unitInBrackets = /\s*[([][^)\]]*[)\]]\s*$/u;

function unknownValues({ table }: RawTable<AnyTableName>, text: string): { nearest: string; columns: string } {
  const names = tableColumns(table).map(({ name }) => name);
  const nearest = nearestWord(foldedColumnName(text.replace(unitInBrackets, "")), names);
  if (nearest === undefined) return { nearest: "", columns: names.join(", ") };
  return { nearest: `; did you mean ${nearest}?`, columns: "a column that the README of spanwright new explains" };
}
