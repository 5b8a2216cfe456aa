import { describe, expect, it } from "vitest";
import { howMany } from "../../how-many.ts";
import { countsOf } from "./shares.ts";
import { risksAndTruths } from "./stated-risk.ts";

const records = howMany(250, 2500);

/**
 * One test point of each record, read outwards only; the seeds are fixed. If the stated risks are so, the number outside
 * the tolerance follows from them, and more than chance allows come with less than 10⁻⁶, with any seeds. Of 2500 records a
 * u of half its size would be told by what is stated under one half.
 */
describe("read in one direction, the risk that is stated is what is so", () => {
  const found = risksAndTruths("out", records, 9_000_000);

  it.each([
    ["under one half", 0.001, 0.5],
    ["over one half", 0.5, 0.999],
  ])("%s", (_, from, to) => {
    const between = found.filter(({ stated }) => stated >= from && stated < to);
    const outside = between.filter(({ isOutside }) => isOutside).length;
    const chances = countsOf(between.map(({ stated }) => stated));
    const sum = (counts: readonly number[]) => counts.reduce((total, one) => total + one, 0);
    expect(between.length).toBeGreaterThan(records / 20);
    expect(sum(chances.slice(outside))).toBeGreaterThan(1e-6);
    expect(sum(chances.slice(0, outside + 1))).toBeGreaterThan(1e-6);
  });
});

it("of two directions the risk of the worse is no smaller than what is so", () => {
  const found = risksAndTruths("both", howMany(100, 200), 9_500_000);
  const outside = found.filter(({ isOutside }) => isOutside).length;
  const chances = countsOf(found.map(({ stated }) => stated));
  expect(chances.slice(outside).reduce((sum, one) => sum + one, 0)).toBeGreaterThan(1e-6);
});
