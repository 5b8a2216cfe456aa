import { summaryColumns } from "../../report/columns/summary-columns.ts";
import { namedRows } from "../../report/table/column.ts";
import type { WrittenRecord } from "./report-case.ts";

/** What came out, a row a record, for a terminal; the first row names the columns. */
export function summaryRows(written: readonly WrittenRecord[]): readonly (readonly (string | number)[])[] {
  return namedRows(summaryColumns, written);
}
