import { expect, test } from "vitest";
import { judged, withRows } from "../../workbook/full-workbook.ts";

const told = async (change: Parameters<typeof withRows>[1]) =>
  (await judged(withRows("readings.csv", change))).problems.map(({ code, place }) => [code, place.line]);

test("the clock decides over the order of the table", async () => {
  const at = (hour: string) => (row: Readonly<Record<string, string>>, index: number) => ({
    ...row,
    time: `2026-03-04T${row.phase === "as_left" ? hour : "10"}:${String(10 + (index % 40)).padStart(2, "0")}`,
  });
  expect(await told(at("11"))).toEqual([]);
  expect(await told(at("09"))).toEqual([["plausible/phases-exchanged", 22]]);
});
