import { renderToString } from "preact-render-to-string";
import { packedText } from "../record/record-element.ts";
import type { LateCalibration, OpenFinding, Register, RegisterRow } from "../record/register-form.ts";
import { lateColumns, openFindingColumns, registerColumns } from "./columns/register-columns.tsx";
import type { PartLink } from "./parts/found-table.tsx";
import { partDocument } from "./searched-document.ts";
import type { Column } from "./table/column.ts";
import { DataTable, tableRows } from "./table/data-table.tsx";

// A register of many loops: its rows as data for a page that draws them on demand, and in parts that need no script.

/** Rows of a part, which a printer takes at once; of an element of data, unpacked apart so that none is large. */
const [rowsOfPart, rowsOfElement] = [500, 5000];

/** A part, by its path from the folder on; made when it is written. */
export type RegisterPart = { path: string; render: () => string };
type ListedPart = RegisterPart & PartLink;
export type RegisterParts = Readonly<Record<"loops" | "open" | "late", readonly ListedPart[]>>;

/** The lists of a register in parts, in a folder beside it. */
export function registerParts({ rows, openFindings, late, on }: Register, name: string): RegisterParts {
  return {
    loops: partsOf({ ...loopsTable, rows }, name, on),
    open: partsOf({ ...openTable, rows: openFindings }, name, on),
    late: partsOf({ ...lateTable, rows: late }, name, on),
  };
}

/** A table of a register, in parts of some hundred rows that are pages of their own. */
type PartedTable<Row> = {
  title: string;
  kind: string;
  columns: readonly Column<Row>[];
  nameOf: (row: Row) => string;
  rows: readonly Row[];
};

const loopsTable = { title: "Loops", kind: "loops", columns: registerColumns, nameOf: ({ tag }: RegisterRow) => tag };
const openTable = {
  ...{ title: "Found out of tolerance, not decided yet", kind: "open", columns: openFindingColumns },
  nameOf: ({ tag }: OpenFinding) => tag,
};
const lateTable = {
  ...{ title: "Calibrated late", kind: "late", columns: lateColumns },
  nameOf: ({ tag }: LateCalibration) => tag,
};

function partsOf<Row extends { path: string }>(
  table: PartedTable<Row>,
  name: string,
  on: string,
): readonly ListedPart[] {
  const { title, kind, nameOf, rows } = table;
  const count = Math.ceil(rows.length / rowsOfPart);
  return Array.from({ length: count }, (_, index) => {
    const own = rows.slice(index * rowsOfPart, (index + 1) * rowsOfPart);
    const ends = [own[0] as Row, own.at(-1) as Row].map(nameOf);
    const path = `${name}-parts/${kind}-${String(index + 1).padStart(3, "0")}.html`;
    const words =
      kind === "loops" ? ends.join(" to ") : `rows ${index * rowsOfPart + 1} to ${index * rowsOfPart + own.length}`;
    const heading = { title, on, name, place: `part ${index + 1} of ${count}`, words };
    return { path, words, render: () => renderPart(own, table, heading) };
  });
}

type PartHeading = { title: string; on: string; name: string; place: string; words: string };

function renderPart<Row extends { path: string }>(
  rows: readonly Row[],
  { columns }: PartedTable<Row>,
  { title, on, name, place, words }: PartHeading,
): string {
  // The parts lie in a folder beside the register, one step farther from the records.
  const fromThere = rows.map((row) => ({ ...row, path: `../${row.path}` }));
  const body = (
    <main>
      <header class="heading">
        <div>
          <p class="kind">Register of calibrations on {on}</p>
          <h1>
            {title}: <bdi>{words}</bdi>
          </h1>
          <p class="subject">
            {place}; how the folder stands is said in the <a href={`../${name}.html`}>register</a>
          </p>
        </div>
      </header>
      <DataTable label={title} kind="plain register" columns={columns} rows={fromThere} />
    </main>
  );
  return partDocument({ title: `${title}, ${place}, ${on}`, style: footOf(on), body: renderToString(body) });
}

/** Each row as its HTML, its state, and what each column is sorted by. */
export function packedRows(rows: readonly RegisterRow[]): string {
  const shown = registerColumns.filter(({ under }) => under === undefined);
  const keysOf = (row: RegisterRow) => shown.map(({ sortBy, text }) => sortBy?.(row) ?? text?.(row) ?? "");
  const columns = registerColumns.map(({ sortBy: _, ...column }) => column);
  const elements: string[] = [];
  for (let start = 0; start < rows.length; start += rowsOfElement) {
    const own = rows.slice(start, start + rowsOfElement);
    const drawn = tableRows({ columns, rows: own });
    const data = own.map((row, index) => [drawn[index], row.due.state, ...keysOf(row)]);
    elements.push(
      `<script type="application/gzip" data-encoding="base64">${packedText(JSON.stringify(data))}</script>\n`,
    );
  }
  return elements.join("");
}

/** The foot of every printed page; a day has no sign that style would read. */
export function footOf(day: string): string {
  return `@page{@bottom-left{content:"Register of calibrations on ${day}"}}`;
}
