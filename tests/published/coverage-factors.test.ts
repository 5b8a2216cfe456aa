import { expect, test } from "vitest";
import { chiSquaredQuantile } from "../../src/numeric/chi-squared-quantile.ts";
import { studentTQuantile } from "../../src/numeric/student-t-quantile.ts";
import { correctDigits, readExpected } from "./read-data.ts";

type Table = Readonly<Record<string, string>>;
const entriesOf = (table: Table) =>
  Object.entries(table).map(
    ([key, value]) => [...key.split("|").map(Number), Number(value)] as [number, number, number],
  );

test("Student's t at every row and column of GUM table G.2, to 12 digits (mpmath)", () => {
  const entries = entriesOf(readExpected<Table>("gum-table-g2", "quantiles.json"));
  expect(entries).toHaveLength(28 * 6);
  // (1 + p)/2 rounds at 1e-16; where p = 99.73 % that is 1e-13 of the tail, and of the quantile at 1 degree of freedom.
  for (const [degreesOfFreedom, coverage, value] of entries)
    expect(
      correctDigits(studentTQuantile((1 + coverage) / 2, degreesOfFreedom), value),
      `${degreesOfFreedom}, ${coverage}`,
    ).toBeGreaterThan(12);
});

test("the 95 % limits of chi-squared are those of ISO/TS 28037, 9.488 and 11.0705", () => {
  expect(Math.abs(chiSquaredQuantile(0.95, 4) - 9.488)).toBeLessThan(0.5001e-3);
  expect(Math.abs(chiSquaredQuantile(0.95, 5) - 11.0705)).toBeLessThan(0.5001e-4);
});

test("chi-squared at 10 degrees of freedom, fractions among them, and 7 probabilities, to 12 digits (mpmath)", () => {
  const entries = entriesOf(readExpected<Table>("chi-squared", "quantiles.json"));
  expect(entries).toHaveLength(70);
  for (const [degreesOfFreedom, probability, value] of entries)
    expect(
      correctDigits(chiSquaredQuantile(probability, degreesOfFreedom), value),
      `${degreesOfFreedom}, ${probability}`,
    ).toBeGreaterThan(12);
});
