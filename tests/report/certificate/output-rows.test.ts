import { expect, test } from "vitest";
import { outputRows } from "../../../src/report/certificate/output-rows.ts";
import { demoRecord } from "../demo-records.ts";

test("a switched output is a row: its set point, where it released and operated, its error and the statement", () => {
  const [row, ...others] = outputRows(demoRecord("LT-310"));
  expect(others).toEqual([]);
  expect(row?.name).toBe("Q1 420");
  expect(row?.of.asFound).toMatchObject({ rising: "408.3", falling: "399.5", error: "−20.5 ± 1.3", statement: "fail" });
  // Tolerance ±15 mm: 20.5 / 15 is 1.37.
  expect(row?.of.asFound?.shareOfTolerance).toBe("137");
});

test("a loop without outputs has no such row", () => {
  expect(outputRows(demoRecord("ZT-115"))).toEqual([]);
});
