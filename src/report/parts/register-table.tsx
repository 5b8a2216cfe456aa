import type { RegisterRow } from "../../record/register-form.ts";
import { registerColumns } from "../columns/register-columns.tsx";
import { DataTable } from "../table/data-table.tsx";
import { dueStates } from "../texts/register-texts.ts";

/** Every tag by its last record, with what a script needs to search and sort. */
export function RegisterTable({ rows }: { rows: readonly RegisterRow[] }) {
  return (
    <section aria-labelledby="tags-title">
      <h2 id="tags-title">Loops</h2>
      <Find />
      <DataTable
        label="Loops, a row each"
        id="register"
        kind="plain register"
        columns={registerColumns}
        rows={rows}
        stateOf={({ due }) => due.state}
      />
    </section>
  );
}

/** Shown by the script alone: without it there is nothing to search with. */
function Find() {
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
          {dueStates.map((state) => (
            <option key={state}>{state}</option>
          ))}
        </select>
      </label>{" "}
      <output id="shown" />
    </p>
  );
}
