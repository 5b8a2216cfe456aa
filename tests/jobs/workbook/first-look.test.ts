import { expect, test } from "vitest";
import { commandLine, type FirstLook, firstLookTables, optionsText } from "../../../src/jobs/workbook/first-look.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import type { RawTable } from "../../../src/workbook/files/raw-table.ts";
import { readDelimited } from "../../../src/workbook/files/read-delimited.ts";

const readings = "direction,reference,signal\nrising,200,4\nrising,2000,20\n";
const options = Object.freeze({ range: "200:2000mm", signal: "4:20mA", tolerance: "0.5%span" });

function looked(text: string, given: FirstLook) {
  const problems = new ProblemList();
  const table = readDelimited({ name: "rail.csv", bytes: new TextEncoder().encode(text) }, "readings", problems);
  const tables = firstLookTables(table, "rail", given, problems);
  return { tables: Object.fromEntries(tables.map((one) => [one.table, one])), told: problems.all.map(sentence) };
}

function rowsOf(table: RawTable | undefined): readonly Record<string, string>[] {
  if (table === undefined) throw new RangeError("rowsOf: no such table");
  return Array.from(table.rows, ({ cells }) =>
    Object.fromEntries(table.header.map((name, index) => [name, cells[index] ?? ""])),
  );
}

test("the options become an instrument, a calibration, and the columns that the readings do without", () => {
  const { tables, told } = looked(readings, options);
  expect(told).toEqual([]);
  expect(rowsOf(tables.instruments)).toEqual([
    {
      tag: "rail",
      range_lower: "200",
      range_upper: "2000",
      distance_unit: "mm",
      signal_lower: "4",
      signal_upper: "20",
      signal_unit: "mA",
      tolerance: "0.5%span",
    },
  ]);
  expect(rowsOf(tables.calibrations)).toEqual([{ calibration: "rail", tag: "rail" }]);
  expect(rowsOf(tables.readings)[0]).toEqual({
    calibration: "rail",
    phase: "as_found",
    direction: "rising",
    reference: "200",
    signal: "4",
  });
  expect(tables.instruments?.file).toBe(commandLine);
});

test("a tag and a number of the calibration may be given", () => {
  const { tables } = looked(readings, { ...options, tag: "LT-9", calibration: "C-9" });
  expect(rowsOf(tables.calibrations)).toEqual([{ calibration: "C-9", tag: "LT-9" }]);
  expect(rowsOf(tables.readings)[1]?.calibration).toBe("C-9");
});

test("columns that the readings have are kept, and each calibration that they name gets its row", () => {
  const text = "calibration,phase,direction,reference,signal\nA,as_left,rising,200,4\nB,as_left,rising,200,4\n";
  const { tables } = looked(text, options);
  expect(rowsOf(tables.calibrations).map(({ calibration }) => calibration)).toEqual(["A", "B"]);
  expect(rowsOf(tables.readings)[0]?.phase).toBe("as_left");
});

test.each([
  "0.5%span",
  "0.1 %reading",
  "2mm",
  "0.05mA",
  "0.1%span+0.2%reading",
  "±0.5 % of reading or 5 mm, whichever is greater",
  "+3/-5 mm",
])("a tolerance of %s is understood, and stands in its cell as it was typed", (tolerance) => {
  const { tables, told } = looked(readings, { ...options, tolerance });
  expect(told).toEqual([]);
  expect(rowsOf(tables.instruments)[0]).toMatchObject({ tolerance });
});

test("a decimal comma in an option is a decimal mark", () => {
  expect(rowsOf(looked(readings, { ...options, tolerance: "0,5 % span" }).tables.instruments)[0]).toMatchObject({
    tolerance: "0.5 % span",
  });
});

test("a reverse-acting signal and a range in another unit are understood", () => {
  const { tables, told } = looked(readings, { ...options, range: "-0.5:6 m", signal: "10:0V" });
  expect(told).toEqual([]);
  expect(rowsOf(tables.instruments)[0]).toMatchObject({
    range_lower: "-0.5",
    range_upper: "6",
    distance_unit: "m",
    signal_lower: "10",
    signal_upper: "0",
    signal_unit: "V",
  });
});

test("all options that are missing are one message, with what the numbers of the table suggest", () => {
  const [told, ...more] = looked(readings, {}).told;
  expect(more).toEqual([]);
  expect(told).toMatch(/^command line: a lone table of readings needs --range, --signal and --tolerance; accepted: /u);
  expect(told).toContain("--range with two distances and a unit, such as 200:2000mm; --signal with two signals");
  expect(told).toMatch(
    /for these readings perhaps --range 200:2000mm --signal 4:20mA --tolerance 0\.5%span \(the unit of the distances is a guess\)$/u,
  );
  expect(looked(readings, { ...options, signal: undefined }).told[0]).toMatch(
    /needs --signal; accepted: --signal .*; for these readings perhaps --signal 4:20mA$/u,
  );
  expect(looked("reference,signal\n", {}).told[0]).not.toContain("perhaps");
});

test.each([
  ["200-2000mm", "200", "2000", "mm"],
  ["200..2000 mm", "200", "2000", "mm"],
  ["0,5 to 8 m", "0.5", "8", "m"],
  ["-50:50mm", "-50", "50", "mm"],
  ["−50 – 50 mm", "-50", "50", "mm"],
  ["200 mm - 2000 mm", "200", "2000", "mm"],
])("a range of %s is understood", (range, lower, upper, unit) => {
  const { tables, told } = looked(readings, { ...options, range });
  expect(told).toEqual([]);
  expect(rowsOf(tables.instruments)[0]).toMatchObject({ range_lower: lower, range_upper: upper, distance_unit: unit });
});

test.each([
  ["4-20mA", "4", "20", "mA"],
  ["4–20 mA", "4", "20", "mA"],
  ["20-4 ma", "20", "4", "mA"],
  ["0 to 10 V DC", "0", "10", "V"],
  ["1...5V", "1", "5", "V"],
])("a signal of %s is understood", (signal, lower, upper, unit) => {
  const { tables, told } = looked(readings, { ...options, signal });
  expect(told).toEqual([]);
  expect(rowsOf(tables.instruments)[0]).toMatchObject({ signal_lower: lower, signal_upper: upper, signal_unit: unit });
});

test.each([
  ["range", "200mm-2000cm"],
  ["range", "200:2000"],
  ["range", "200:2000mA"],
  ["signal", "4:20mm"],
  ["signal", "4:20:8mA"],
  ["tolerance", "0.5"],
  ["tolerance", "0.5%"],
  ["tolerance", "-0.5%span"],
  ["tolerance", "1%span+1%span+1%span"],
  ["tolerance", "1°C"],
  ["tolerance", ""],
] as const)("--%s %s is not understood, and is told", (option, written) => {
  const { told } = looked(readings, { ...options, [option]: written });
  expect(told).toHaveLength(1);
  expect(told[0]).toContain(`command line: the option --${option} cannot be read; read "${written}"; accepted: `);
});

test("the options as text are what their digest is taken of", () => {
  expect(optionsText({ ...options, tag: undefined })).toBe("--range 200:2000mm\n--signal 4:20mA\n--tolerance 0.5%span");
});
