import { expect, test } from "vitest";
import {
  tellOutputTolerance,
  tellResolution,
  tellTolerance,
} from "../../../src/assembly/plausibility/tell-tolerance.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { fullWorkbook } from "../../workbook/full-workbook.ts";
import { measuredRows, phaseOf } from "./measured-rows.ts";

const codes = async (change: object) => {
  const { instrument } = await measuredRows();
  const problems = new ProblemList();
  tellTolerance({ ...instrument, row: { ...instrument.row, ...change } }, problems);
  return problems.all.map(({ code }) => code);
};

// 0.5 % of reading + 5 m at 8 m in a range of 0.5 to 8 m: 5.04 m of 7.5 m.
test.each([
  ["10 % of span", { tolerance: 10 }, []],
  ["a little more", { tolerance: 10.01 }, ["plausible/tolerance-wide"]],
  ["25 %", { tolerance: 25 }, ["plausible/tolerance-wide"]],
  ["more than 25 %", { tolerance: 25.1 }, ["plausible/tolerance-refused"]],
  ["more, and meant", { tolerance: 25.1, toleranceIsWide: true }, ["plausible/tolerance-wide"]],
  ["more on one side", { tolerance: 0.5, toleranceMinus: 30 }, ["plausible/tolerance-refused"]],
  [
    "a sum in metres",
    {
      ...{ rangeLower: 0.5, rangeUpper: 8, distanceUnit: "m", tolerance: 0.5, toleranceBasis: "percent of reading" },
      ...{ secondTolerance: 5, secondToleranceBasis: "distance" },
    },
    ["plausible/tolerance-refused"],
  ],
  ["a signal", { tolerance: 1.7, toleranceBasis: "signal" }, ["plausible/tolerance-wide"]],
])("%s", async (_, change, expected) => {
  expect(await codes(change)).toEqual(expected);
});

// Span 1800 mm.
test.each([
  [180, {}, []],
  [181, {}, ["plausible/output-tolerance-wide"]],
  [450, {}, ["plausible/output-tolerance-wide"]],
  [451, {}, ["plausible/output-tolerance-refused"]],
  [451, { toleranceIsWide: true }, ["plausible/output-tolerance-wide"]],
  [undefined, {}, []],
] as const)("a set point within ±%s mm", async (setPointTolerance, change, expected) => {
  const { instrument, outputs } = await measuredRows();
  const problems = new ProblemList();
  const row = { ...outputs[0]!.row, setPointTolerance };
  tellOutputTolerance({ ...outputs[0]!, row }, { ...instrument, row: { ...instrument.row, ...change } }, problems);
  expect(problems.all.map(({ code }) => code)).toEqual(expected);
});

test("a standard that shows less than the tolerance is told, in whatever unit", async () => {
  const { rows, measured, told } = await phaseOf();
  const standard = (resolution: number, uncertaintyUnit: "cm" | "V" | "mA") =>
    rows.standards.map((one) => ({ ...one, row: { ...one.row, resolution, uncertaintyUnit } }));
  // The tolerance is 9 mm; 0.09 mA are 10.125 mm.
  tellResolution(measured, { standards: standard(0.8, "cm") });
  tellResolution(measured, { standards: standard(1, "V") });
  expect(told()).toEqual([]);
  tellResolution(measured, { standards: standard(1, "cm") });
  tellResolution(measured, { standards: standard(0.09, "mA") });
  expect(told()).toEqual(["plausible/tolerance-fine 2", "plausible/tolerance-fine 2"]);
  expect(fullWorkbook["standards.csv"]).toContain("0.1");
});
