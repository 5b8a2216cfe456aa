import { expect, test } from "vitest";
import { fullWorkbook, judged, rowsOf } from "./full-workbook.ts";

test("nothing is wrong with the full workbook", async () => {
  expect((await judged(fullWorkbook)).sentences).toEqual([]);
  expect(rowsOf("readings.csv")).toHaveLength(40);
  expect(rowsOf("trips.csv")).toHaveLength(12);
});
