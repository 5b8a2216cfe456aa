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

test("a fault signal is a fault that was reported, and no number in another unit", async () => {
  const texts = withCell("readings.csv", 3, "signal", "3.4");
  const codes = (await judged(texts)).problems.filter(({ place }) => place.line === 5).map(({ code }) => code);
  expect(codes.filter((code) => code.startsWith("plausible/"))).toEqual([]);
});

test("a number far beyond the fault level, which no sensor gives, may be in another unit", async () => {
  // The first reading, 4.157 mA, in V over 250 Ω.
  const texts = withCell("readings.csv", 0, "signal", "1.03925");
  const codes = (await judged(texts)).problems.filter(({ place }) => place.line === 2).map(({ code }) => code);
  expect(codes).toContain("plausible/unit-of-row");
});

test("one signal among others is no distance, though it would fit as one", async () => {
  // 8 to 80 in on 4 to 20 mA: the signal of the first reading is its distance.
  const inches = (text: string | undefined) => String(Number(text) / 25);
  const readings = withRows("readings.csv", (row, index) => ({
    ...row,
    reference: inches(row.reference),
    ...(row.point && { point: inches(row.point) }),
    ...(index === 0 && { signal: String(8 + (72 * (Number(row.signal) - 4)) / 16) }),
  }));
  const instruments = withRows("instruments.csv", (row) => ({
    ...row,
    ...{ range_lower: "8", range_upper: "80", distance_unit: "in" },
  }));
  const { measured, told } = await phaseOf({ ...readings, "instruments.csv": instruments["instruments.csv"]! });
  tellReadings(measured, { other: undefined, told: new Set(), markOf: () => "point" });
  expect(told()).toEqual(["plausible/reading-apart 2"]);
});
