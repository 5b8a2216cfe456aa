import { expect, test } from "vitest";
import { judged, withCell, withRows } from "../../workbook/full-workbook.ts";

const told = async (texts: Awaited<ReturnType<typeof withCell>>) =>
  (await judged(texts)).problems
    .filter(({ code }) => code.startsWith("plausible/"))
    .map(({ code, place, values }) => [code, place.line, values.unit ?? values.expected]);

test("trips in another unit as a whole are told once an output and phase", async () => {
  const inches = withRows("trips.csv", (row) => ({ ...row, reference: (Number(row.reference) / 25.4).toFixed(3) }));
  expect(await told(inches)).toEqual([
    ["plausible/trip-unit", 2, "in"],
    ["plausible/trip-unit", 8, "in"],
  ]);
});

test("a trip with a slip is told with what would fit; trips that agree are not", async () => {
  expect(await told(withCell("trips.csv", 1, "reference", "471.7"))).toEqual([["plausible/trip-apart", 3, "413.2"]]);
  expect(await told(withCell("trips.csv", 1, "reference", "414.7"))).toEqual([]);
});
