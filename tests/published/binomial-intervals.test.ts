import { expect, test } from "vitest";
import { clopperPearson } from "../../src/numeric/clopper-pearson.ts";
import { correctDigits, readExpected } from "./read-data.ts";

type Row = { successes: number; trials: number; low: number; high: number };
type Printed = Row & { confidence: number; unit: [number, number] };

const { printed, byR } = readExpected<{ printed: Printed[]; byR: Row[] }>("binomial-intervals");

test.each(printed)(
  "$successes of $trials is as printed, $low to $high",
  ({ successes, trials, confidence, ...row }) => {
    const { low, high } = clopperPearson(successes, trials, confidence);
    // Half a unit of the last digit that is printed, with a tenth of it for the reading of decimals.
    expect(Math.abs(low - row.low)).toBeLessThan(1.1 * row.unit[0]);
    expect(Math.abs(high - row.high)).toBeLessThan(1.1 * row.unit[1]);
  },
);

test.each(byR)("$successes of $trials is as R has it, $low to $high", ({ successes, trials, ...row }) => {
  const { low, high } = clopperPearson(successes, trials);
  // Written out to 12 digits.
  expect(correctDigits(low, row.low)).toBeGreaterThan(10.5);
  expect(correctDigits(high, row.high)).toBeGreaterThan(10.5);
});
