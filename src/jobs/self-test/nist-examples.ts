import { fitLine } from "../../numeric/fit-line.ts";
import { fitLineThrough } from "../../numeric/fit-line-through.ts";
import { mean } from "../../numeric/mean.ts";
import { sampleStandardDeviation } from "../../numeric/sample-standard-deviation.ts";
import { mavro, noInt1, norris } from "./nist-data.ts";
import { type Comparison, comparisons, type PublishedExample, toDigits } from "./published-example.ts";

const source = (name: string) => `NIST Statistical Reference Datasets, ${name}, certified values`;

/** Certified to 15 digits; the sums cost two or three of the 16 that a double holds. */
const certified = (values: Readonly<Record<string, number>>, computed: object): readonly Comparison[] =>
  comparisons(values, computed, (value) => toDigits(value, 12));

/** As in `numAcc2`: a first value, then pairs about it. */
function seriesOf(first: number, low: number, high: number, pairs: number): readonly number[] {
  return [first, ...Array.from({ length: pairs }, () => [low, high]).flat()];
}

/** Of a mean all digits; of a standard deviation so many as its readings leave. */
function scatterOf(
  readings: readonly number[],
  published: { mean: number; standardDeviation: number },
  digits: number,
): readonly Comparison[] {
  const { mean: average, standardDeviation } = published;
  return [
    { figure: "mean", computed: mean(readings), published: average, allowed: toDigits(average, 15) },
    {
      figure: "standard deviation",
      computed: sampleStandardDeviation(readings),
      published: standardDeviation,
      allowed: toDigits(standardDeviation, digits),
    },
  ];
}

/** Straight lines, means and standard deviations of certified data. */
export const nistExamples: readonly PublishedExample[] = [
  {
    name: "straight line",
    source: source("Norris"),
    compare: () => {
      const published = {
        ...{ slope: 1.00211681802045, slopeStdError: 0.429796848199937e-3, intercept: -0.262323073774029 },
        ...{ interceptStdError: 0.232818234301152, residualStdDev: 0.884796396144373, rSquared: 0.999993745883712 },
      };
      return certified(published, fitLine(norris.x, norris.y));
    },
  },
  {
    name: "line through the origin",
    source: source("NoInt1"),
    compare: () => {
      const published = {
        ...{ slope: 2.07438016528926, slopeStdError: 0.0165289256198347 },
        ...{ residualStdDev: 3.56753034006338, rSquared: 0.999365492298663 },
      };
      return certified(published, fitLineThrough(noInt1.x, noInt1.y));
    },
  },
  {
    name: "scatter of readings that hardly scatter",
    source: source("Mavro"),
    compare: () => scatterOf(mavro, { mean: 2.001856, standardDeviation: 0.000429123454003053 }, 12),
  },
  {
    name: "scatter far from zero",
    source: source("NumAcc4"),
    // The decimals themselves lose all but 8 digits: as doubles they scatter by 0.10000000055879354.
    compare: () =>
      scatterOf(seriesOf(10000000.2, 10000000.1, 10000000.3, 500), { mean: 10000000.2, standardDeviation: 0.1 }, 8.2),
  },
];
