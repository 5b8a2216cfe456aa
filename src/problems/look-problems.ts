import { type Entry, stop, warn } from "./entry.ts";

/** What a first look at a lone table of readings could not do, and what it assumed. */
export const lookProblems = {
  "look/columns-unknown": stop(
    "the first row names no distance and no output of a sensor: {header}",
    "a first row that names the columns, such as {example}",
  ),
  "look/columns-read-as": warn(
    "columns were read by what people call them: {columns}",
    "the names of the table readings, or these if they are meant so",
  ),
  "look/direction-from-order": warn(
    "no column tells the direction; the order of the rows makes {rising} readings rising and {falling} falling, in {cycles}",
    "a column direction with rising and falling",
  ),
  "look/phase-assumed": warn(
    "no column tells the phase; all readings were taken as found",
    "a column phase with as_found and as_left",
  ),
} satisfies Record<string, Entry>;
