import { expect, test } from "vitest";
import { assembleSetPoints } from "../../src/assembly/assemble-set-points.ts";
import { demoRecord } from "../report/demo-records.ts";

test("a record of every loop carries its set-point table, outputs included", () => {
  const { setPointTable } = assembleSetPoints(demoRecord("LT-310"));
  // 420 mm of 300 to 3000 mm: 120 / 2700 of 16 mA above 4 mA.
  const row = setPointTable.find(({ name }) => name === "set point of Q1");
  expect(Math.abs((row?.signal ?? 0) - (4 + (16 * 120) / 2700))).toBeLessThan(1e-12);
  expect(setPointTable).toHaveLength(8);
  expect(demoRecord("LT-310").setPointTable).toEqual(setPointTable);
});

test("the example of the docblock", () => {
  expect(assembleSetPoints(demoRecord("LT-702")).setPointTable).toHaveLength(7);
});
