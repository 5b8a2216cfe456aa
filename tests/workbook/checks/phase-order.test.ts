import { expect, test } from "vitest";
import { fullWorkbook, judged, rowsOf, withRows } from "../full-workbook.ts";

const phased = async (phaseOf: (phase: string, index: number) => string) => {
  const { problems } = await judged(
    withRows("readings.csv", (row, index) => ({ ...row, phase: phaseOf(row.phase ?? "", index) })),
  );
  return problems.filter(({ code }) => code === "model/phase-contradicted").map(({ place }) => place.line);
};

test("as found, then as left, is in order", async () => {
  expect(await phased((phase) => phase)).toEqual([]);
  expect((await judged(fullWorkbook)).codes).toEqual([]);
});

test.each([
  ["within those as found", 5, "as_left"],
  ["before all others", 0, "as_left"],
  ["after those as left", 39, "as_found"],
  ["within those as left", 25, "as_found"],
])("a row %s with the other phase is told", async (_, place, other) => {
  expect(await phased((phase, index) => (index === place ? other : phase))).toEqual([place + 2]);
});

test("a table in which the phases take turns is ordered in another way", async () => {
  expect(await phased((_, index) => (index % 2 === 0 ? "as_found" : "as_left"))).toEqual([]);
  expect(rowsOf("readings.csv")).toHaveLength(40);
});
