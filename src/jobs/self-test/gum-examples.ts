import { combineBudget, contribution } from "../../analysis/uncertainty/budget.ts";
import { fitLine } from "../../numeric/fit-line.ts";
import { lineStandardUncertainty, lineValue } from "../../numeric/line-value.ts";
import { mean } from "../../numeric/mean.ts";
import { sampleStandardDeviation } from "../../numeric/sample-standard-deviation.ts";
import { studentTQuantile } from "../../numeric/student-t-quantile.ts";
import { type Comparison, type PublishedExample, printedTo } from "./published-example.ts";

/** JCGM 100:2008, annex H.1: an end gauge, in nm; each standard uncertainty with its degrees of freedom. */
const endGauge = [
  ...[
    { value: 25, degreesOfFreedom: 18 },
    { value: 5.8, degreesOfFreedom: 24 },
  ],
  ...[
    { value: 3.9, degreesOfFreedom: 5 },
    { value: 6.7, degreesOfFreedom: 8 },
  ],
  ...[
    { value: 2.88679, degreesOfFreedom: 50 },
    { value: 16.599, degreesOfFreedom: 2 },
  ],
] as const;

/** JCGM 100:2008, table H.2: voltage, current and phase, read five times at once. */
export const impedance = {
  volts: [5.007, 4.994, 5.005, 4.99, 4.999],
  milliamps: [19.663, 19.639, 19.64, 19.685, 19.678],
  radians: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
} as const;

/** JCGM 100:2008, table H.6: what a thermometer is to be corrected by. */
export const thermometer = {
  celsius: [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511],
  corrections: [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16],
} as const;

function endGaugeBudget(): readonly Comparison[] {
  const budget = combineBudget(
    endGauge.map(({ value, degreesOfFreedom }) =>
      contribution({ source: "H.1", value, unit: "nm", distribution: "normal", divisor: 1, degreesOfFreedom }),
    ),
  );
  const truncated = Math.floor(budget.effectiveDegreesOfFreedom);
  return [
    { figure: "u", computed: budget.combinedUncertainty, published: 32, allowed: printedTo(1) },
    { figure: "ν, cut to a whole number", computed: truncated, published: 16, allowed: 0 },
    { figure: "k at 99 %", computed: studentTQuantile(0.995, truncated), published: 2.92, allowed: printedTo(0.01) },
  ];
}

function impedanceReadings(): readonly Comparison[] {
  const { volts, milliamps, radians } = impedance;
  return [
    ...meanAndUncertainty("V", volts, [4.999, 0.0001], [0.0032, 0.0001]),
    ...meanAndUncertainty("I", milliamps, [19.661, 0.0001], [0.0095, 0.0001]),
    ...meanAndUncertainty("φ", radians, [1.04446, 0.00001], [0.00075, 0.00001]),
    correlated("r(V, I)", volts, milliamps, -0.36),
    correlated("r(V, φ)", volts, radians, 0.86),
    correlated("r(I, φ)", milliamps, radians, -0.65),
  ];
}

type Printed = readonly [published: number, lastDigit: number];

function meanAndUncertainty(
  name: string,
  readings: readonly number[],
  [average, averageDigit]: Printed,
  [uncertainty, uncertaintyDigit]: Printed,
): readonly Comparison[] {
  const ofMean = sampleStandardDeviation(readings) / Math.sqrt(readings.length);
  return [
    { figure: name, computed: mean(readings), published: average, allowed: printedTo(averageDigit) },
    { figure: `u(${name})`, computed: ofMean, published: uncertainty, allowed: printedTo(uncertaintyDigit) },
  ];
}

/** The slopes of either list over the other multiply to r². */
function correlated(figure: string, one: readonly number[], other: readonly number[], published: number): Comparison {
  const slope = fitLine(one, other).slope;
  const computed = Math.sign(slope) * Math.sqrt(slope * fitLine(other, one).slope);
  return { figure, computed, published, allowed: printedTo(0.01) };
}

function thermometerLine(): readonly Comparison[] {
  const fit = fitLine(
    thermometer.celsius.map((celsius) => celsius - 20),
    thermometer.corrections,
  );
  const covariance = fit.covariance ?? Number.NaN;
  const [ofIntercept, ofSlope] = [fit.interceptStdError ?? Number.NaN, fit.slopeStdError ?? Number.NaN];
  const at30 = lineStandardUncertainty(fit, 10) ?? Number.NaN;
  return [
    { figure: "intercept", computed: fit.intercept, published: -0.1712, allowed: printedTo(0.0001) },
    { figure: "u of it", computed: ofIntercept, published: 0.0029, allowed: printedTo(0.0001) },
    { figure: "slope", computed: fit.slope, published: 0.00218, allowed: printedTo(0.00001) },
    { figure: "u of it", computed: ofSlope, published: 0.00067, allowed: printedTo(0.00001) },
    { figure: "r", computed: covariance / (ofIntercept * ofSlope), published: -0.93, allowed: printedTo(0.001) },
    { figure: "b(30 °C)", computed: lineValue(fit, 10), published: -0.1494, allowed: printedTo(0.0001) },
    { figure: "u of it", computed: at30, published: 0.0041, allowed: printedTo(0.0001) },
  ];
}

/** Worked examples of the Guide to the expression of uncertainty in measurement. */
export const gumExamples: readonly PublishedExample[] = [
  { name: "end gauge: budget, ν and k", source: "JCGM 100:2008 (GUM), H.1", compare: endGaugeBudget },
  {
    name: "impedance: means, u and correlations of what was read",
    source: "JCGM 100:2008 (GUM), H.2",
    compare: impedanceReadings,
  },
  { name: "thermometer: line and what it says", source: "JCGM 100:2008 (GUM), H.3", compare: thermometerLine },
];
