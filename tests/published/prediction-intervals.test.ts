import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { predictionInterval, slopeInterval } from "../../src/numeric/prediction-interval.ts";
import { correctDigits, readColumns, readExpected } from "./read-data.ts";

test("R's cars: the 95 % prediction interval at 12, 19, 24 and the 95 % interval of the slope hold 12 digits", () => {
  const published = readExpected<
    Record<"at" | "value" | "lowerPrediction95" | "upperPrediction95", number[]> &
      Record<"slope" | "slopeLower95" | "slopeUpper95", number>
  >("r-cars");
  const { speed = [], dist = [] } = readColumns("r-cars");
  const fit = fitLine(speed, dist);
  for (const [index, at] of published.at.entries()) {
    const { value, low, high } = predictionInterval(fit, at);
    expect(correctDigits(value, published.value[index]!)).toBeGreaterThanOrEqual(12);
    expect(correctDigits(low, published.lowerPrediction95[index]!)).toBeGreaterThanOrEqual(12);
    expect(correctDigits(high, published.upperPrediction95[index]!)).toBeGreaterThanOrEqual(12);
  }
  const slope = slopeInterval(fit);
  expect(correctDigits(slope.value, published.slope)).toBeGreaterThanOrEqual(12);
  expect(correctDigits(slope.low, published.slopeLower95)).toBeGreaterThanOrEqual(12);
  expect(correctDigits(slope.high, published.slopeUpper95)).toBeGreaterThanOrEqual(12);
});

test("rocket propellant at 10 weeks: the printed 95 % prediction interval from the printed sums", () => {
  const published = readExpected<Record<string, number>>("rocket-propellant");
  const { n, abscissaMean, abscissaSumOfSquares, residualMeanSquare, at, value, lower95, upper95 } = published;
  const printed = {
    ...fitLine([0, 1, 2], [0, 1, 2]),
    n: n!,
    degreesOfFreedom: n! - 2,
    residualStdDev: Math.sqrt(residualMeanSquare!),
    abscissaMean: abscissaMean!,
    abscissaSumOfSquares: abscissaSumOfSquares!,
  };
  const { value: middle, low, high } = predictionInterval(printed, at!);
  // Ends printed to 0.01; t of the example has four digits (2.101 for 2.10092), which is 0.008 of the half width of 208.
  expect(Math.abs(high - middle - (upper95! - value!))).toBeLessThan(0.02);
  expect(Math.abs(middle - low - (value! - lower95!))).toBeLessThan(0.02);
});
