import type { Column } from "../model/column.ts";
import { tableColumns } from "../model/table-columns.ts";
import { type AnyTableName, requiredTables } from "../model/table-names.ts";
import type { ProblemList } from "../problems/problem-list.ts";
import { placeOfCell, placeOfTable } from "./files/place-of-table.ts";
import type { RawRows, RawTable } from "./files/raw-table.ts";
import { columnNamed, foldedColumnName, headerColumns, withoutBrackets } from "./header-columns.ts";
import { isOneSlip, nearestWord } from "./nearest-word.ts";

/** Reports columns that are missing, that stand there twice, or that the table does not have. */
export function checkHeader(table: RawTable<AnyTableName>, firstLook: boolean, problems: ProblemList): void {
  const slipped = new Set<string>();
  const firstPlaces = new Map<Column, number>();
  for (const [index, text] of table.header.entries()) {
    if (text === "") continue;
    const place = placeOfCell(table, table.headerLine, index, text);
    const column = columnNamed(table.table, text);
    if (column === undefined) {
      const nearest = slippedColumn(table, index);
      if (nearest === undefined) problems.add("tables/column-unknown", place, { values: unknownValues(table, text) });
      else {
        slipped.add(nearest);
        problems.add("tables/column-slip", place, { values: { nearest } });
      }
      continue;
    }
    const first = firstPlaces.get(column);
    if (first === undefined) firstPlaces.set(column, index + 1);
    else problems.add("tables/column-twice", place, { values: { first } });
  }
  reportMissing(table, { firstLook, slipped }, problems);
}

/** A column that was meant and misspelled is told as that, and not as missing too. */
function reportMissing(
  raw: RawTable<AnyTableName>,
  { firstLook, slipped }: { firstLook: boolean; slipped: ReadonlySet<string> },
  problems: ProblemList,
): void {
  const { table, header, headerLine, rows } = raw;
  // Of what holds nothing at all it is said that it is empty.
  if (header.length === 0 && rows.length === 0 && (requiredTables as readonly AnyTableName[]).includes(table)) return;
  const present = new Set(headerColumns(table, header));
  const needed = neededColumns(tableColumns(table), firstLook);
  const columns = needed.map(({ name }) => name).join(", ");
  for (const column of needed) {
    if (present.has(column) || slipped.has(column.name)) continue;
    const values = { column: column.name, columns };
    problems.add("tables/column-missing", placeOfTable(raw, headerLine), { values });
  }
}

/** The columns that every row must fill in, whatever else it says. */
export function neededColumns(columns: readonly Column[], firstLook: boolean): readonly Column[] {
  return columns.filter(
    ({ required, missingAtFirstLook, mayBeSaid }) => required && !mayBeSaid && !(firstLook && missingAtFirstLook),
  );
}

/**
 * The column that a name with something under it was meant for: one slip of the hand away, and not there by its right
 * name with something under that.
 */
function slippedColumn({ table, header, rows }: RawTable<AnyTableName>, index: number): string | undefined {
  const written = foldedColumnName(withoutBrackets(header[index] ?? ""));
  const meant = tableColumns(table).filter(({ name }) => isOneSlip(written, name));
  if (meant.length === 0) return undefined;
  const places = filledPlaces(rows, header.length);
  if (!places.has(index)) return undefined;
  const filled = new Set(headerColumns(table, header).filter((_, place) => places.has(place)));
  return meant.find((column) => !filled.has(column))?.name;
}

/** The places in the header under which anything stands. */
function filledPlaces(rows: RawRows, places: number): ReadonlySet<number> {
  const filled = new Set<number>();
  for (const { cells } of rows) {
    for (let place = 0; place < places; place += 1) if ((cells[place] ?? "").trim() !== "") filled.add(place);
    if (filled.size === places) break;
  }
  return filled;
}

function unknownValues({ table }: RawTable<AnyTableName>, text: string): { nearest: string; columns: string } {
  const names = tableColumns(table).map(({ name }) => name);
  const nearest = nearestWord(foldedColumnName(withoutBrackets(text)), names);
  if (nearest === undefined) return { nearest: "", columns: names.join(", ") };
  return { nearest: `; did you mean ${nearest}?`, columns: "a column that the README of spanwright new explains" };
}
