import { summaryColumns } from "../../report/columns/summary-columns.ts";
import { namedRows } from "../../report/table/column.ts";
import type { WrittenRecord } from "./report-case.ts";
import type { IndexRow } from "./write-index.ts";

/** What came out, a row a record, for a terminal; the first row names the columns. */
export function summaryRows(written: readonly WrittenRecord[]): readonly (readonly (string | number)[])[] {
  return namedRows(summaryColumns, written);
}

/** The same of records that were let go, from what their index keeps of them; `folder` is where that lies. */
export function summaryOfIndex(rows: readonly IndexRow[], folder: string): readonly (readonly (string | number)[])[] {
  const [names = []] = summaryRows([]);
  const cells = ({ summary, page }: IndexRow) =>
    names.map((name) => (name === "page" ? `${folder}/${page}` : (summary[name] ?? "")));
  return [names, ...rows.map(cells)];
}
