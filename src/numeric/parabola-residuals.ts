import { centre } from "./centre.ts";
import { fitLine } from "./fit-line.ts";
import { greatestOf } from "./least-and-greatest.ts";
import { lineValue } from "./line-value.ts";

/**
 * What is left of values when their least-squares parabola is taken off.
 *
 * @param abscissas array of n, three different ones at least
 * @param ordinates array of n
 * @returns residuals in the order of the values, unit of the ordinates
 * Source: least squares by orthogonal polynomials: the square less its own line, then the values on that.
 * @example parabolaResiduals([0, 1, 2, 3], [0, 1, 4, 9]) // [0, 0, 0, 0]
 */
export function parabolaResiduals(abscissas: readonly number[], ordinates: readonly number[]): readonly number[] {
  const { deviations } = centre(abscissas);
  const scale = greatestOf(deviations.map(Math.abs));
  const places = deviations.map((deviation) => deviation / scale);
  const bends = lineResiduals(
    places,
    places.map((place) => place * place),
  );
  const errors = lineResiduals(places, ordinates);
  const bend = productOf(bends, errors) / productOf(bends, bends);
  return errors.map((error, place) => error - bend * (bends[place] as number));
}

function lineResiduals(abscissas: readonly number[], ordinates: readonly number[]): readonly number[] {
  const line = fitLine(abscissas, ordinates);
  return ordinates.map((ordinate, place) => ordinate - lineValue(line, abscissas[place] as number));
}

function productOf(some: readonly number[], others: readonly number[]): number {
  return some.reduce((sum, one, place) => sum + one * (others[place] as number), 0);
}
