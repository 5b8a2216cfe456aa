import { type Entry, stop, warn } from "./entry.ts";

/** What can be wrong with a table by itself: file, header, cells. */
export const tableProblems = {
  "tables/missing": stop("the table {table} is not there", "a file {table}.csv with at least the columns {columns}"),
  "tables/file-unknown": warn("no table of a workbook is called so, and it was not read{nearest}", "{tables}"),
  "tables/file-kind": warn("files of this kind are not read", "tables as .csv, or one .xlsx or .ods with sheets"),
  "tables/table-twice": stop("the table {table} stands in {first} too", "each table once"),
  "tables/spreadsheet-large": stop(
    "unpacked, the file takes more than {megabytes} MB",
    "a smaller spreadsheet, its calibrations in several files; or tables as .csv",
  ),
  "tables/spreadsheet": stop(
    "the file cannot be read as a spreadsheet",
    "an .xlsx or .ods file as a spreadsheet saves it, without a password",
  ),
  "tables/spreadsheet-password": stop(
    "the spreadsheet is protected by a password",
    "the file saved without a password",
  ),
  "tables/spreadsheet-entity": stop(
    "the part {part} of the file declares a document type, which a spreadsheet never does",
    "an .xlsx or .ods file as a spreadsheet saves it",
  ),
  "tables/spreadsheet-extent": stop(
    "the cells of a sheet lie too far apart: it reaches to {corner}, and the empty cells between count too",
    "a table at the top left of its sheet, rows times columns up to {most}",
  ),
  "tables/formula-uncalculated": stop(
    "the cell holds a formula without its result",
    "a value, or a file that a spreadsheet has calculated and saved",
  ),
  "tables/cell-error": stop(
    "the cell shows an error in the place of a result",
    "a value, or a formula that has a result",
  ),
  "tables/cell-shown-otherwise": stop(
    "the cell shows another number than it holds: {shown}",
    "a cell that shows its number as it is, with its decimals and without a scale",
  ),
  "tables/cell-merged": stop(
    "the cells {range} are merged, and only the first of them holds what all of them show",
    "cells that are not merged, each with what it says",
  ),
  "tables/hidden-sheet": warn("the sheet is hidden; it was read like the others", "a sheet that shows, or none"),
  "tables/hidden-column": warn("the column is hidden; it was read like the others", "a column that shows, or none"),
  "tables/hidden-row": warn("rows are hidden, and were read like the others: {rows}", "rows that show, or none"),
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
  "tables/column-unknown": warn(
    "no column of this table is called so; what stands under it is kept as it is written, and not used{nearest}",
    "{columns}",
  ),
  "tables/column-slip": stop(
    "no column of this table is called so, but {nearest} nearly is, and something stands under it",
    "{nearest}, or a name that comes near no column",
  ),
  "tables/column-unnamed": stop(
    "a value stands in a column that has no name",
    "a name for it in the first row, or an empty cell",
  ),
  "tables/row-long": stop(
    "the row has {cells} cells, the first row names {columns} columns{glued}",
    "one cell a column",
  ),
  "tables/row-short": stop(
    "the row has {cells} cells, the first row names {columns} columns{glued}",
    "one cell a column, those at the end too, though they be empty",
  ),
  "tables/decimal-mark-mixed": stop(
    "the file uses a decimal comma here and a decimal point at {other} ({otherText})",
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
  "tables/cell-no-day": stop("there is no such day: {why}", "a day of the calendar, such as 2026-03-04"),
  "tables/cell-date-form": stop("this is the day {day}, written in another way", "{day}"),
  "tables/cell-not-time": stop("this is not a time of day", "ISO 8601, such as 2026-03-04T14:05 or 14:05:30"),
  "tables/cell-not-choice": stop("this word is not one of those that the column takes", "{choices}"),
  "tables/tolerance-words": stop("{what}", "{forms}"),
  "tables/tolerance-contradicted": stop(
    "the tolerance in words says {says} for this column",
    "the same, or nothing here",
  ),
  "tables/word-old": warn("an earlier version called it so; it was read as {renamed}", "{renamed}"),
  "tables/cell-out-of-bounds": stop("the number is outside what the column takes", "{bounds}"),
  "tables/cell-long": warn("the text is {length} characters long", "what can be read on a page; all of it is kept"),
} satisfies Record<string, Entry>;
