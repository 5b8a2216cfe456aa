import { type Entry, stop, warn } from "./entry.ts";

/** What can stand in the way of taking in what came back from entry sheets. */
export const collectProblems = {
  "collect/not-found": stop(
    "there is no such file or folder",
    "a .zip that a sheet handed back, a folder of tables, a table",
  ),
  "collect/no-tables": stop("there is no table in it", "files that have the name of a table: {tables}"),
  "collect/zip": stop("it cannot be unpacked: {why}", "a .zip as a sheet hands it back"),
  "collect/not-a-folder": stop(
    "tables are taken into a folder of .csv files only",
    "a folder of tables, or a new one; a spreadsheet saved as .csv files",
  ),
  "collect/other-reading": stop(
    "the workbook says {kept} at {there}, and nothing of this source was taken in",
    "the same text, or an empty cell in the workbook: no reading is written over",
  ),
  "collect/row-differs": warn("the workbook says {kept} at {there}, which is kept", "the row of the workbook"),
} satisfies Record<string, Entry>;
