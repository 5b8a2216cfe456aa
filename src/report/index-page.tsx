import { renderToString } from "preact-render-to-string";
import { counted } from "../units/counted.ts";
import { type IndexRow, indexColumns, indexStates } from "./columns/index-columns.tsx";
import { Counts } from "./parts/counts.tsx";
import { FoundTable } from "./parts/found-table.tsx";
import {
  type ListedPart,
  mostInOnePage,
  type PagesInParts,
  packedRows,
  rowsInParts,
  shownAtOnce,
} from "./rows-in-parts.tsx";
import { searchedDocument } from "./searched-document.ts";

/** Every record of a folder as a page: counted at the top, searched, sorted and printed; of many with parts beside it. */
export function renderIndex(rows: readonly IndexRow[]): PagesInParts {
  const sorted = rows.length > 1 ? byTag(rows) : rows;
  const isLong = sorted.length > mostInOnePage;
  const parts = isLong ? rowsInParts({ ...recordsTable, rows: sorted }, partedPage) : [];
  const page = searchedDocument({
    title: "Calibration records",
    style: "",
    body: renderToString(<IndexPage rows={sorted} parts={parts} />),
    ...(isLong && { data: packedRows({ columns: indexColumns, rows: sorted, stateOf }) }),
  });
  return { page, parts };
}

/** A collator takes longer to make than the page of one record. */
function byTag(rows: readonly IndexRow[]): readonly IndexRow[] {
  const collator = new Intl.Collator("en", { numeric: true });
  return rows.toSorted((one, other) => collator.compare(one.tag, other.tag));
}

const stateOf = ({ overall }: IndexRow) => overall;
const partedPage = { name: "index", what: "Calibration records", style: "" };
const recordsTable = {
  ...{ title: "Records", kind: "records", columns: indexColumns },
  nameOf: ({ tag }: IndexRow) => tag,
  fromBelow: (row: IndexRow): IndexRow => ({ ...row, page: `../${row.page}` }),
};

function IndexPage({ rows, parts }: { rows: readonly IndexRow[]; parts: readonly ListedPart[] }) {
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
        rows={parts.length > 0 ? rows.slice(0, shownAtOnce) : rows}
        states={indexStates}
        stateOf={stateOf}
        {...(parts.length > 0 && { parts: { count: rows.length, links: parts } })}
      />
      <p class="small">
        State: the word of the whole record, the worst of loop, switched outputs, loop check and completeness; a fail
        that is not complete is counted as a fail. Whether the records may be believed is checked by spanwright verify.
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
