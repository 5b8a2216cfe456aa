import type { Severity } from "./problem.ts";

type Entry = { severity: Severity; wrong: string; accepted: string };

const stop = (wrong: string, accepted: string): Entry => ({ severity: "stop", wrong, accepted });
const warn = (wrong: string, accepted: string): Entry => ({ severity: "warn", wrong, accepted });

/**
 * Everything that can be wrong with a workbook. A published code never changes its meaning.
 * `{name}` is filled in from the problem's values.
 */
export const catalogue = Object.freeze({
  "tables/missing": stop("the table {table} is not there", "a file {table}.csv with at least the columns {columns}"),
  "tables/file-unknown": warn("no table of a workbook is called so; the file was not read", "{tables}"),
  "tables/file-kind": warn("files of this kind are not read", "tables as .csv, or one .xlsx with sheets"),
  "tables/table-twice": stop("the table {table} stands in {first} too", "each table once"),
  "tables/spreadsheet": stop(
    "the file cannot be read as a spreadsheet",
    "an .xlsx file as a spreadsheet saves it, without a password",
  ),
  "tables/formula-uncalculated": stop(
    "the cell holds a formula without its result",
    "a value, or a file that a spreadsheet has calculated and saved",
  ),
  "tables/empty": stop("the table has no rows", "a first row that names the columns and at least one row below it"),
  "tables/encoding": stop(
    "the bytes are no text that a spreadsheet saves",
    "UTF-8 with or without byte order mark, UTF-16 with byte order mark, or Windows-1252",
  ),
  "tables/quote": stop(
    "a quotation mark opens and does not close as it should",
    'text in "…", a quotation mark inside it doubled',
  ),
  "tables/control-character": warn(
    "the cell holds characters that do not show; each was replaced by a visible sign",
    "text without control characters",
  ),
  "tables/column-missing": stop("the column {column} is not there", "a first row with the columns {columns}"),
  "tables/column-twice": stop("the column stands there twice, first as column number {first}", "each column once"),
  "tables/column-unknown": warn("no column of this table is called so; it was not used{nearest}", "{columns}"),
  "tables/column-unnamed": stop(
    "a value stands in a column that has no name",
    "a name for it in the first row, or an empty cell",
  ),
  "tables/row-long": stop("the row has {cells} cells, the first row names {columns} columns", "one cell a column"),
  "tables/decimal-mark-mixed": stop(
    "the file uses a decimal comma here and a decimal point at line {otherLine}, column {otherColumn} ({otherText})",
    "one decimal mark in a whole file",
  ),
  "tables/decimal-mark-ambiguous": stop(
    "the comma could be a decimal comma or a thousands mark, and nothing else in the file tells which",
    "a decimal point without thousands marks, or semicolons between the columns where the comma is the decimal mark",
  ),
  "tables/cell-missing": stop("nothing is written here", "{accepted}"),
  "tables/cell-not-number": stop("this is not a number", "a number such as {example}"),
  "tables/cell-not-whole": stop("this is not a whole number", "a whole number such as 1 or 12"),
  "tables/cell-unit-unknown": stop("the unit {unit} is not known here", "the number alone, or with {expected}"),
  "tables/cell-unit-kind": stop(
    "the unit {unit} measures another kind of thing",
    "the number alone, or with {expected}",
  ),
  "tables/cell-not-date": stop(
    "this is not a date that can be read in one way only",
    "year-month-day as ISO 8601 writes it, such as 2026-03-04",
  ),
  "tables/cell-not-time": stop("this is not a time of day", "ISO 8601, such as 2026-03-04T14:05 or 14:05:30"),
  "tables/cell-not-choice": stop("this word is not one of those that the column takes", "{choices}"),
  "tables/cell-out-of-bounds": stop("the number is outside what the column takes", "{bounds}"),
  "tables/cell-long": warn("the text is {length} characters long", "what can be read on a page; all of it is kept"),

  "model/key-twice": stop("the {what} stands there twice, first at line {firstLine}", "each {what} once"),
  "model/key-alike": stop(
    "the {what} differs from that of line {otherLine} by capitals or spaces only",
    "names that a person can tell apart",
  ),
  "model/tag-unknown": stop("no instrument has this tag", "a tag of the table instruments"),
  "model/standard-unknown": stop("no standard is called so", "a name of the table standards"),
  "model/calibration-unknown": stop(
    "no calibration is called so",
    "a name of the column calibration of the table calibrations",
  ),
  "model/output-unknown": stop(
    "the instrument {tag} has no switched output called so",
    "an output of the table outputs",
  ),
  "model/range-empty": stop(
    "the range ends at {upper} where it begins at {lower}: it has no span",
    "a range_upper above range_lower",
  ),
  "model/signal-flat": stop(
    "the signal is the same at both ends of the range",
    "two signals that differ, such as 4 and 20",
  ),
  "model/pair-incomplete": stop("{present} is given and {absent} is not", "both of them, or neither"),
  "model/pair-flat": stop("{first} and {second} are the same", "two values that differ"),
  "model/tolerance-two-sided-basis": stop(
    "the second tolerance has no basis",
    "percent of span, percent of reading, distance or signal",
  ),
  "model/limits-reversed": stop("{lower} is not below {upper}", "a lower and an upper limit, in this order"),
  "model/nothing-measured": stop("the reading has neither signal nor counts nor value", "at least one of the three"),
  "model/counts-unscaled": warn(
    "counts are given, and the instrument does not say which counts its range ends should give",
    "counts_lower and counts_upper in the table instruments",
  ),
  "model/value-unscaled": warn(
    "controller values are given, and the instrument does not say which values its range ends should give",
    "value_lower and value_upper in the table instruments",
  ),
  "model/nothing-judged": stop(
    "no reading {phase} can be compared with its reference: the instrument does not say what counts or values its range ends should give",
    "a signal in the readings, or counts_lower and counts_upper, or value_lower and value_upper in the table instruments",
  ),
  "model/no-readings": stop(
    "the calibration has no readings, or all of them are rejected",
    "rows in the table readings that name it",
  ),
  "model/reading-outside-range": warn(
    "the reference {reference} {unit} lies outside the range {lower} to {upper} {unit} by more than 10 % of span",
    "test points inside the range",
  ),
  "model/readings-out-of-order": warn(
    "the reference goes {actual} here, in a {direction} run of cycle {cycle}",
    "rising readings that rise and falling readings that fall, in the order in which they were taken",
  ),
  "model/point-wide": stop(
    "readings from {first} to {last} {unit} run together without a gap of 2 % of span, wider than one test point (lines {lines})",
    "the column point with the nominal position of each reading",
  ),
  "model/few-points": warn(
    "{points} test points were taken {phase}",
    "at least five, as good practice asks (common practice)",
  ),
  "model/set-point-outside-range": warn(
    "the set point {setPoint} {unit} lies outside the range {lower} to {upper} {unit}",
    "a set point inside the range",
  ),
  "model/trips-one-direction": warn(
    "the output {output} was tripped on {direction} only, {phase}",
    "trips on approach and on recede, for the differential travel",
  ),
  "model/few-approaches": warn(
    "fewer than three trips of the output {output} on approach, {phase}: {approaches}",
    "three approaches or more (common practice)",
  ),
  "model/standard-overdue": warn(
    "the standard {standard} was due on {due}; it was used on {used}",
    "a standard inside its calibration interval on the day of use",
  ),
  "model/standard-not-yet-calibrated": warn(
    "the certificate of the standard {standard} is of {calibrated}, later than its use on {used}",
    "a certificate that was valid on the day of use",
  ),
  "model/standard-without-uncertainty": warn(
    "the standard {standard} states no expanded uncertainty",
    "expanded_uncertainty with its unit and coverage factor, from the certificate",
  ),
  "model/no-standard": warn(
    "the calibration names no standard, so nothing shows its traceability",
    "the standards used, by name",
  ),
  "model/as-left-without-adjustment": warn(
    "there are readings as left, and the adjustment is none",
    "what was adjusted, or as found readings only",
  ),
  "model/adjustment-without-as-left": warn(
    "the loop was adjusted ({adjustment}) and there are no readings as left",
    "readings as left after every adjustment",
  ),
  "model/as-found-missing": warn(
    "there are readings as left and none as found",
    "readings as found, taken before anything is touched",
  ),
  "model/reviewer-is-performer": warn("{person} performed and {action} the calibration", "two different people"),
  "model/permit-missing": warn(
    "the loop is a safety function, and the calibration names no permit for its bypass",
    "the number of the permit in bypass_permit",
  ),
  "model/loop-check-open": warn(
    "{count} items of the loop check have no result; the first is {item}",
    "pass, fail or not applicable; an item without a result counts as not looked at, unless its number decides",
  ),
  "model/performed-in-future": warn(
    "the calibration is dated later than today, {today}",
    "the day on which the work was done",
  ),
  "model/dates-out-of-order": warn("{later} comes before {earlier}", "dates in the order of the work"),
  "model/due-before-calibrated": stop(
    "the due date comes before the calibration date",
    "dates in the order of the work",
  ),

  "verdict/loop-check-contradiction": warn(
    "the result of {item} is pass, and yet: {outside}",
    "a result that the numbers bear out, or what is wrong in the numbers put right",
  ),

  "options/readings-alone": stop("a lone table of readings needs {option}", "{accepted}"),
  "options/not-understood": stop("the option {option} cannot be read", "{accepted}"),
  "options/calibration-unknown": stop("no calibration of the workbook is called so", "{choices}"),
  "options/figure-unknown": stop("no figure of a record is called so", "{choices}"),
  "options/tag-unknown": stop("no calibration of the workbook belongs to this tag", "{choices}"),
  "options/loop-unknown": stop("no instrument of the workbook has this tag", "{choices}"),
  "options/calibration-of-another-tag": stop(
    "the calibration does not belong to the tag {tag}",
    "a calibration of the tag, or one of the two options alone",
  ),
  "options/not-found": stop("there is no such file or folder", "the folder of a workbook, or a lone table of readings"),
  "options/folder-not-empty": stop("the folder holds files already: {files}", "a new folder, or an empty one"),
  "options/cannot-write": stop("nothing could be written there: {why}", "a folder in which this user may write"),
} satisfies Record<string, Entry>);

export type ProblemCode = keyof typeof catalogue;
