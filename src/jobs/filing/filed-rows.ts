import { type Column, namedRows } from "../../report/table/column.ts";
import type { FiledRow } from "./file-records.ts";

/** What was filed, a row a page, for a terminal; the first row names the columns. */
export function filedRows(filed: readonly FiledRow[]): readonly (readonly (string | number)[])[] {
  return namedRows(filedColumns, filed);
}

const filedColumns: readonly Column<FiledRow>[] = [
  { heading: "Tag", name: "tag", text: ({ tag }) => tag },
  { heading: "Calibration", name: "calibration", text: ({ calibration }) => calibration },
  { heading: "Revision", name: "revision", text: ({ revision }) => String(revision) },
  { heading: "Outcome", name: "outcome", text: ({ outcome }) => outcome },
  { heading: "Page", name: "page", text: ({ path }) => path },
];
