import { counted } from "../../units/counted.ts";
import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";

type FoundTableProps<Row> = {
  title: string;
  label: string;
  columns: readonly Column<Row>[];
  /** All of them, or the first of many. */
  rows: readonly Row[];
  /** In the order in which a reader chooses from them. */
  states: readonly string[];
  stateOf: (row: Row) => string;
  /** Where a page holds the first of many rows only, and the others as data. */
  parts?: RowsInParts;
};

/** A part of many rows as a page of its own. */
export type PartLink = { path: string; words: string };
export type RowsInParts = { count: number; links: readonly PartLink[] };

/** A table with what a script needs to search and sort it. */
export function FoundTable<Row>(props: FoundTableProps<Row>) {
  const { title, label, columns, rows, states, stateOf, parts } = props;
  return (
    <section aria-labelledby="tags-title">
      <h2 id="tags-title">{title}</h2>
      <Find states={states} />
      {parts && <InParts shown={rows.length} {...parts} />}
      <DataTable label={label} id="register" kind="plain register" columns={columns} rows={rows} stateOf={stateOf} />
      {parts && <Turn />}
    </section>
  );
}

/** Shown by the script alone: without it there is nothing to search with. */
function Find({ states }: { states: readonly string[] }) {
  return (
    <p id="find" class="find" hidden>
      <label>
        Search
        <input id="search" type="search" />
      </label>{" "}
      <label>
        State
        <select id="state">
          <option value="">all</option>
          {states.map((state) => (
            <option key={state}>{state}</option>
          ))}
        </select>
      </label>{" "}
      <output id="shown" />
    </p>
  );
}

/** What to do without the script, and on paper. */
function InParts({ shown, count, links }: RowsInParts & { shown: number }) {
  return (
    <details class="in-parts">
      <summary>
        {shown} of {count} rows stand below at a time; all of them, to read without scripts and to print,{" "}
        {partsWords(links)}
      </summary>
      <PartLinks links={links} />
    </details>
  );
}

/** On paper too, where the links are not: "in 3 parts, register-parts/loops-001.html and so on". */
export function partsWords(links: readonly PartLink[]): string {
  return `in ${counted(links.length, "part")}, ${links[0]?.path}${links.length > 1 ? " and so on" : ""}`;
}

export function PartLinks({ links }: { links: readonly PartLink[] }) {
  return (
    <ol>
      {links.map(({ path, words }) => (
        <li key={path}>
          <a href={path}>
            <bdi>{words}</bdi>
          </a>
        </li>
      ))}
    </ol>
  );
}

/** The next rows of many; shown by the script alone. */
function Turn() {
  return (
    <p id="turn" class="find" hidden>
      <button type="button" id="before">
        rows before
      </button>{" "}
      <button type="button" id="after">
        further rows
      </button>
    </p>
  );
}
