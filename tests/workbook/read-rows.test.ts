import { expect, test } from "vitest";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { readDelimited } from "../../src/workbook/files/read-delimited.ts";
import { readRows } from "../../src/workbook/read-rows.ts";

function read(text: string, firstLook = false) {
  const problems = new ProblemList();
  const raw = readDelimited({ name: "i.csv", bytes: new TextEncoder().encode(text) }, "instruments", problems);
  const { rows, stopped } = readRows(raw, (row) => row, firstLook, problems);
  return { rows, stopped, problems: problems.all };
}

const header =
  "tag,range_upper,range_lower,distance_unit,signal_lower,signal_upper,signal_unit,tolerance,tolerance_basis,serial";

test("values and texts stand in the order of the table's columns, numbers last, whatever the order of the header", () => {
  const names = header.split(",");
  const cells = "LT-1,1 m,0,MM,4,20,mA,0.5,distance,7".split(",");
  const turned = read(`${names.toReversed().join(",")}\n${cells.toReversed().join(",")}\n`);
  const straight = read(`${header}\n${cells.join(",")}\n`);
  expect(JSON.stringify(turned.rows)).toBe(JSON.stringify(straight.rows));
  expect(Object.keys(turned.rows[0]?.row ?? {})).toEqual([
    ...["tag", "serial", "distanceUnit", "signalUnit", "toleranceBasis"],
    ...["rangeLower", "rangeUpper", "signalLower", "signalUpper", "tolerance"],
  ]);
});

test("a row holds its values and, by column, its texts as typed", () => {
  const { rows, stopped, problems } = read(`${header}\nLT-1,1 m,0,MM,4,20,mA,±0.50,% of span,\n`);
  expect(problems).toEqual([]);
  expect(stopped.size).toBe(0);
  expect(rows).toEqual([
    {
      file: "i.csv",
      line: 2,
      row: {
        tag: "LT-1",
        rangeUpper: 1000,
        rangeLower: 0,
        distanceUnit: "mm",
        signalLower: 4,
        signalUpper: 20,
        signalUnit: "mA",
        tolerance: 0.5,
        toleranceBasis: "percent of span",
      },
      cells: {
        tag: "LT-1",
        range_upper: "1 m",
        range_lower: "0",
        distance_unit: "MM",
        signal_lower: "4",
        signal_upper: "20",
        signal_unit: "mA",
        tolerance: "±0.50",
        tolerance_basis: "% of span",
      },
    },
  ]);
});

test("all problems of a row are told in one run, each at its cell, and belong to its tag", () => {
  const { rows, stopped, problems } = read(`${header}\nLT-1,ten,,km,4,20,mA,0,span,,stray\n`);
  expect(problems.map(({ code, place, belongsTo }) => [code, place.column, belongsTo])).toEqual([
    ["tables/cell-not-choice", "distance_unit", { tag: "LT-1" }],
    ["tables/cell-not-choice", "tolerance_basis", { tag: "LT-1" }],
    ["tables/cell-not-number", "range_upper", { tag: "LT-1" }],
    ["tables/cell-out-of-bounds", "tolerance", { tag: "LT-1" }],
    ["tables/cell-missing", "range_lower", { tag: "LT-1" }],
    ["tables/row-long", undefined, { tag: "LT-1" }],
  ]);
  expect(stopped.has(rows[0] as never)).toBe(true);
});

test("a warning does not stop a row; a needed column that is not there stops every row", () => {
  const warned = read(`${header}\nLT-1,100,0,mm,4,20,mA,0.5,signal,S\u0007\n`);
  expect(warned.problems.map(({ code }) => code)).toEqual(["tables/control-character"]);
  expect(warned.rows[0]?.row).toMatchObject({ serial: "S␇" });
  expect(warned.stopped.size).toBe(0);
  expect(read("tag\nLT-1\n").stopped.size).toBe(1);
});
