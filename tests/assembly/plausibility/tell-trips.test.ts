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

test("a slip is named only where it leaves a third of the distance or less", async () => {
  // 390.6 for 400: two digits exchanged would be 396, which does not fit either.
  const references = ["400.0", "413.2", "390.6", "413.2", "400.0", "413.2"];
  const { problems } = await judged(
    withRows("trips.csv", (row, index) => ({ ...row, reference: references[index] ?? String(row.reference) })),
  );
  const [apart] = problems.filter(({ code }) => code === "plausible/trip-apart");
  expect(apart?.values.hint).toBe(" (399.6 is one slip away: one digit wrong)");
});

test("two trips of a cycle that fit when they change places are told of their directions, and their numbers are right", async () => {
  const references = ["400.1", "443.2", "443.3", "400.2", "400.3", "443.1"];
  const { problems } = await judged(
    withRows("trips.csv", (row, index) => ({ ...row, reference: references[index] ?? String(row.reference) })),
  );
  const codes = problems.map(({ code }) => code);
  expect(codes).toContain("model/trips-exchanged");
  expect(codes).not.toContain("plausible/trip-apart");
});
