import { describe, expect, test } from "vitest";
import { assembleRecord } from "../../../src/assembly/assemble-record.ts";
import { rebuildRecord } from "../../../src/jobs/records/rebuild-record.ts";
import { rebuildRows } from "../../../src/jobs/records/rebuild-rows.ts";
import { catalogue, type ProblemCode } from "../../../src/problems/catalogue.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { amendmentSchema } from "../../../src/record/amendment-schema.ts";
import type { Doubt } from "../../../src/record/doubt.ts";
import type { SealedRecord } from "../../../src/record/record-schema.ts";
import { recordSummary } from "../../../src/record/record-summary.ts";
import { recordSummarySchema } from "../../../src/record/record-summary-schema.ts";
import { howMany } from "../../how-many.ts";
import { provokingWorkbooks, type WorkbookCode } from "../../problems/provoking-workbooks.ts";
import { smallestWorkbook, withColumn, withText } from "../../workbook/smallest-workbook.ts";
import { spreadsheetOfRows } from "../../workbook/spreadsheet.ts";
import { inFolder } from "../memory-disk.ts";
import { demoTexts, recordFrom, recordsFrom, reportedDemo, softwareVersion } from "../reported-records.ts";

/** Equal as data, and in the order of their keys, to the last digit; after a way through the JSON of the file. */
function expectSame(record: SealedRecord): void {
  const rebuilt = rebuildRecord(JSON.parse(JSON.stringify(record)));
  if ("doubts" in rebuilt) throw new Error(rebuilt.doubts.map(({ says }) => says).join("; "));
  expect(rebuilt.record).toEqual(record);
  expect(JSON.stringify(rebuilt.record)).toBe(JSON.stringify(record));
}

describe("a record is made again from itself, to the last digit and in the same order", () => {
  test("each record of the demonstration, whose tables have commas and points, in four encodings", async () => {
    const records = await reportedDemo();
    expect(records.length).toBeGreaterThanOrEqual(13);
    for (const record of records) expectSame(record);
  });

  const decisions = [
    { rule: "guard band" },
    { rule: "non-binary guard band", guardFactor: "0.5" },
    { rule: "guard band", guardFactor: "0.3" },
    { rule: "managed guard band" },
  ];
  // Each record under one of them, each of them with three records or more; all under all where MANY_CASES is set.
  const apart = howMany(decisions.length, 1);
  test.each(decisions)("under the options %j", async (decision) => {
    const first = decisions.indexOf(decision) % apart;
    const isMade = (place: number) => place % apart === first;
    const records = await recordsFrom(inFolder("demo", demoTexts), "demo", { decision }, isMade);
    expect(records.length).toBeGreaterThanOrEqual(Math.floor(13 / apart));
    for (const record of records) {
      expect(record.decisionRule.givenForThisRun).toBeDefined();
      expectSame(record);
    }
  });

  test("with its budgets checked by drawing", async () => {
    const record = await recordFrom(smallestWorkbook, { decision: { monteCarlo: "250000" } });
    expect(record.monteCarloDraws).toBe(250_000);
    expectSame(record);
  });

  test("of a lone table of readings, whose other rows are options", async () => {
    const readings = smallestWorkbook["readings.csv"].replace(/C-1,as_found,/gu, "").replace("calibration,phase,", "");
    for (const tag of [undefined, "LT-9"]) {
      const records = await recordsFrom({ "my/curve.csv": readings }, "my/curve.csv", {
        firstLook: { range: "0:100mm", signal: "4:20mA", tolerance: "0.5%span", tag },
      });
      expect(records[0]?.instrument.tag).toBe(tag ?? "curve");
      expectSame(records[0] as SealedRecord);
    }
  });

  test("of a spreadsheet with a comma as decimal mark in one sheet and a point in another", async () => {
    const rows = (name: keyof typeof smallestWorkbook) =>
      smallestWorkbook[name]
        .trimEnd()
        .split("\n")
        .map((line) => line.split(","));
    const commas = rows("readings.csv").map((row) => row.map((cell) => cell.replace(".", ",")));
    const book = await spreadsheetOfRows({
      Instruments: rows("instruments.csv"),
      standards: rows("standards.csv"),
      calibrations: rows("calibrations.csv"),
      readings: commas,
    });
    const records = await recordsFrom({ "book.xlsx": book }, "book.xlsx");
    const [record] = records;
    expect(record?.inputs.files.map(({ decimalMark, tables }) => [decimalMark, tables])).toEqual([
      ["point", ["instruments", "standards", "calibrations"]],
      ["comma", ["readings"]],
    ]);
    expect(record?.phases.asFound?.decimals.signal).toBe(2);
    expectSame(record as SealedRecord);
  });

  test("of sheets with warnings, each at its cell", async () => {
    const texts = withText("readings.csv", "12.01", "17.01");
    const sheets = Object.entries(texts).map(([name, text]) => [
      name.replace(".csv", ""),
      String(text)
        .trimEnd()
        .split("\n")
        .map((line) => ["", ...line.split(",")]),
    ]);
    const records = await recordsFrom(
      { "book.xlsx": await spreadsheetOfRows(Object.fromEntries(sheets)) },
      "book.xlsx",
    );
    const places = records[0]?.warnings.map(({ place }) => place);
    expect(places).toContain("book.xlsx, sheet readings, cell F4 (signal)");
    expectSame(records[0] as SealedRecord);
  });

  test("whatever the order of columns in its tables, the record is the same but for the digests", async () => {
    const reversed = Object.fromEntries(
      Object.entries(smallestWorkbook).map(([name, text]) => [
        name,
        text.replace(/^.+$/gmu, (line) => line.split(",").toReversed().join(",")),
      ]),
    );
    const [one, other] = [await recordFrom(), await recordFrom(reversed)];
    const content = ({ seal: _, inputs: { rows }, ...rest }: SealedRecord) => ({ ...rest, inputs: { rows } });
    expect(JSON.stringify(content(other))).toBe(JSON.stringify(content(one)));
    expectSame(other);
  });

  test("as an amendment, after other records, whatever the order of keys in what it was told of them", async () => {
    const record = await recordFrom();
    const summary = recordSummary(record);
    const turned = Object.fromEntries(Object.entries(summary).toReversed()) as typeof summary;
    const amendment = {
      changes: [{ after: '"b"', before: null, place: "calibration.remarks" }],
      reason: "a remark was missing",
      by: "A. Example",
      at: "2026-11-25T10:00:00+01:00",
      replaces: { sha256: "0".repeat(64), calibration: "C-1", revision: 1 },
    };
    const read = rebuildRows(record);
    if ("doubts" in read) throw new Error("its rows are those of the smallest workbook");
    const amended = assembleRecord(read.rows, {
      softwareVersion,
      digests: new Map(record.inputs.files.map(({ name, sha256, byteLength }) => [name, { sha256, byteLength }])),
      warnings: [],
      amendment: amendmentSchema.parse(amendment),
      history: [recordSummarySchema.parse(turned)],
    });
    expect(amended.revision).toBe(2);
    expect(Object.keys(amended.history?.[0] ?? {})[0]).toBe("tag");
    expectSame(sealRecord(amended));
  });
});

const warnings = (Object.keys(provokingWorkbooks) as WorkbookCode[]).filter(
  (code) => catalogue[code].severity === "warn",
);

describe("warnings", () => {
  test("there are some to try", () => {
    expect(warnings.length).toBeGreaterThan(15);
  });

  test.each(warnings)("a record with the warning %s is made again", async (code: ProblemCode) => {
    const record = await recordFrom(provokingWorkbooks[code as WorkbookCode].texts);
    const runCodes: readonly string[] = ["tables/file-unknown", "tables/file-kind"];
    expect(record.warnings.some((warning) => warning.code === code)).toBe(!runCodes.includes(code));
    expectSame(record);
  });

  test("one that the rows give is added where the record has lost it, one that they cannot give is kept", async () => {
    const calibrations = smallestWorkbook["calibrations.csv"].replace("GB-1", "");
    const texts = { ...withColumn("readings.csv", "colour", "red"), "calibrations.csv": calibrations };
    const record = await recordFrom(texts);
    expect(record.warnings.map(({ code }) => code)).toEqual(["tables/column-unknown", "model/no-standard"]);
    const without = { ...record, warnings: record.warnings.slice(0, 1) };
    const rebuilt = rebuildRecord(without);
    expect("record" in rebuilt && rebuilt.record.warnings).toEqual(record.warnings);
  });
});

describe("what cannot be read again is told", () => {
  const told = (record: SealedRecord): readonly Doubt[] => {
    const rebuilt = rebuildRecord(record);
    return "doubts" in rebuilt ? rebuilt.doubts : [];
  };

  test("a cell that is no number", async () => {
    const record = await recordFrom();
    const [first] = record.inputs.rows.readings;
    if (first !== undefined) first.cells.signal = "four";
    expect(told(record)).toEqual([
      {
        about: "figures",
        place: "inputs.rows",
        says: 'the rows cannot be read again: readings.csv:2:signal: this is not a number; read "four"; accepted: a number such as 12.02',
      },
    ]);
  });

  test("a file that the record does not describe, or does not say to hold the table", async () => {
    const record = await recordFrom();
    const says = "inputs.files does not say that readings.csv holds them";
    const doubt = { about: "figures", place: "inputs.rows.readings", says };
    const [files] = [record.inputs.files];
    const without = files.filter(({ name }) => name !== "readings.csv");
    const otherwise = files.map((file) => ({ ...file, tables: ["trips" as const] }));
    expect(told({ ...record, inputs: { ...record.inputs, files: without } })).toEqual([doubt]);
    expect(told({ ...record, inputs: { ...record.inputs, files: otherwise } })).toContainEqual(doubt);
  });

  test("no row of a table that every workbook has, and another calibration than that of the rows", async () => {
    const record = await recordFrom();
    const rows = { ...record.inputs.rows, readings: [] };
    expect(told({ ...record, inputs: { ...record.inputs, rows } })[0]?.says).toContain("readings is not there");
    const calibration = { ...record.calibration, calibration: "C-2" };
    expect(told({ ...record, calibration })[0]?.says).toBe(
      "the rows cannot be read again: the calibration is not among them",
    );
  });

  test("a cell with the name of what every object inherits is a column that no table has", async () => {
    const record = await recordFrom();
    const [first] = record.inputs.rows.readings;
    if (first !== undefined) Object.assign(first.cells, { constructor: "x" });
    const rebuilt = rebuildRecord(record);
    expect("record" in rebuilt && rebuilt.record.inputs.rows.readings[0]?.cells).not.toHaveProperty("constructor", "x");
  });
});
