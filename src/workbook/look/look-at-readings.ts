import { greatestOf } from "../../numeric/least-and-greatest.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { readNumber } from "../../units/read-number.ts";
import { changedRows } from "../files/changed-rows.ts";
import { placeOfTable, sheetBehind } from "../files/place-of-table.ts";
import type { RawTable } from "../files/raw-table.ts";
import { tableOfRows } from "../files/table-of-rows.ts";
import { type ColumnOfReadings, columnsOfReadings, rankOf, withoutUnit } from "./column-names.ts";
import { wordOfTable } from "./look-words.ts";
import { orderOfReadings, type PlaceInOrder } from "./order-of-readings.ts";

/**
 * A lone table of readings as the program takes it: columns by the names that people give them, directions and cycles from
 * the order of the rows where no column tells them. What was assumed is told, and stands on the page.
 */
export function lookAtReadings(raw: RawTable<"readings">, problems: ProblemList): RawTable<"readings"> {
  const named = withColumnsNamed(raw, problems);
  if (named === undefined) return { ...raw, header: [], rows: [] };
  const hasPhase = named.header.some((text) => withoutUnit(text).name === "phase");
  if (!hasPhase && named.rows.length > 0) {
    problems.add("look/phase-assumed", placeOfTable(named, named.headerLine));
  }
  return withOrder(named, problems);
}

/** The column that each place of the header is meant for; each column once, the surest name first. */
export function columnsMeant(header: readonly string[]): ReadonlyMap<number, ColumnOfReadings> {
  const meant = new Map<number, ColumnOfReadings>();
  const take = (column: ColumnOfReadings, from: ColumnOfReadings = column) => {
    const ranked = header
      .map((text, index) => ({ index, rank: text.trim() === "" || meant.has(index) ? undefined : rankOf(text, from) }))
      .filter((one): one is { index: number; rank: number } => one.rank !== undefined)
      .toSorted((one, other) => one.rank - other.rank);
    const [surest] = ranked;
    if (surest !== undefined) meant.set(surest.index, column);
    return surest !== undefined;
  };
  const hasReference = take("reference");
  // "set" and "actual" are the point and the reference; "set" alone is all that there is of a reference.
  if (!hasReference) take("reference", "point");
  for (const column of columnsOfReadings) if (column !== "reference") take(column);
  return meant;
}

const outputs: readonly string[] = ["signal", "signal_at_card", "counts", "value"];

function withColumnsNamed(raw: RawTable<"readings">, problems: ProblemList): RawTable<"readings"> | undefined {
  const meant = columnsMeant(raw.header);
  const found = [...meant.values()];
  if (raw.header.length > 0 && (!found.includes("reference") || !outputs.some((output) => found.includes(output)))) {
    const example = exampleHeader(raw);
    const values = { header: raw.header.join(", "), example };
    problems.add("look/columns-unknown", placeOfTable(raw, raw.headerLine), { values });
    return undefined;
  }
  const header = raw.header.map((text, index) => {
    const column = meant.get(index);
    const { unit } = withoutUnit(text);
    return column === undefined ? text : unit === undefined ? column : `${column} (${unit})`;
  });
  const renamed = raw.header.flatMap((text, index) => {
    const column = meant.get(index);
    const isItsName =
      column === undefined ||
      text
        .trim()
        .toLowerCase()
        .replace(/[\s-]+/gu, "_")
        .startsWith(column);
    return isItsName ? [] : [`${text.trim()} as ${column}`];
  });
  if (renamed.length > 0) {
    const place = placeOfTable(raw, raw.headerLine);
    problems.add("look/columns-read-as", place, { values: { columns: renamed.join(", ") } });
  }
  return withWordsOfTable(settledAnew(raw, header, problems));
}

/** The decimal mark is settled by the columns of numbers, which are known only now. */
function settledAnew(
  raw: RawTable<"readings">,
  header: readonly string[],
  problems: ProblemList,
): RawTable<"readings"> {
  const { file, sheet, headerLine, rows, description } = raw;
  const { name, encoding, delimiter } = description;
  const named = { line: headerLine, cells: header };
  return tableOfRows({ table: "readings", file, sheet, name, encoding, delimiter, header: named, rows }, problems);
}

function withWordsOfTable(table: RawTable<"readings">): RawTable<"readings"> {
  const places = (["direction", "phase"] as const).flatMap((column) => {
    const index = table.header.indexOf(column);
    return index === -1 ? [] : [{ column, index }];
  });
  if (places.length === 0) return table;
  const rows = changedRows(table.rows, (cells) =>
    cells.map((cell, index) => {
      const place = places.find((one) => one.index === index);
      return place === undefined ? cell : wordOfTable(place.column, cell);
    }),
  );
  return { ...table, rows };
}

/** A header that fits the table, for whoever has none: a name for each of its columns. */
function exampleHeader({ header }: RawTable<"readings">): string {
  return header.length === 2
    ? "distance,mA"
    : ["distance,mA", ...header.slice(2).map((_, index) => `note ${index + 1}`)].join(",");
}

/** Directions, and cycles with them, from the order of the rows; phase by phase, as far as phases are told apart. */
function withOrder(table: RawTable<"readings">, problems: ProblemList): RawTable<"readings"> {
  const index = (column: string) => table.header.findIndex((text) => withoutUnit(text).name === column);
  if (index("direction") !== -1 || table.rows.length === 0) return table;
  const [reference, phase] = [index("reference"), index("phase")];
  const hasCycles = index("cycle") !== -1;
  const placesOf = new Map<string, number[]>();
  const numbers: number[] = [];
  for (const { cells } of table.rows) {
    const number = readNumber(cells[reference] ?? "", table.decimalMark)?.value;
    if (number !== undefined) addTo(placesOf, cells[phase] ?? "", numbers.length);
    numbers.push(number ?? Number.NaN);
  }
  const orders = new Map<number, PlaceInOrder>();
  for (const places of placesOf.values()) {
    for (const [place, order] of orderOfReadings(places.map((one) => numbers[one] as number)).entries()) {
      orders.set(places[place] as number, order);
    }
  }
  const all = [...orders.values()];
  const count = (direction: string) => all.filter((one) => one.direction === direction).length;
  const values = {
    rising: count("rising"),
    falling: count("falling"),
    cycles: counted(Math.max(1, greatestOf(all.map(({ cycle }) => cycle)))),
  };
  problems.add("look/direction-from-order", placeOfTable(table, table.headerLine), { values });
  const added = hasCycles ? ["direction"] : ["direction", "cycle"];
  return {
    ...table,
    ...sheetBehind(added, table),
    header: [...added, ...table.header],
    rows: changedRows(table.rows, (cells, place) => {
      const { direction = "rising", cycle = 1 } = orders.get(place) ?? {};
      return [...(hasCycles ? [direction] : [direction, String(cycle)]), ...cells];
    }),
  };
}

function addTo(placesOf: Map<string, number[]>, name: string, place: number): void {
  const places = placesOf.get(name);
  if (places === undefined) placesOf.set(name, [place]);
  else places.push(place);
}

function counted(cycles: number): string {
  return cycles === 1 ? "one cycle" : `${cycles} cycles`;
}

/**
 * Reads a table once without telling twice what is told of it again when its columns are known.
 *
 * @param isReadAgain whether a file that is no lone table is read once more as a workbook, which tells of it then
 */
export async function firstReading(
  read: (problems: ProblemList) => Promise<RawTable<"readings"> | undefined>,
  problems: ProblemList,
  isReadAgain = false,
): Promise<RawTable<"readings"> | undefined> {
  const first = new ProblemList();
  const raw = await read(first);
  if (raw === undefined && isReadAgain) return undefined;
  for (const { code, place, read: text, values } of first.all) {
    const isToldAgain = raw !== undefined && (code.startsWith("tables/decimal-mark") || code === "tables/empty");
    if (!isToldAgain) problems.add(code, place, { read: text, values });
  }
  return raw;
}
