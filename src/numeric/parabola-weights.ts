import { centre } from "./centre.ts";
import { greatestOf } from "./least-and-greatest.ts";

/**
 * What each of some values counts in the least-squares parabola through them, read at one place: y(at) = Σ w · y.
 *
 * @param abscissas array of n, three different ones at least
 * @param at the place, inside or outside them
 * @returns array of n weights, of sum 1
 * Source: least squares by orthogonal polynomials 1, x − x̄ and the square less its own line.
 * @example parabolaWeights([0, 1, 2], 3) // [1, -3, 3]
 */
export function parabolaWeights(abscissas: readonly number[], at: number): readonly number[] {
  const { mean: middle, deviations } = centre(abscissas);
  const scale = greatestOf(deviations.map(Math.abs));
  const places = deviations.map((deviation) => deviation / scale);
  const squares = sumOf(places.map((place) => place ** 2));
  const cubes = sumOf(places.map((place) => place ** 3));
  const bend = (place: number) => place ** 2 - squares / places.length - (place * cubes) / squares;
  const bends = sumOf(places.map((place) => bend(place) ** 2));
  const there = (at - middle) / scale;
  return places.map((place) => 1 / places.length + (there * place) / squares + (bend(there) * bend(place)) / bends);
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
