import { expect, test } from "vitest";
import { drawFrom, drawsFrom, type StandardShape } from "../../src/numeric/draw-from.ts";
import { normalCumulative } from "../../src/numeric/normal-distribution.ts";
import { randomStream } from "../../src/numeric/random-stream.ts";
import { studentTQuantile } from "../../src/numeric/student-t-quantile.ts";

const seed = Uint8Array.from({ length: 32 }, (_, index) => (index * 89 + 41) % 256);
const COUNT = 200_000;

type Known = {
  readonly shape: StandardShape;
  readonly cumulative: (x: number) => number;
  /** Variance and fourth moment about 0; null where the fourth has no bound and sampling says nothing of the variance. */
  readonly moments: readonly [number, number] | null;
};

const trapezoid = (edge: number) => (x: number) => {
  const distance = Math.abs(x);
  const tail = distance <= edge ? 0.5 - distance / (1 + edge) : (1 - distance) ** 2 / (2 * (1 - edge ** 2));
  return x < 0 ? tail : 1 - tail;
};
const edge = 0.4;
// Of two rectangular ones with half-widths a and b: variances a²/3 and b²/3, fourth moments a⁴/5 and b⁴/5.
const [a, b] = [(1 + edge) / 2, (1 - edge) / 2];

const known: readonly Known[] = [
  { shape: { shape: "normal" }, cumulative: normalCumulative, moments: [1, 3] },
  { shape: { shape: "rectangular" }, cumulative: (x) => (1 + x) / 2, moments: [1 / 3, 1 / 5] },
  { shape: { shape: "triangular" }, cumulative: trapezoid(0), moments: [1 / 6, 1 / 15] },
  { shape: { shape: "arcsine" }, cumulative: (x) => 0.5 + Math.asin(x) / Math.PI, moments: [1 / 2, 3 / 8] },
  {
    shape: { shape: "trapezoidal", edgeParameter: edge },
    cumulative: trapezoid(edge),
    moments: [(1 + edge ** 2) / 6, a ** 4 / 5 + b ** 4 / 5 + (6 * a ** 2 * b ** 2) / 9],
  },
  {
    shape: { shape: "Student t", degreesOfFreedom: 1 },
    cumulative: (x) => 0.5 + Math.atan(x) / Math.PI,
    moments: null,
  },
  {
    shape: { shape: "Student t", degreesOfFreedom: 3 },
    cumulative: (x) => 0.5 + (x / Math.sqrt(3) / (1 + x ** 2 / 3) + Math.atan(x / Math.sqrt(3))) / Math.PI,
    moments: null,
  },
  // Fourth moment 3ν²/((ν − 2)(ν − 4)); the distribution function is checked through its quantiles below.
  { shape: { shape: "Student t", degreesOfFreedom: 30 }, cumulative: () => Number.NaN, moments: [30 / 28, 2700 / 728] },
];

test.each(known.filter(({ moments }) => moments !== null))(
  "mean and variance of $shape are right to four standard errors",
  ({ shape, moments }) => {
    const [variance, fourth] = moments!;
    const draws = drawsFrom(shape, randomStream(seed, 1), COUNT);
    const mean = draws.reduce((total, value) => total + value, 0) / COUNT;
    const square = draws.reduce((total, value) => total + value ** 2, 0) / COUNT;
    expect(Math.abs(mean)).toBeLessThan(4 * Math.sqrt(variance / COUNT));
    expect(Math.abs(square - variance)).toBeLessThan(4 * Math.sqrt((fourth - variance ** 2) / COUNT));
  },
);

/** Greatest distance between a distribution function and the staircase of the draws. */
function kolmogorovDistance(draws: Float64Array, cumulative: (x: number) => number): number {
  return draws.toSorted().reduce((greatest, value, index) => {
    const expected = cumulative(value);
    return Math.max(greatest, expected - index / draws.length, (index + 1) / draws.length - expected);
  }, 0);
}

// Kolmogorov: the distance of n draws stays under 1.95/√n for 99.9 % of all seeds.
const bound = 1.95 / Math.sqrt(COUNT);

test.each(known.filter(({ cumulative }) => !Number.isNaN(cumulative(0))))(
  "the distribution function of $shape is met within the Kolmogorov–Smirnov bound",
  ({ shape, cumulative }) => {
    expect(kolmogorovDistance(drawsFrom(shape, randomStream(seed, 2), COUNT), cumulative)).toBeLessThan(bound);
  },
);

test("that bound would find a spread that is wrong by 2 %", () => {
  const draws = drawsFrom({ shape: "normal" }, randomStream(seed, 2), COUNT);
  expect(kolmogorovDistance(draws, (x) => normalCumulative(x * 1.02))).toBeGreaterThan(bound);
});

test.each([1.5, 4.5, 30, 1000])("95 % of Student's t at %d degrees of freedom lie inside its coverage factor", (nu) => {
  const limit = studentTQuantile(0.975, nu);
  const draws = drawsFrom({ shape: "Student t", degreesOfFreedom: nu }, randomStream(seed, 3), COUNT);
  const inside = draws.filter((value) => Math.abs(value) <= limit).length / COUNT;
  expect(Math.abs(inside - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / COUNT));
});

test("a rectangular draw is the uniform number spread over −1 to 1", () => {
  const fixed = { uniform: () => 0.75 };
  expect(drawFrom({ shape: "rectangular" }, fixed)).toBe(0.5);
  expect([...drawsFrom({ shape: "rectangular" }, fixed, 2)]).toEqual([0.5, 0.5]);
});

test("a trapezoid with a top as wide as its base is rectangular", () => {
  expect(drawFrom({ shape: "trapezoidal", edgeParameter: 1 }, { uniform: () => 0.75 })).toBe(0.5);
});

test("parameters that belong to no distribution, and counts that are none, are refused", () => {
  const stream = randomStream(seed, 0);
  for (const degreesOfFreedom of [0.5, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => drawFrom({ shape: "Student t", degreesOfFreedom }, stream)).toThrow(RangeError);
  for (const edgeParameter of [-0.1, 1.1, Number.NaN])
    expect(() => drawFrom({ shape: "trapezoidal", edgeParameter }, stream)).toThrow(RangeError);
  for (const count of [-1, 1.5, Number.NaN])
    expect(() => drawsFrom({ shape: "normal" }, stream, count)).toThrow(RangeError);
});
