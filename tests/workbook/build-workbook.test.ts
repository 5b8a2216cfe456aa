import { expect, test } from "vitest";
import * as z from "zod";
import { tableSchemas } from "../../src/model/tables.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { buildWorkbook } from "../../src/workbook/build-workbook.ts";
import { readTables } from "../../src/workbook/read-tables.ts";
import { checked, filesOf, smallestWorkbook, type Texts, withColumn, withText } from "./smallest-workbook.ts";

/** One row in every table, every kind of column used. */
const fullWorkbook: Texts = {
  ...smallestWorkbook,
  "outputs.csv": "tag,output,set_point,set_point_tolerance,polarity,function\nLT-1,Q1,5 cm,1,pnp,no\n",
  "trips.csv":
    "calibration,phase,output,direction,cycle,reference\nC-1,as found,Q1,Approach,1,50.1\nC-1,as found,Q1,Recede,1,52\nC-1,as found,Q1,Approach,2,50\nC-1,as found,Q1,Approach,3,50\n",
  "loop_checks.csv": "calibration,item,result,measured,unit\nC-1,supply,pass,24.1,V\n",
  "controller_limits.csv": "tag,limit,value,acts\nLT-1,high alarm,80,above\n",
  "candidates.csv":
    "candidate,range_lower,range_upper,distance_unit,signal_lower,signal_upper,signal_unit,loop_powered,accuracy,accuracy_basis\nA,0,200,mm,4,20,mA,,0.5,distance\n".replace(
      ",loop_powered",
      ",temperature_compensated",
    ),
};

test("every table comes out checked, and those that are not given are empty", async () => {
  const { workbook, sentences } = await checked(fullWorkbook);
  expect(sentences).toEqual([]);
  expect(workbook.outputs[0]?.row.setPoint).toBe(50);
  expect(workbook.trips[0]?.row).toMatchObject({ phase: "as_found", direction: "approach", cycle: 1 });
  expect(workbook.loopChecks[0]?.row.result).toBe("pass");
  expect(workbook.candidates[0]?.row.accuracy).toBe(0.5);
  expect((await checked(smallestWorkbook)).workbook).toMatchObject({ outputs: [], trips: [], candidates: [] });
});

test("every row that comes out is one that its schema takes", async () => {
  const { workbook } = await checked(fullWorkbook);
  const { loopChecks, controllerLimits, files: _, ...tables } = workbook;
  for (const [table, rows] of Object.entries({
    ...tables,
    loop_checks: loopChecks,
    controller_limits: controllerLimits,
  })) {
    expect(rows.length).toBeGreaterThan(0);
    const schema = z.array(z.looseObject({ row: tableSchemas[table as keyof typeof tableSchemas] }));
    expect(schema.safeParse(rows).error).toBeUndefined();
  }
});

test("a row with a stop is left out, and everything else is checked all the same", async () => {
  const { workbook, codes } = await checked(withText("readings.csv", "25,8.01", "25,eight"));
  expect(codes).toEqual(["tables/cell-not-number"]);
  expect(workbook.readings).toHaveLength(4);
  expect(workbook.calibrations).toHaveLength(1);
});

test("a first look may do without the day, the person and the standards", async () => {
  const texts = {
    "instruments.csv": smallestWorkbook["instruments.csv"],
    "calibrations.csv": "calibration,tag\nC-1,LT-1\n",
    "readings.csv": smallestWorkbook["readings.csv"],
  };
  const { cases, sentences } = await checked(texts, true);
  expect(sentences).toEqual([]);
  expect(cases[0]?.calibration.row).toEqual({ calibration: "C-1", tag: "LT-1" });
  expect((await checked(texts)).codes).toEqual(["tables/column-missing", "tables/column-missing", "model/no-standard"]);
});

test("the order of columns and of files does not matter", async () => {
  const reversed = Object.fromEntries(
    Object.entries(smallestWorkbook)
      .toReversed()
      .map(([name, text]) => [
        name,
        text
          .split("\n")
          .map((line) => line.split(",").toReversed().join(","))
          .join("\n"),
      ]),
  );
  const { workbook, sentences } = await checked(reversed);
  const { files: _, ...expected } = (await checked(smallestWorkbook)).workbook;
  expect(sentences).toEqual([]);
  expect(workbook).toMatchObject(expected);
});

test("another unit or another decimal mark gives the same values", async () => {
  const inCentimetres = withText("readings.csv", "rising,25,", "rising,2.5 cm,");
  const commas = Object.fromEntries(
    Object.entries(smallestWorkbook).map(([name, text]) => [
      name,
      text.replaceAll(",", ";").replaceAll(".0", ",0").replace("0.5", "0,5"),
    ]),
  );
  const rows = async (texts: Texts) => (await checked(texts)).workbook.readings.map(({ row }) => row);
  expect(await rows(inCentimetres)).toEqual(await rows(smallestWorkbook));
  expect(await rows(commas)).toEqual(await rows(smallestWorkbook));
});

test("files are described once, with how each of them was read", async () => {
  const { workbook } = await checked(smallestWorkbook);
  expect(workbook.files).toContainEqual({
    name: "readings.csv",
    encoding: "utf-8",
    delimiter: ",",
    decimalMark: "point",
    tables: ["readings"],
  });
  expect(workbook.files).toHaveLength(4);
});

test("what was read is not changed", async () => {
  const problems = new ProblemList();
  const read = await readTables(filesOf(withColumn("readings.csv", "remark", "a")), problems);
  const tables = read.map((table) => ({ ...table, rows: [...table.rows] }));
  const before = JSON.stringify(tables);
  for (const { rows, header } of tables)
    for (const part of [header, rows, ...rows.map(({ cells }) => cells)]) Object.freeze(part);
  buildWorkbook(tables, { today: "2026-11-25" }, problems);
  expect(JSON.stringify(tables)).toBe(before);
});
