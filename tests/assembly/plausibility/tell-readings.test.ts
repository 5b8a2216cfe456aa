import { expect, test } from "vitest";
import { tellReadings } from "../../../src/assembly/plausibility/tell-readings.ts";
import { judged, rowsOf, withCell, withRows } from "../../workbook/full-workbook.ts";
import { phaseOf } from "./measured-rows.ts";

const pairs = async (texts: Awaited<ReturnType<typeof withCell>>) =>
  (await judged(texts)).problems.map(({ code, place, values }) => [code, place.line, values.unit ?? values.hint ?? ""]);

test("a line that was told already is not told again", async () => {
  const { measured, told } = await phaseOf(withCell("readings.csv", 3, "signal", "9.9"));
  tellReadings(measured, { other: undefined, told: new Set([5]), markOf: () => "point" });
  expect(told()).toEqual([]);
  tellReadings(measured, { other: undefined, told: new Set(), markOf: () => "point" });
  expect(told()).toEqual(["plausible/reading-apart 5"]);
});

test("a number with its unit behind it is no slip of the unit", async () => {
  expect(await pairs(withCell("readings.csv", 3, "signal", "4.036 mA"))).toEqual([["plausible/reading-apart", 5, ""]]);
});

test("a reference and its point that agree with each other and not with the outputs", async () => {
  const texts = withRows("readings.csv", (row, index) =>
    index === 1 ? { ...row, signal: "13.2", value: "57.5" } : row,
  );
  expect(await pairs(texts)).toEqual([["plausible/reading-apart", 3, " (the other columns of the row agree with it)"]]);
});

test("without a point, and with a signal alone, both columns are named", async () => {
  const rows = rowsOf("readings.csv");
  const texts = withRows("readings.csv", ({ point: _, value: __, ...row }, index) =>
    index === 1 ? { ...row, signal: rows[2]?.signal ?? "" } : row,
  );
  const [found, ...more] = await pairs(texts);
  expect(more).toEqual([]);
  expect(found?.slice(0, 2)).toEqual(["plausible/reading-apart", 3]);
  expect(found?.[2]).toContain("or reference 1099");
});
