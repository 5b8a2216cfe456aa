import type { ComponentChildren } from "preact";

/** What stands in a column of a page: text, or more than that. */
type Content<Row> =
  | { text: (row: Row) => string; cell?: (row: Row) => ComponentChildren }
  | { text?: undefined; cell: (row: Row) => ComponentChildren };

/** One column of a table as data. */
export type Column<Row> = Content<Row> & {
  /** On a page. */
  heading: ComponentChildren;
  /** Behind the heading. */
  unit?: string | undefined;
  /** A heading over this one and its neighbours that have the same. */
  over?: string | undefined;
  /** Numbers stand to the right, decimal ones with their points below each other; a day is not broken. */
  kind?: "number" | "decimal" | "day";
  isRowHeader?: boolean;
  classOf?: (row: Row) => string | undefined;
  /** What a script sorts a page by, where it is not the text. */
  sortBy?: (row: Row) => string | number;
  /** Heading of the column below whose content it stands on a page, smaller, without a place of its own. */
  under?: string;
  /** At the foot of the column, over so many columns. */
  foot?: { text: string; span?: number };
  /** What the column is called in a terminal or a CSV. */
  name?: string;
  /** What stands in it there, where it is not the text; a CSV has more digits than a page. */
  value?: (row: Row) => string | number;
};

/** Whether what stands in a column is to be read as numbers. */
export function isNumber(kind: Column<never>["kind"]): boolean {
  return kind === "number" || kind === "decimal";
}

/** The columns that have a name, as rows for a terminal or a CSV; the first row holds the names. */
export function namedRows<Row>(
  columns: readonly Column<Row>[],
  rows: readonly Row[],
): readonly (readonly (string | number)[])[] {
  const named = columns.filter(({ name }) => name !== undefined);
  return [
    named.map(({ name = "" }) => name),
    ...rows.map((row) => named.map(({ value, text }) => value?.(row) ?? text?.(row) ?? "")),
  ];
}
