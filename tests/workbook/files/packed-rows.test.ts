import fc from "fast-check";
import { expect, test } from "vitest";
import { PackedRows } from "../../../src/workbook/files/packed-rows.ts";
import type { RawRow } from "../../../src/workbook/files/raw-table.ts";
import { collectGarbage } from "../../held-objects.ts";

function packed(rows: readonly RawRow[]): PackedRows {
  const all = new PackedRows();
  for (const row of rows) all.push(row);
  return all.end();
}

const text = fc.string({
  unit: fc.constantFrom("a", '"', "\\", "\n", "é", "🙂", "\ud800", "\u0000", ","),
  maxLength: 6,
});

const readings = (count: number) =>
  Array.from({ length: count }, (_, index) => ({
    line: index + 2,
    cells: [
      `C-${index >> 6}`,
      "as_found",
      String(index % 3),
      "rising",
      (index * 1.7).toFixed(1),
      (index * 7.919).toFixed(4),
    ],
  }));

/** More than are held as they are: what comes behind them is packed. */
const beginning = readings(2000);

test("rows come back as they were, one by one in any order and all in turn", () => {
  const row = fc.record({ line: fc.nat(), cells: fc.array(text) });
  fc.assert(
    fc.property(fc.array(row, { maxLength: 30 }), fc.array(fc.nat({ max: 29 })), (rows, order) => {
      expect([...packed(rows)]).toEqual(rows);
      const all = packed([...beginning, ...rows]);
      expect(all.length).toBe(2000 + rows.length);
      for (const place of order) expect(all.at(2000 + place)).toEqual(rows[place]);
    }),
    { seed: 20261128 },
  );
});

test("rows of many blocks are found, whichever comes first, and nothing beyond the ends", () => {
  const rows = readings(5000);
  const all = packed(rows);
  for (const place of [4999, 0, 2500, 1, 4998, 137, 136]) expect(all.at(place)).toEqual(rows[place]);
  expect([all.at(-1), all.at(5000)]).toEqual([undefined, undefined]);
  expect(packed([]).at(0)).toBeUndefined();
});

test("no row is held that was read, but those of the beginning and of one block", async () => {
  const all = packed(readings(5000));
  const read: WeakRef<RawRow>[] = [];
  for (const row of all) read.push(new WeakRef(row));
  await collectGarbage();
  const held = read.slice(beginning.length).filter((row) => row.deref() !== undefined);
  // A block has 8192 characters, and a row some 50 of them.
  expect(held.length).toBeGreaterThan(0);
  expect(held.length).toBeLessThan(300);
});
