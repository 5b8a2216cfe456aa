import { expect, test } from "vitest";
import { scalesOf, tellUnits } from "../../../src/assembly/plausibility/tell-units.ts";
import { judged, withRows } from "../../workbook/full-workbook.ts";
import { phaseOf } from "./measured-rows.ts";

test("where the units are right nothing is told", async () => {
  const { measured, told } = await phaseOf();
  expect(tellUnits(measured)).toBe(false);
  expect(told()).toEqual([]);
  expect(scalesOf(measured, "reference")[0]?.unit).toBe("cm");
  expect(scalesOf(measured, "signal")[0]?.unit).toBe("A");
});

// The columns of one phase, or of both, in other units: told once a phase, at its first reading.
test.each([
  ["reference", 1 / 304.8, "ft"],
  ["reference", 1 / 1000, "m"],
  ["signal", 1 / 1000, "A"],
  ["signal", 0.5, "V over 500 Ω"],
  ["value", 18, "mm"],
] as const)("%s times %d fits %s", async (column, factor, unit) => {
  const offset = column === "value" ? 200 : 0;
  const texts = withRows("readings.csv", (row) => ({
    ...row,
    point: "",
    [column]: String(offset + Number(row[column]) * factor),
  }));
  const { problems, cases } = await judged(texts);
  const found = problems.filter(({ code }) => code === "plausible/unit-of-column");
  expect(found.map(({ place, values }) => [place.line, place.column, values.unit])).toEqual([
    [2, column, unit],
    [22, column, unit],
  ]);
  expect(cases).toEqual([]);
});
