import { renderToString } from "preact-render-to-string";
import { counted } from "../units/counted.ts";
import { type IndexRow, indexColumns, indexStates } from "./columns/index-columns.tsx";
import { Counts } from "./parts/counts.tsx";
import { FoundTable } from "./parts/found-table.tsx";
import { searchedDocument } from "./searched-document.ts";

/** Every record of a folder as a page: counted at the top, searched, sorted and printed. */
export function renderIndex(rows: readonly IndexRow[]): string {
  return searchedDocument({ title: "Calibration records", style: "", body: renderToString(<IndexPage rows={rows} />) });
}

function IndexPage({ rows }: { rows: readonly IndexRow[] }) {
  const sorted = rows.toSorted((one, other) => one.tag.localeCompare(other.tag, "en", { numeric: true }));
  return (
    <main>
      <header class="heading">
        <div>
          <p class="kind">Calibration records</p>
          <h1>{counted(rows.length, "record")}</h1>
          <p class="subject">every record that lies in this folder, one row each</p>
        </div>
      </header>
      <Counts title="How they stand" counts={countsOf(rows)} />
      <FoundTable
        title="Records"
        label="Records, a row each"
        columns={indexColumns}
        rows={sorted}
        states={indexStates}
        stateOf={({ overall }) => overall}
      />
      <p class="small">
        State: the word of the whole record, the worst of loop, switched outputs, loop check and completeness. Whether
        the records may be believed is checked by spanwright verify.
      </p>
    </main>
  );
}

/** The grave first; a word that no record has is left out, but for fail and pass. */
function countsOf(rows: readonly IndexRow[]) {
  return indexStates
    .map((state) => ({
      count: rows.filter(({ overall }) => overall === state).length,
      what: state,
      isGrave: !state.endsWith("pass"),
    }))
    .filter(({ count, what }) => count > 0 || what === "fail" || what === "pass");
}
