import type { Column } from "../table/column.ts";
import { DataTable } from "../table/data-table.tsx";

type FoundTableProps<Row> = {
  title: string;
  label: string;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  /** In the order in which a reader chooses from them. */
  states: readonly string[];
  stateOf: (row: Row) => string;
};

/** A table with what a script needs to search and sort it. */
export function FoundTable<Row>({ title, label, columns, rows, states, stateOf }: FoundTableProps<Row>) {
  return (
    <section aria-labelledby="tags-title">
      <h2 id="tags-title">{title}</h2>
      <Find states={states} />
      <DataTable label={label} id="register" kind="plain register" columns={columns} rows={rows} stateOf={stateOf} />
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
