import { expect, test } from "vitest";
import { combineBudget, contribution } from "../../src/analysis/uncertainty/budget.ts";
import { monteCarlo } from "../../src/analysis/uncertainty/monte-carlo.ts";
import { monteCarloBudget } from "../../src/analysis/uncertainty/monte-carlo-budget.ts";
import { howMany } from "../how-many.ts";
import { readExpected } from "./read-data.ts";

const seed = Uint8Array.from({ length: 32 }, (_, index) => (index * 167 + 13) % 256);
/** What is allowed shrinks with their number. */
const draws = howMany(300_000, 1_000_000);

type Additive = {
  readonly deviations: readonly number[];
  readonly shape: "normal" | "rectangular";
  readonly standardUncertainty: number;
  readonly end: number;
  readonly densityAtEnd: number;
};
const additive = Object.entries(readExpected<Record<string, Additive>>("jcgm-101-clause-9"));

const inputsOf = ({ deviations, shape }: Additive) =>
  deviations.map((deviation) => ({
    shape,
    location: 0,
    scale: shape === "normal" ? deviation : deviation * Math.sqrt(3),
  }));

test("the three additive models were read", () => expect(additive).toHaveLength(3));

test.each(additive)("JCGM 101 %s: mean, standard uncertainty and both 95 % intervals", (_, example) => {
  const { mean, standardDeviation, shortest, symmetric } = monteCarlo({
    inputs: inputsOf(example),
    model: (values) => values.reduce((total, value) => total + value, 0),
    draws,
    seed,
    stream: 0,
    coverageProbability: 0.95,
  });
  const { standardUncertainty, end, densityAtEnd } = example;
  // Four standard errors each: u/√n; u/√(2n), as for a normal quantity, whose tails are the longest here; of an end
  // √(0.025·0.975/n)/f, f the density there; of half the width of an interval √(0.95·0.05/n)/(2f).
  expect(Math.abs(mean)).toBeLessThan((4 * standardUncertainty) / Math.sqrt(draws));
  expect(Math.abs(standardDeviation - standardUncertainty)).toBeLessThan(
    (4 * standardUncertainty) / Math.sqrt(2 * draws),
  );
  const ofEnd = Math.sqrt((0.025 * 0.975) / draws) / densityAtEnd;
  expect(Math.abs(symmetric.high - end)).toBeLessThan(4 * ofEnd);
  expect(Math.abs(symmetric.low + end)).toBeLessThan(4 * ofEnd);
  const ofHalfWidth = Math.sqrt((0.95 * 0.05) / draws) / (2 * densityAtEnd);
  expect(Math.abs((shortest.high - shortest.low) / 2 - end)).toBeLessThan(4 * ofHalfWidth);
  expect(Math.abs((symmetric.high - symmetric.low) / 2 - end)).toBeLessThan(4 * ofHalfWidth);
});

test("JCGM 101 9.2.4: one dominant rectangular input; the budget's k holds where a normal one would give 19.9", () => {
  const lines = [1, 1, 1, 10].map((deviation) =>
    contribution({
      source: "input",
      value: deviation * Math.sqrt(3),
      unit: "1",
      distribution: "rectangular",
    }),
  );
  const budget = combineBudget(lines);
  const found = monteCarloBudget(budget, draws, seed, 0);
  expect(budget.coverageBasis).toBe("one dominant rectangular contribution");
  expect(Math.abs(found.halfWidth - 17.01581409986667)).toBeLessThan(4 * found.halfWidthUncertainty);
  // u = 10 (two digits), so δ = 0.5; 0.95·√3·10.149 = 16.70.
  expect(found.numericalTolerance).toBe(0.5);
  expect(found.agrees).toBe(true);
  expect(Math.abs(1.959963984540054 * budget.combinedUncertainty - found.halfWidth)).toBeGreaterThan(2.8);
});

test.each([
  [0, 0],
  [0.01, 0],
  [0.05, 0],
  [0.03, 0.04],
])("JCGM 101 9.4.2: squares of %d and %d, uncertainty 0.005 each, against their exact moments", (x1, x2) => {
  const u = 0.005;
  const { mean, standardDeviation } = monteCarlo({
    inputs: [
      { shape: "normal", location: x1, scale: u },
      { shape: "normal", location: x2, scale: u },
    ],
    model: ([first, second]) => first! ** 2 + second! ** 2,
    draws,
    seed,
    stream: 1,
    coverageProbability: 0.95,
  });
  const square = x1 ** 2 + x2 ** 2;
  const exactDeviation = Math.sqrt(4 * u ** 2 * square + 4 * u ** 4);
  // Four standard errors; the kurtosis is at most 9 (no offset: an exponential quantity), so √(8/(4n)).
  expect(Math.abs(mean - square - 2 * u ** 2)).toBeLessThan((4 * exactDeviation) / Math.sqrt(draws));
  expect(Math.abs(standardDeviation / exactDeviation - 1)).toBeLessThan(4 * Math.sqrt(2 / draws));
});
