import { expect, test } from "vitest";
import { type MonteCarloTask, monteCarlo } from "../../../src/analysis/uncertainty/monte-carlo.ts";
import { sampleStandardDeviation } from "../../../src/numeric/sample-standard-deviation.ts";

const seed = Uint8Array.from({ length: 32 }, (_, index) => (index * 57 + 3) % 256);
const task: MonteCarloTask = Object.freeze({
  inputs: Object.freeze([Object.freeze({ shape: "rectangular", location: 5, scale: 2 } as const)]),
  model: ([x]: readonly number[]) => x!,
  draws: 100_000,
  seed,
  stream: 0,
  coverageProbability: 0.95,
});

test("a rectangular quantity of 5 ± 2 has mean 5, deviation 1.155, and a shortest interval 3.8 wide", () => {
  const { mean, standardDeviation, shortest, symmetric } = monteCarlo(task);
  // Four standard errors: s/√n; s·√((κ − 1)/(4n)) with κ = 9/5; ends of the symmetric interval √(0.025·0.975/n)·4.
  expect(Math.abs(mean - 5)).toBeLessThan((4 * 1.155) / Math.sqrt(100_000));
  expect(Math.abs(standardDeviation - 2 / Math.sqrt(3))).toBeLessThan(4 * 1.155 * Math.sqrt(0.8 / 4e5));
  expect(Math.abs(shortest.high - shortest.low - 3.8)).toBeLessThan(0.02);
  expect(Math.abs(symmetric.low - 3.1)).toBeLessThan(16 * Math.sqrt((0.025 * 0.975) / 100_000));
  expect(Math.abs(symmetric.high - 6.9)).toBeLessThan(16 * Math.sqrt((0.025 * 0.975) / 100_000));
});

test("the same seed and stream give the same numbers, another stream gives others", () => {
  expect(monteCarlo(task)).toEqual(monteCarlo(task));
  expect(monteCarlo({ ...task, stream: 1 }).mean).not.toBe(monteCarlo(task).mean);
  expect(monteCarlo({ ...task, seed: seed.toReversed() }).mean).not.toBe(monteCarlo(task).mean);
});

test("mean and deviation are those of the drawn values, with divisor n − 1", () => {
  const { mean, standardDeviation, sorted } = monteCarlo({ ...task, draws: 50 });
  expect(sorted).toHaveLength(50);
  expect(Math.abs(standardDeviation / sampleStandardDeviation([...sorted]) - 1)).toBeLessThan(1e-14);
  expect(Math.abs(mean / (sorted.reduce((total, value) => total + value, 0) / 50) - 1)).toBeLessThan(1e-14);
});

test("values come to the model in the order of the inputs", () => {
  const { mean } = monteCarlo({
    ...task,
    inputs: [
      { shape: "normal", location: 100, scale: 0 },
      { shape: "normal", location: 7, scale: 0 },
    ],
    model: ([first, second]) => first! - second!,
    draws: 100,
  });
  expect(mean).toBe(93);
});

test("an offset of ten million costs the deviation no digits", () => {
  const at = (location: number) =>
    monteCarlo({ ...task, inputs: [{ shape: "rectangular", location, scale: 2 }], draws: 10_000 });
  // Each value is stored to 1e-9 there.
  expect(Math.abs(at(1e7).standardDeviation - at(0).standardDeviation)).toBeLessThan(1e-9);
  expect(Math.abs(at(1e7).mean - 1e7 - at(0).mean)).toBeLessThan(2e-9);
});

test("too few draws, inputs and results that are not finite are refused", () => {
  for (const draws of [0, 1, 1.5, Number.NaN]) expect(() => monteCarlo({ ...task, draws })).toThrow(RangeError);
  const unusable = { shape: "normal", location: Number.NaN, scale: 1 } as const;
  expect(() => monteCarlo({ ...task, inputs: [unusable] })).toThrow("location or scale");
  for (const result of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
    expect(() => monteCarlo({ ...task, model: () => result })).toThrow(RangeError);
});
