import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { predictionInterval, slopeInterval } from "../../src/numeric/prediction-interval.ts";
import { correctDigits, readColumns, readExpected } from "./read-data.ts";

type Intervals = Record<"at" | "lower95" | "upper95", number[]>;

test("R's mtcars: the published prediction intervals at 1.7 and 2.4, to their 7 digits", () => {
  const { at, value, lower95, upper95 } = readExpected<Intervals & { value: number[] }>("r-mtcars");
  const { wt = [], mpg = [] } = readColumns("r-mtcars");
  const fit = fitLine(wt, mpg);
  for (const [index, weight] of at.entries()) {
    const found = predictionInterval(fit, weight);
    // Printed to five decimals: half a unit of the last.
    expect(Math.abs(found.value - value[index]!)).toBeLessThan(5.1e-6);
    expect(Math.abs(found.low - lower95[index]!)).toBeLessThan(5.1e-6);
    expect(Math.abs(found.high - upper95[index]!)).toBeLessThan(5.1e-6);
  }
});

test("e-Handbook pressure on temperature: the printed line, and R's prediction intervals on its data", () => {
  const expected = readExpected<Intervals & Record<"intercept" | "slope" | "slopeLower95" | "slopeUpper95", number>>(
    "nist-pressure-temperature",
  );
  const { temperature = [], pressure = [] } = readColumns("nist-pressure-temperature");
  const fit = fitLine(temperature, pressure);
  // The handbook cuts its digits: 7.748997 is printed as 7.74899.
  expect(Math.abs(fit.intercept - expected.intercept)).toBeLessThan(1e-5);
  expect(Math.abs(fit.slope - expected.slope)).toBeLessThan(1e-5);
  for (const [index, at] of expected.at.entries()) {
    const { low, high } = predictionInterval(fit, at);
    // Written out to 12 digits.
    expect(correctDigits(low, expected.lower95[index]!)).toBeGreaterThan(10.5);
    expect(correctDigits(high, expected.upper95[index]!)).toBeGreaterThan(10.5);
  }
  expect(correctDigits(slopeInterval(fit).low, expected.slopeLower95)).toBeGreaterThan(10.5);
  expect(correctDigits(slopeInterval(fit).high, expected.slopeUpper95)).toBeGreaterThan(10.5);
});
