import { drawFrom, type StandardShape } from "../../numeric/draw-from.ts";
import { type RandomStream, randomStream } from "../../numeric/random-stream.ts";
import { type CoverageInterval, shortestInterval, symmetricInterval } from "../../numeric/shortest-interval.ts";

/** One input quantity: its shape about 0, multiplied by scale and moved to location, both in its own unit. */
export type MonteCarloInput = StandardShape & { readonly location: number; readonly scale: number };

/** What is drawn, how it is combined, how often, from which randomness, and for which share of the results. */
export type MonteCarloTask = {
  readonly inputs: readonly MonteCarloInput[];
  /** Gets one value of each input, in their order; the list is used again for the next draw, so it must not be kept. */
  readonly model: (values: readonly number[]) => number;
  readonly draws: number;
  readonly seed: Uint8Array | readonly number[];
  readonly stream: number;
  readonly coverageProbability: number;
};

/** What the draws of a model show, in the unit of the model; `sorted` are all its values in ascending order. */
export type MonteCarloResult = {
  readonly mean: number;
  readonly standardDeviation: number;
  readonly shortest: CoverageInterval;
  readonly symmetric: CoverageInterval;
  readonly sorted: Float64Array;
};

/**
 * Propagates distributions through a model by drawing from them many times.
 *
 * @param task inputs; model of one value each; number of draws >= 2 (10⁶ give a 95 % interval to about 0.1 % of its
 *   width; at least 10⁴/(1 − p) are wanted); seed and stream as for `randomStream`; 0 < coverage probability < 1
 * @returns mean, standard deviation, shortest and probabilistically symmetric interval; the same task gives the same
 *   numbers on every machine but for the last digits, which are those of the machine's own logarithm and sine
 * Faults: `RangeError` for too few draws, a location or scale that is not finite, what `randomStream` or `drawFrom`
 *   refuse, or a model that gives a number that is not finite.
 * Source: JCGM 101:2008, clause 7 (7.2.2 number of draws, 7.6 estimate and standard uncertainty, 7.7 intervals).
 * @example monteCarlo({ inputs: [{ shape: "rectangular", location: 5, scale: 2 }], model: ([x]) => x, draws: 100000,
 *   seed: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16], stream: 0, coverageProbability: 0.95
 *   }).standardDeviation.toFixed(2) // "1.15", 2/√3 but for chance
 */
export function monteCarlo(task: MonteCarloTask): MonteCarloResult {
  const { draws, coverageProbability } = task;
  if (!Number.isSafeInteger(draws) || draws < 2) throw new RangeError(`${draws} draws, at least 2 are needed`);
  for (const { location, scale } of task.inputs) {
    if (!Number.isFinite(location + scale)) throw new RangeError("a location or scale is not finite");
  }
  const sorted = drawnValues(task, randomStream(task.seed, task.stream)).sort();
  const mean = meanOf(sorted);
  return {
    mean,
    standardDeviation: standardDeviationOf(sorted, mean),
    shortest: shortestInterval(sorted, coverageProbability),
    symmetric: symmetricInterval(sorted, coverageProbability),
    sorted,
  };
}

function drawnValues({ inputs, model, draws }: MonteCarloTask, stream: RandomStream): Float64Array {
  const results = new Float64Array(draws);
  const values = inputs.map(() => 0);
  for (let draw = 0; draw < draws; draw++) {
    for (const [index, input] of inputs.entries()) {
      values[index] = input.location + input.scale * drawFrom(input, stream);
    }
    results[draw] = model(values);
  }
  return results;
}

// Summed in ascending order as deviations from the middle value, so that a large offset costs no digits.
function meanOf(sorted: Float64Array): number {
  const middle = sorted[sorted.length >> 1]!;
  return middle + sorted.reduce((total, value) => total + (value - middle), 0) / sorted.length;
}

function standardDeviationOf(sorted: Float64Array, mean: number): number {
  return Math.sqrt(sorted.reduce((total, value) => total + (value - mean) ** 2, 0) / (sorted.length - 1));
}
