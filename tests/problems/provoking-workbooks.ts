import type { ProblemCode } from "../../src/problems/catalogue.ts";
import { smallestWorkbook, type Texts, withColumn, withFile, withText } from "../workbook/smallest-workbook.ts";
import { spreadsheet } from "../workbook/spreadsheet.ts";
import { zipOf, zipOfParts } from "../workbook/zip-of.ts";

/** A code that reading and checking a workbook can give. */
export type WorkbookCode = Extract<ProblemCode, `tables/${string}` | `model/${string}`>;

/** The smallest workbook that gives it, and the sentence that the user is told. */
export type Provocation = { texts: Texts; told: string };

const without = (file: string): Texts =>
  Object.fromEntries(Object.entries(smallestWorkbook).filter(([name]) => name !== file));

const asLeft = smallestWorkbook["readings.csv"].replaceAll("as_found", "as_left");
const bothPhases = smallestWorkbook["readings.csv"] + asLeft.slice(asLeft.indexOf("\n") + 1);

/** A table of the smallest workbook as the sheet of a spreadsheet, with single cells and what else there is to it. */
function sheetOf(
  table: "readings" | "calibrations",
  cells: Parameters<typeof spreadsheet>[2] = {},
  more: Parameters<typeof spreadsheet>[3] = {},
) {
  return spreadsheet(table, smallestWorkbook[`${table}.csv`], cells, more);
}

/** Trips as found of an output Q1 that is set to 50 mm. */
const withTrips = (...trips: readonly string[]): Texts => ({
  ...withFile("outputs.csv", "tag,output,set_point,set_point_tolerance\nLT-1,Q1,50,1\n"),
  "trips.csv": `calibration,phase,output,direction,reference\n${trips.map((trip) => `C-1,as_found,Q1,${trip}\n`).join("")}`,
});

/** The same with a stated function and the state after each trip. */
const withStates = (stated: string, ...trips: readonly string[]): Texts => ({
  ...withFile("outputs.csv", `tag,output,set_point,set_point_tolerance,function\nLT-1,Q1,50,1,${stated}\n`),
  "trips.csv": `calibration,phase,output,direction,reference,state\n${trips.map((trip) => `C-1,as_found,Q1,${trip}\n`).join("")}`,
});

const backAgain = smallestWorkbook["readings.csv"].replace(
  "rising,100,20.01\n",
  "rising,100,20.01\nC-1,as_found,falling,100,20.02\nC-1,as_found,falling,75,16.02\n",
);

/** A loop with these pins on a connector of four, and one switched output on that wire and pin. */
function wired(pins: string, wireAndPin: string): Texts {
  const texts = withColumn("instruments.csv", "connector,pins", `"M12, 4 pins",${pins}`);
  return { ...texts, "outputs.csv": `tag,output,set_point,wire,pin\nLT-1,Q1,50,${wireAndPin}\n` };
}

/** One for every code: the type asks for it. */
export const provokingWorkbooks: Readonly<Record<WorkbookCode, Provocation>> = {
  "tables/missing": {
    texts: without("readings.csv"),
    told: "readings.csv: the table readings is not there; accepted: a file readings.csv with at least the columns calibration, phase, direction, reference",
  },
  "tables/file-unknown": {
    texts: withFile("reading.csv", "calibration\n"),
    told: "reading.csv: no table of a workbook is called so, and it was not read; did you mean readings?; accepted: instruments, outputs, standards, calibrations, readings, trips, loop_checks, controller_limits, candidates",
  },
  "tables/file-kind": {
    texts: withFile("trips.xls", "PK"),
    told: "trips.xls: files of this kind are not read; accepted: tables as .csv, or one .xlsx or .ods with sheets",
  },
  "tables/table-twice": {
    texts: withFile("old/Readings.CSV", smallestWorkbook["readings.csv"]),
    told: "old/Readings.CSV: the table readings stands in readings.csv too; accepted: each table once",
  },
  "tables/spreadsheet": {
    texts: withFile("book.xlsx", "not a spreadsheet"),
    told: "book.xlsx: the file cannot be read as a spreadsheet; accepted: an .xlsx or .ods file as a spreadsheet saves it, without a password",
  },
  "tables/spreadsheet-large": {
    texts: withFile("book.xlsx", zipOf("xl/workbook.xml", new Uint8Array(), 2 ** 31)),
    told: "book.xlsx: unpacked, the file takes more than 64 MB; accepted: a smaller spreadsheet, its calibrations in several files; or tables as .csv",
  },
  "tables/spreadsheet-password": {
    texts: withFile("book.ods", zipOfParts({ "META-INF/manifest.xml": "<m><manifest:encryption-data/></m>" })),
    told: "book.ods: the spreadsheet is protected by a password; accepted: the file saved without a password",
  },
  "tables/spreadsheet-entity": {
    texts: withFile(
      "book.xlsx",
      zipOfParts({ "xl/workbook.xml": '<!DOCTYPE x [<!ENTITY a SYSTEM "file:///etc/hosts">]>' }),
    ),
    told: "book.xlsx: the part xl/workbook.xml of the file declares a document type, which a spreadsheet never does; accepted: an .xlsx or .ods file as a spreadsheet saves it",
  },
  "tables/spreadsheet-extent": {
    texts: withFile("book.xlsx", zipOfParts({ "xl/worksheets/sheet1.xml": '<c r="A1"/><c r="XFD1048576"/>' })),
    told: "book.xlsx: the cells of a sheet lie too far apart: it reaches to XFD1048576, and the empty cells between count too; accepted: a table at the top left of its sheet, rows times columns up to 3000000",
  },
  "tables/cell-error": {
    texts: {
      ...without("calibrations.csv"),
      "book.xlsx": await sheetOf("calibrations", { "1,3": { value: "#REF!" } }),
    },
    told: 'book.xlsx, sheet calibrations, cell D2 (performed_by): the cell shows an error in the place of a result; read "#REF!"; accepted: a value, or a formula that has a result',
  },
  "tables/cell-shown-otherwise": {
    texts: {
      ...without("readings.csv"),
      "book.xlsx": await sheetOf("readings", { "1,4": { value: 4.01, style: { numFmt: "0.0," } } }),
    },
    told: 'book.xlsx, sheet readings, cell E2 (signal): the cell shows another number than it holds: in thousands or millions; read "4.01"; accepted: a cell that shows its number as it is, with its decimals and without a scale',
  },
  "tables/cell-merged": {
    texts: {
      ...without("readings.csv"),
      "book.xlsx": await sheetOf("readings", {}, { merges: [{ startRow: 1, startCol: 1, endRow: 5, endCol: 1 }] }),
    },
    told: 'book.xlsx, sheet readings, cell B2 (phase): the cells B2:B6 are merged, and only the first of them holds what all of them show; read "as_found"; accepted: cells that are not merged, each with what it says',
  },
  "tables/hidden-sheet": {
    texts: { ...without("readings.csv"), "book.xlsx": await sheetOf("readings", {}, { hidden: true }) },
    told: "book.xlsx, sheet readings: the sheet is hidden; it was read like the others; accepted: a sheet that shows, or none",
  },
  "tables/hidden-column": {
    texts: {
      ...without("readings.csv"),
      "book.xlsx": await sheetOf("readings", {}, { columns: [{}, {}, {}, {}, { hidden: true }] }),
    },
    told: "book.xlsx, sheet readings, cell E1 (signal): the column is hidden; it was read like the others; accepted: a column that shows, or none",
  },
  "tables/hidden-row": {
    texts: {
      ...without("readings.csv"),
      "book.xlsx": await sheetOf("readings", {}, { rowDefs: new Map([[2, { hidden: true }]]) }),
    },
    told: "book.xlsx, sheet readings, row 3: rows are hidden, and were read like the others: 3; accepted: rows that show, or none",
  },
  "tables/formula-uncalculated": {
    texts: {
      ...without("readings.csv"),
      "book.xlsx": await spreadsheet("readings", smallestWorkbook["readings.csv"], {
        "1,4": { formula: "A1+B1" },
      }),
    },
    told: 'book.xlsx, sheet readings, cell E2 (signal): the cell holds a formula without its result; read "=A1+B1"; accepted: a value, or a file that a spreadsheet has calculated and saved',
  },
  "tables/empty": {
    texts: withFile("readings.csv", "calibration,phase,direction,reference,signal\n"),
    told: "readings.csv: the table has no rows; accepted: a first row that names the columns and at least one row below it",
  },
  "tables/encoding": {
    texts: withFile("readings.csv", new Uint8Array([0x61, 0x81, 0x2c])),
    told: "readings.csv: the bytes are no text that a spreadsheet saves; accepted: UTF-8 with or without byte order mark, UTF-16 with byte order mark, or Windows-1252",
  },
  "tables/quote": {
    texts: withText("readings.csv", "C-1,as_found,rising,100", '"C-1,as_found,rising,100'),
    told: 'readings.csv:6: a quotation mark opens and does not close as it should; accepted: text in "…", a quotation mark inside it doubled',
  },
  "tables/control-character": {
    texts: withColumn("readings.csv", "remark", "bell\u0007"),
    told: 'readings.csv:2:remark: the cell holds characters that do not show; each was replaced by a visible sign; read "bell␇"; accepted: text without control characters',
  },
  "tables/column-missing": {
    texts: withText("readings.csv", "reference", "distance"),
    told: "readings.csv:1: the column reference is not there; accepted: a first row with the columns calibration, phase, direction, reference",
  },
  "tables/column-twice": {
    texts: withColumn("readings.csv", "Signal", "4.01"),
    told: "readings.csv:1:Signal: the column stands there twice, first as column number 5; accepted: each column once",
  },
  "tables/column-unknown": {
    texts: withColumn("instruments.csv", "falt lo", "3.6"),
    told: "instruments.csv:1:falt lo: no column of this table is called so; what stands under it is kept as it is written, and not used; did you mean fault_low?; accepted: a column that the README of spanwright new explains",
  },
  "tables/column-slip": {
    texts: withText("readings.csv", "signal", "singal"),
    told: "readings.csv:1:singal: no column of this table is called so, but signal nearly is, and something stands under it; accepted: signal, or a name that comes near no column",
  },
  "tables/column-unnamed": {
    texts: withColumn("readings.csv", "", "", "note"),
    told: 'readings.csv:3: a value stands in a column that has no name; read "note"; accepted: a name for it in the first row, or an empty cell',
  },
  "tables/row-long": {
    texts: withText("readings.csv", "25,8.01", "25,8.01,9"),
    told: 'readings.csv:3: the row has 6 cells, the first row names 5 columns; read "9"; accepted: one cell a column',
  },
  "tables/row-short": {
    texts: withText("readings.csv", "25,8.01", "25"),
    told: "readings.csv:3: the row has 4 cells, the first row names 5 columns; accepted: one cell a column, those at the end too, though they be empty",
  },
  "tables/decimal-mark-mixed": {
    texts: withText("readings.csv", "25,8.01", '25,"8,01"'),
    told: 'readings.csv:3:signal: the file uses a decimal comma here and a decimal point at line 2, column signal (4.01); read "8,01"; accepted: one decimal mark in a whole file',
  },
  "tables/decimal-mark-ambiguous": {
    texts: withFile(
      "readings.csv",
      'calibration,phase,direction,reference,counts\nC-1,as_found,rising,0,"1,234"\nC-1,as_found,rising,25,"6,234"\n',
    ),
    told: 'readings.csv:2:counts: the comma could be a decimal comma or a thousands mark, and nothing else in the file tells which; read "1,234"; accepted: a decimal point without thousands marks, or semicolons between the columns where the comma is the decimal mark',
  },
  "tables/cell-missing": {
    texts: withText("readings.csv", "rising,25", "rising,"),
    told: "readings.csv:3:reference: nothing is written here; accepted: a number: reference distance",
  },
  "tables/cell-not-number": {
    texts: withText("readings.csv", "8.01", "8.O1"),
    told: 'readings.csv:3:signal: this is not a number; read "8.O1"; accepted: a number such as 12.02',
  },
  "tables/cell-not-whole": {
    texts: withColumn("readings.csv", "cycle", "1", "1.5"),
    told: 'readings.csv:3:cycle: this is not a whole number; read "1.5"; accepted: a whole number such as 1 or 12',
  },
  "tables/cell-unit-unknown": {
    texts: withText("readings.csv", "8.01", "8.01 amps"),
    told: 'readings.csv:3:signal: the unit amps is not known here; read "8.01 amps"; accepted: the number alone, or with mA',
  },
  "tables/cell-unit-kind": {
    texts: withText("readings.csv", "8.01", "8.01 V"),
    told: 'readings.csv:3:signal: the unit V measures another kind of thing; read "8.01 V"; accepted: the number alone, or with mA',
  },
  "tables/cell-not-date": {
    texts: withText("calibrations.csv", "2026-03-04", "03/04/2026"),
    told: 'calibrations.csv:2:performed_on: this is not a date that can be read in one way only; read "03/04/2026"; accepted: year-month-day as ISO 8601 writes it, such as 2026-03-04',
  },
  "tables/cell-no-day": {
    texts: withText("calibrations.csv", "2026-03-04", "30 February 2026"),
    told: 'calibrations.csv:2:performed_on: there is no such day: February 2026 has 28 days; read "30 February 2026"; accepted: a day of the calendar, such as 2026-03-04',
  },
  "tables/cell-date-form": {
    texts: withText("calibrations.csv", "2026-03-04", "2026-3-4"),
    told: 'calibrations.csv:2:performed_on: this is the day 2026-03-04, written in another way; read "2026-3-4"; accepted: 2026-03-04',
  },
  "tables/cell-not-time": {
    texts: withColumn("readings.csv", "time", "2:05 pm"),
    told: 'readings.csv:2:time: this is not a time of day; read "2:05 pm"; accepted: ISO 8601, such as 2026-03-04T14:05 or 14:05:30',
  },
  "tables/cell-not-choice": {
    texts: withText("instruments.csv", "mm", "km"),
    told: 'instruments.csv:2:distance_unit: this word is not one of those that the column takes; read "km"; accepted: mm, cm, m, in, ft',
  },
  "tables/tolerance-words": {
    texts: withText("instruments.csv", "0.5,percent of span", "0.5 % of reading or 5 mm,"),
    told: 'instruments.csv:2:tolerance: the tolerance cannot be understood, or in two ways; read "0.5 % of reading or 5 mm"; accepted: ±0.5 % of span, 0.1 % of reading, ±2 mm, 0.05 mA, +3/−5 mm, 0.5 % of reading + 5 mm, or 0.5 % of reading or 5 mm, whichever is greater',
  },
  "tables/tolerance-contradicted": {
    texts: withText("instruments.csv", "0.5,percent of span", "±0.5 % of reading,percent of span"),
    told: 'instruments.csv:2:tolerance_basis: the tolerance in words says percent of reading for this column; read "percent of span"; accepted: the same, or nothing here',
  },
  "tables/word-old": {
    texts: withColumn("instruments.csv", "decision_rule", "four words"),
    told: 'instruments.csv:2:decision_rule: an earlier version called it so; it was read as non-binary guard band; read "four words"; accepted: non-binary guard band',
  },
  "tables/cell-out-of-bounds": {
    texts: withText("instruments.csv", "mA,0.5", "mA,0"),
    told: 'instruments.csv:2:tolerance: the number is outside what the column takes; read "0"; accepted: above 0',
  },
  "tables/cell-long": {
    texts: withColumn("readings.csv", "remark", "x".repeat(10_000)),
    told: 'readings.csv:2:remark: the text is 10000 characters long; read "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…"; accepted: what can be read on a page; all of it is kept',
  },
  "model/key-twice": {
    texts: withFile("calibrations.csv", `${smallestWorkbook["calibrations.csv"]}C-1,LT-1,2026-03-05,T. Example,GB-1\n`),
    told: 'calibrations.csv:3:calibration: the calibration stands there twice, first at line 2; read "C-1"; accepted: each calibration once',
  },
  "model/key-alike": {
    texts: withFile(
      "instruments.csv",
      `${smallestWorkbook["instruments.csv"]}lt -1,0,100,mm,4,20,mA,0.5,percent of span\n`,
    ),
    told: 'instruments.csv:2:tag: the tag looks like that of line 3: they differ by capitals, spaces or characters that look the same; read "LT-1"; accepted: names that a person can tell apart',
  },
  "model/tag-unknown": {
    texts: withText("calibrations.csv", "LT-1", "LT-2"),
    told: 'calibrations.csv:2:tag: no instrument has this tag; read "LT-2"; accepted: a tag of the table instruments',
  },
  "model/standard-unknown": {
    texts: withText("calibrations.csv", "GB-1", "GB-1; DMM-3"),
    told: 'calibrations.csv:2:standards: no standard is called so; read "DMM-3"; accepted: a name of the table standards; several have a comma, a semicolon or + between them',
  },
  "model/calibration-unknown": {
    texts: withText("readings.csv", "C-1,as_found,rising,25", "C-l,as_found,rising,25"),
    told: 'readings.csv:3:calibration: no calibration is called so; read "C-l"; accepted: a name of the column calibration of the table calibrations',
  },
  "model/output-unknown": {
    texts: withFile("trips.csv", "calibration,phase,output,direction,reference\nC-1,as_found,Q1,approach,50\n"),
    told: 'trips.csv:2:output: the instrument LT-1 has no switched output called so; read "Q1"; accepted: an output of the table outputs',
  },
  "model/range-empty": {
    texts: withText("instruments.csv", "LT-1,0,100", "LT-1,100,100"),
    told: 'instruments.csv:2:range_upper: the range ends at 100 where it begins at 100: it has no span; read "100"; accepted: a range_upper above range_lower',
  },
  "model/range-reversed": {
    texts: withText("instruments.csv", "LT-1,0,100", "LT-1,100,0"),
    told: 'instruments.csv:2:range_upper: the range ends at 0, nearer than it begins, at 100; read "0"; accepted: the nearer end in range_lower; a signal that falls with the distance is stated by its ends, such as 20 at range_lower and 4 at range_upper',
  },
  "model/signal-flat": {
    texts: withText("instruments.csv", "4,20", "4,4"),
    told: 'instruments.csv:2:signal_upper: the signal is the same at both ends of the range; read "4"; accepted: two signals that differ, such as 4 and 20',
  },
  "model/pair-incomplete": {
    texts: withColumn("instruments.csv", "counts_lower", "0"),
    told: 'instruments.csv:2:counts_lower: counts_lower is given and counts_upper is not; read "0"; accepted: both of them, or neither',
  },
  "model/pair-flat": {
    texts: withColumn("instruments.csv", "value_lower,value_upper", "0,0"),
    told: 'instruments.csv:2:value_upper: value_lower and value_upper are the same; read "0"; accepted: two values that differ',
  },
  "model/tolerance-two-sided-basis": {
    texts: withColumn("instruments.csv", "second_tolerance", "0.1"),
    told: 'instruments.csv:2:second_tolerance: the second tolerance has no basis; read "0.1"; accepted: percent of span, percent of reading, distance or signal',
  },
  "model/limits-reversed": {
    texts: withColumn("instruments.csv", "air_min,air_max", "40,-10"),
    told: 'instruments.csv:2:air_max: air_min is not below air_max; read "-10"; accepted: a lower and an upper limit, in this order',
  },
  "model/nothing-measured": {
    texts: withText("readings.csv", "25,8.01", "25,"),
    told: "readings.csv:3: the reading has neither signal nor counts nor value; accepted: at least one of the three",
  },
  "model/counts-unscaled": {
    texts: withColumn("readings.csv", "counts", "5530"),
    told: 'readings.csv:2:counts: counts are given, and the instrument does not say which counts its range ends should give; read "5530"; accepted: counts_lower and counts_upper in the table instruments',
  },
  "model/value-unscaled": {
    texts: withColumn("readings.csv", "value", "0.1"),
    told: 'readings.csv:2:value: controller values are given, and the instrument does not say which values its range ends should give; read "0.1"; accepted: value_lower and value_upper in the table instruments',
  },
  "model/nothing-judged": {
    texts: {
      ...smallestWorkbook,
      "readings.csv": smallestWorkbook["readings.csv"].replace(",signal", ",counts").replace(/,[\d.]+$/gmu, ",100"),
    },
    told: "readings.csv:2: no reading as found can be compared with its reference: the instrument does not say what counts or values its range ends should give; accepted: a signal in the readings, or counts_lower and counts_upper, or value_lower and value_upper in the table instruments",
  },
  "model/no-readings": {
    texts: withColumn("readings.csv", "rejected", "a", "b", "c", "d", "e"),
    told: "calibrations.csv:2: the calibration has no readings, or all of them are rejected; accepted: rows in the table readings that name it",
  },
  "model/too-many-readings": {
    texts: {
      ...smallestWorkbook,
      "readings.csv": smallestWorkbook["readings.csv"].replace(
        /^(.*\n)((?:.*\n)+)$/u,
        (_, header, rows) => header + rows.repeat(1001),
      ),
    },
    told: 'readings.csv:5002:calibration: the calibration has 5005 readings, and a record holds no more than 5000; read "C-1"; accepted: up to 5000 readings of one calibration, such as every tenth of a long run',
  },
  "model/reading-outside-range": {
    texts: withText("readings.csv", "100,20.01", "110.5,20.01"),
    told: 'readings.csv:6:reference: the reference 110.5 mm lies outside the range 0 to 100 mm by more than 10 % of span; read "110.5"; accepted: test points inside the range',
  },
  "model/signal-outside-range": {
    texts: withText("readings.csv", "25,8.01", "25,80.1"),
    told: 'readings.csv:3:signal: the signal 80.1 mA lies outside 4 to 20 mA by more than 10 % of that span; read "80.1"; accepted: the signal as it was read; where it was mistyped, the row with its reason in the column rejected',
  },
  "model/readings-out-of-order": {
    texts: withText("readings.csv", "25,8.01", "60,8.01"),
    told: 'readings.csv:4:reference: the reference goes down here, in a rising run of cycle 1; read "50"; accepted: rising readings that rise and falling readings that fall, in the order in which they were taken',
  },
  "model/direction-contradicted": {
    texts: withText("readings.csv", "rising,25", "falling,25"),
    told: 'readings.csv:3:direction: the reference goes up to this reading and from it, and the direction says falling; read "falling"; accepted: rising would fit',
  },
  "model/phase-contradicted": {
    texts: {
      ...withColumn("calibrations.csv", "adjustment", "re-teach"),
      "readings.csv": backAgain.replace("found,rising,50", "left,rising,50"),
    },
    told: 'readings.csv:4:phase: the reading stands among those as found, and the phase says as left; read "as_left"; accepted: as found would fit, or the rows in the order of the work',
  },
  "model/times-backwards": {
    texts: withColumn("readings.csv", "time", "10:00", "10:05", "10:04", "10:06", "10:07"),
    told: 'readings.csv:4:time: as found, the times run backwards: the reading above was taken at 10:05; no drift in time is looked for by such times; read "10:04"; accepted: the readings in the order in which they were taken, each with its time',
  },
  "model/time-of-another-day": {
    texts: withColumn("readings.csv", "time", "2026-03-04T10:00", "2026-03-14T10:05"),
    told: 'readings.csv:3:time: the reading is of another day than the calibration, performed on 2026-03-04; read "2026-03-14T10:05"; accepted: the day on which it was read, or the day of the work',
  },
  "model/read-twice": {
    texts: withColumn("readings.csv", "cycle,point", "1,0", "1,25", "1,25", "1,75", "1,100"),
    told: 'readings.csv:4:point: the point 25 was read before in cycle 1, rising, as found, at line 3; read "25"; accepted: each point once a run, or the number of the cycle that it belongs to',
  },
  "model/set-point-unlimited": {
    texts: {
      ...withTrips("approach,50", "recede,52", "approach,50", "approach,50"),
      "outputs.csv": "tag,output,set_point\nLT-1,Q1,50\n",
    },
    told: "outputs.csv:2: the output Q1 has no set_point_tolerance: how far it trips off its set point is reported and cannot be decided; accepted: the greatest error that is allowed of the set point",
  },
  "model/limit-outside-range": {
    texts: withFile("controller_limits.csv", "tag,limit,value,acts\nLT-1,high alarm,950,above\n"),
    told: 'controller_limits.csv:2:value: the limit 950 mm lies far outside what the controller shows over the range, 0 to 100 mm: the loop never comes there; read "950"; accepted: a limit that the value can reach',
  },
  "model/trip-outside-range": {
    texts: withTrips("approach,50", "recede,52", "approach,50", "approach,-50"),
    told: 'trips.csv:5:reference: the trip at −50 mm lies outside the range 0 to 100 mm; read "-50"; accepted: a trip inside the range',
  },
  "model/trips-exchanged": {
    texts: withTrips("recede,50", "approach,52"),
    told: 'trips.csv:2:direction: the output Q1 recedes at 50 mm, nearer than it approaches at 52 mm (line 3); read "recede"; accepted: a release farther away than the operation: approach and recede may be exchanged',
  },
  "model/point-wide": {
    texts: withText("readings.csv", "25,8.01", "1.5,8.01\nC-1,as_found,rising,3,9"),
    told: 'readings.csv:2:reference: readings from 0 to 3 mm run together without a gap of 2 % of span, wider than one test point (lines 2, 3, 4); read "0"; accepted: the column point with the nominal position of each reading',
  },
  "model/few-points": {
    texts: withText("readings.csv", "C-1,as_found,rising,25,8.01\n", ""),
    told: "readings.csv:2: few test points as found: 4; accepted: at least five, as good practice asks (common practice)",
  },
  "model/set-point-outside-range": {
    texts: withFile("outputs.csv", "tag,output,set_point\nLT-1,Q1,101\n"),
    told: 'outputs.csv:2:set_point: the set point 101 mm lies outside the range 0 to 100 mm; read "101"; accepted: a set point inside the range',
  },
  "model/trips-one-direction": {
    texts: withTrips("approach,50", "approach,50", "approach,51"),
    told: 'trips.csv:2:direction: the output Q1 was tripped on approach only, as found; read "approach"; accepted: trips on approach and on recede, for the differential travel',
  },
  "model/few-approaches": {
    texts: withTrips("approach,50", "recede,52", "approach,50"),
    told: "trips.csv:2: fewer than three trips of the output Q1 on approach, as found: 2; accepted: three approaches or more (common practice)",
  },
  "model/standard-overdue": {
    texts: withText("standards.csv", "2027-06-01", "2026-03-03"),
    told: 'calibrations.csv:2:standards: the standard GB-1 was due on 2026-03-03; it was used on 2026-03-04; read "GB-1"; accepted: a standard inside its calibration interval on the day of use',
  },
  "model/standard-not-yet-calibrated": {
    texts: withText("standards.csv", "2025-06-01", "2026-03-05"),
    told: 'calibrations.csv:2:standards: the certificate of the standard GB-1 is of 2026-03-05, later than its use on 2026-03-04; read "GB-1"; accepted: a certificate that was valid on the day of use',
  },
  "model/standard-without-uncertainty": {
    texts: withText("standards.csv", "0.02,mm", ","),
    told: "standards.csv:2: the standard GB-1 states no expanded uncertainty; accepted: expanded_uncertainty with its unit and coverage factor, from the certificate",
  },
  "model/standard-unit": {
    texts: withColumn("standards.csv", "quantity", "voltage"),
    told: 'standards.csv:2:uncertainty_unit: the standard GB-1 measures voltage, and its uncertainty is in mm; read "mm"; accepted: the quantity that it measures, or its uncertainty in V, mV',
  },
  "model/no-standard": {
    texts: withText("calibrations.csv", "GB-1", ""),
    told: "calibrations.csv:2: the calibration names no standard, so nothing shows its traceability; accepted: the standards used, by name",
  },
  "model/as-left-without-adjustment": {
    texts: { ...withColumn("calibrations.csv", "adjustment", "none"), "readings.csv": bothPhases },
    told: 'calibrations.csv:2:adjustment: there are readings as left, and the adjustment is none; read "none"; accepted: what was adjusted, or as found readings only',
  },
  "model/adjustment-without-as-left": {
    texts: withColumn("calibrations.csv", "adjustment", "Re teach"),
    told: 'calibrations.csv:2:adjustment: the loop was adjusted (re-teach) and there are no readings as left; read "Re teach"; accepted: readings as left after every adjustment',
  },
  "model/as-found-missing": {
    texts: withFile("readings.csv", asLeft),
    told: "calibrations.csv:2: there are readings as left and none as found; accepted: readings as found, taken before anything is touched",
  },
  "model/reviewer-is-performer": {
    texts: withColumn("calibrations.csv", "reviewed_by", "t example"),
    told: 'calibrations.csv:2:reviewed_by: T. Example performed and reviewed the calibration; read "t example"; accepted: two different people',
  },
  "model/pin-contradicted": {
    texts: wired("1 L+; 2 Q1; 3 0 V; 4 signal", "black,3"),
    told: 'outputs.csv:2:pin: the column pins of the instrument has Q1 on pin 2; read "3"; accepted: one pin for each of them, the same in both tables',
  },
  "model/output-contradicted": {
    texts: {
      ...smallestWorkbook,
      "outputs.csv": "tag,output,set_point,polarity\nLT-1,Q1,50,PNP\n",
      "loop_checks.csv": 'calibration,item,result,measured\nC-1,sink or source of Q1,pass,"NPN, sourcing"\n',
    },
    told: 'loop_checks.csv:2:measured: the table outputs has PNP for Q1; read "NPN, sourcing"; accepted: one and the same in both tables; the direction of the current decides, labels differ from maker to maker',
  },
  "model/states-contradicted": {
    texts: withStates("NO", "approach,50,on", "recede,52,off", "approach,50,on", "approach,50,off"),
    told: 'trips.csv:5:state: the output Q1 went off on approach here, and by 3 other trips of the phase it is NO; read "off"; accepted: the state after each trip as it was seen; an output that does not do the same each time has a fault',
  },
  "model/function-contradicted": {
    texts: withStates("NC", "approach,50,on", "recede,52,off", "approach,50,on", "approach,50,on"),
    told: 'trips.csv:2:state: by the states after its trips the output Q1 is NO, and the table outputs has NC; read "on"; accepted: one and the same in both tables',
  },
  "model/pin-not-there": {
    texts: wired("1 L+; 3 0 V; 4 signal", "black,5"),
    told: 'outputs.csv:2:pin: the connector M12, 4 pins has no pin 5; read "5"; accepted: a pin of the connector, or its right name',
  },
  "model/pin-uncommon": {
    texts: wired("1 L+; 2 0 V; 4 signal", ","),
    told: 'instruments.csv:2:pins: 0 V is on pin 2; by the common assignment (IEC 60947-5-2) it is on pin 3; read "1 L+; 2 0 V; 4 signal"; accepted: the pins as they are wired; where they are so, whoever plugs in another sensor has to know',
  },
  "model/wire-uncommon": {
    texts: wired("1 L+; 2 signal; 3 0 V; 4 Q1", "Blue,4"),
    told: 'outputs.csv:2:wire: by the common colours (IEC 60947-5-2) this wire carries 0 V, and no output; read "Blue"; accepted: the wire as it is; black, white or a number for an output',
  },
  "model/air-unlikely": {
    texts: withColumn("calibrations.csv", "air_temperature", "86"),
    told: 'calibrations.csv:2:air_temperature: air of 86 °C is rare around a sensor; in °F it would be 30 °C; read "86"; accepted: the temperature of the air in °C, mostly from -60 to 70 °C, or with its unit behind it',
  },
  "model/echo-missed": {
    texts: {
      ...withColumn("calibrations.csv", "target_tilt", "20"),
      "instruments.csv": withColumn("instruments.csv", "principle,beam_angle", "ultrasonic,8")["instruments.csv"] ?? "",
    },
    told: 'calibrations.csv:2:target_tilt: a flat target tilted by 20° throws its echo beside the sensor: its beam of 8° has an edge 4° from the axis; read "20"; accepted: a target that stands square to the axis, or the tilt and the beam_angle as they are',
  },
  "model/permit-missing": {
    texts: withColumn("instruments.csv", "criticality", "safety"),
    told: "calibrations.csv:2: the loop is a safety function, and the calibration names no permit for its bypass; accepted: the number of the permit in bypass_permit",
  },
  "model/loop-check-open": {
    texts: withFile("loop_checks.csv", "calibration,item,result\nC-1,shield,pass\nC-1,burden,\nC-1,restored,\n"),
    told: "loop_checks.csv:3:result: 2 items of the loop check have no result; the first is burden; accepted: pass, fail or not applicable; an item without a result counts as not looked at, unless its number decides",
  },
  "model/performed-in-future": {
    texts: withText("calibrations.csv", "2026-03-04", "2026-11-26"),
    told: 'calibrations.csv:2:performed_on: the calibration is dated later than today, 2026-11-25; read "2026-11-26"; accepted: the day on which the work was done',
  },
  "model/dates-out-of-order": {
    texts: withColumn("calibrations.csv", "reviewed_on", "2026-03-03"),
    told: 'calibrations.csv:2:reviewed_on: reviewed_on comes before performed_on; read "2026-03-03"; accepted: dates in the order of the work',
  },
  "model/due-before-calibrated": {
    texts: withText("standards.csv", "2027-06-01", "2025-05-31"),
    told: 'standards.csv:2:due_on: the due date comes before the calibration date; read "2025-05-31"; accepted: dates in the order of the work',
  },
};
