import fc from "fast-check";
import { expect, test } from "vitest";
import { RowsByOwner } from "../../src/workbook/rows-by-owner.ts";

test("the places of each owner are the rows that name it, in their order, however they stand apart", () => {
  const owner = fc.constantFrom("C-1", "C-2", "C-3", undefined);
  fc.assert(
    fc.property(fc.array(owner), fc.array(fc.nat({ max: 2 })), (owners, gaps) => {
      const rows = new RowsByOwner();
      let place = 0;
      const expected = owners.map((one, index) => {
        place += 1 + (gaps[index] ?? 0);
        rows.add(one, place);
        return { one, place };
      });
      expect(rows.count).toBe(owners.length);
      expect([...rows.owners()]).toEqual([...new Set(owners)]);
      expect(rows.places()).toEqual(expected.map((row) => row.place));
      for (const one of ["C-1", "C-2", "C-3", undefined]) {
        const own = expected.filter((row) => row.one === one).map((row) => row.place);
        expect([...rows.placesOf(one)]).toEqual(own);
        expect(rows.countOf(one)).toBe(own.length);
        expect(rows.has(one)).toBe(own.length > 0);
      }
    }),
    { seed: 20261128 },
  );
});
