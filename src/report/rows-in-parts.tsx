import { renderToString } from "preact-render-to-string";
import { packedText } from "../record/record-element.ts";
import type { PartLink } from "./parts/found-table.tsx";
import { partDocument } from "./searched-document.ts";
import type { Column } from "./table/column.ts";
import { DataTable, tableRows } from "./table/data-table.tsx";

// Many rows: as data for a page that draws them on demand, and in parts that need no script.

/** A page is one file with its rows up to here: a megabyte or so, which opens at once. */
export const mostInOnePage = 1000;
/** Rows that stand in a page whose others are data. */
export const shownAtOnce = 200;
/** Rows of a part, which a printer takes at once; of an element of data, unpacked apart so that none is large. */
const [rowsOfPart, rowsOfElement] = [500, 5000];

/** A page of many rows, and the parts in which they are read without a script. */
export type PagesInParts = { page: string; parts: readonly PagePart[] };
/** A part, by its path from the page on; made when it is written. */
export type PagePart = { path: string; render: () => string };
export type ListedPart = PagePart & PartLink;

/** A table in parts of some hundred rows that are pages of their own, in a folder beside the page. */
export type PartedTable<Row> = {
  title: string;
  /** What the names of its files begin with. */
  kind: string;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  /** What a part is found by, of its first and of its last row; without it a part is named by the places of its rows. */
  nameOf?: (row: Row) => string;
  /** The same row with its links from a folder below. */
  fromBelow: (row: Row) => Row;
};

/** The page that the parts belong to: its name without ending, what it is, what its style adds. */
export type PageOfParts = { name: string; what: string; style: string };

/** The parts of a table, in the order of its rows. */
export function rowsInParts<Row>(table: PartedTable<Row>, page: PageOfParts): readonly ListedPart[] {
  const { kind, nameOf, rows } = table;
  const count = Math.ceil(rows.length / rowsOfPart);
  return Array.from({ length: count }, (_, index) => {
    const start = index * rowsOfPart;
    const own = rows.slice(start, start + rowsOfPart);
    const path = `${page.name}-parts/${kind}-${String(index + 1).padStart(3, "0")}.html`;
    const ends = [own[0] as Row, own.at(-1) as Row];
    const words = nameOf ? ends.map(nameOf).join(" to ") : `rows ${start + 1} to ${start + own.length}`;
    return { path, words, render: () => renderPart({ ...table, rows: own }, page, [words, index + 1, count]) };
  });
}

function renderPart<Row>(
  { title, columns, rows, fromBelow }: PartedTable<Row>,
  { name, what, style }: PageOfParts,
  [words, number, count]: readonly [string, number, number],
): string {
  const place = `part ${number} of ${count}`;
  const body = (
    <main>
      <header class="heading">
        <div>
          <p class="kind">{what}</p>
          <h1>
            {title}: <bdi>{words}</bdi>
          </h1>
          <p class="subject">
            {place}; how all of them stand is said in <a href={`../${name}.html`}>{name}.html</a>
          </p>
        </div>
      </header>
      <DataTable label={title} kind="plain register" columns={columns} rows={rows.map(fromBelow)} />
    </main>
  );
  return partDocument({ title: `${title}, ${place}: ${what}`, style, body: renderToString(body) });
}

type PackedTable<Row> = {
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  stateOf: (row: Row) => string;
};

/**
 * Elements of some thousand rows each: a line of JSON with the state of each row and what each column is sorted by, then
 * a line of HTML a row, which a page cuts out only when it draws it.
 */
export function packedRows<Row>({ columns, rows, stateOf }: PackedTable<Row>): string {
  const shown = columns.filter(({ under }) => under === undefined);
  const keysOf = (row: Row) => shown.map(({ sortBy, text }) => sortBy?.(row) ?? text?.(row) ?? "");
  const unsorted = columns.map(({ sortBy: _, ...column }) => column);
  const elements: string[] = [];
  for (let start = 0; start < rows.length; start += rowsOfElement) {
    const own = rows.slice(start, start + rowsOfElement);
    const drawn = tableRows({ columns: unsorted, rows: own });
    const keys = JSON.stringify(own.map((row) => [stateOf(row), ...keysOf(row)]));
    const lines = [keys, ...drawn.map((html) => html.replaceAll("\n", "&#10;"))];
    elements.push(`<script type="application/gzip" data-encoding="base64">${packedText(lines.join("\n"))}</script>\n`);
  }
  return elements.join("");
}
