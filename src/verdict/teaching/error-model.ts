import type { Direction } from "../../model/calibration-words.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { fitLine } from "../../numeric/fit-line.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { lineValue } from "../../numeric/line-value.ts";
import { mean } from "../../numeric/mean.ts";

/** One reading of an error curve; distances in one unit. */
export type ModelReading = { point: number; direction: Direction; cycle: number; reference: number; indicated: number };

/** A test point in one direction: what its mean leaves of the line, as far as it is no scatter. */
export type ModelGroup = { point: number; direction: Direction; size: number; left: number; uncertainty: number };

/** What of an error curve a teach does not take away: its bend and its gap, and its scatter. */
export type ErrorModel = {
  groups: readonly ModelGroup[];
  /** Standard deviation of a reading within a cycle, and of one cycle from the next. */
  within: number;
  between: number;
  degreesOfFreedom: number;
};

/**
 * What of an error curve stays when it is taught anew: the mean errors about their line, drawn towards the line by as much
 * of them as the scatter explains, and the scatter within and between the cycles.
 *
 * @param readings of one part of the loop
 * @returns the model; undefined for fewer than three readings or test points in one place
 * Source: one-way analysis of variance for the cycles (NIST/SEMATECH e-Handbook 7.4.3); empirical Bayes shrinkage of means
 *   by their own variance (C. Stein); with one cycle the gaps between rising and falling or, where it was read one way, the
 *   residuals of the line tell the scatter.
 * @example errorModel([0, 50, 100].flatMap((reference) => [1, 2].map((cycle) => ({ point: reference, direction: "rising",
 *   cycle, reference, indicated: reference + 1 }))))?.within // 0
 */
export function errorModel(readings: readonly ModelReading[]): ErrorModel | undefined {
  const references = readings.map(({ reference }) => reference);
  if (readings.length < 3 || new Set(readings.map(({ point }) => point)).size < 2) return undefined;
  if (!(greatestOf(references) > leastOf(references))) return undefined;
  const errors = readings.map(({ reference, indicated }) => indicated - reference);
  const line = fitLine(references, errors);
  const residuals = readings.map((reading, place) => ({
    ...reading,
    left: errors[place]! - lineValue(line, reading.reference),
  }));
  const groups = [...groupedBy(residuals, ({ point, direction }) => `${point} ${direction}`).values()];
  const scatter = repeated(groups) ?? fromGaps(residuals) ?? fromLine(residuals);
  if (scatter === undefined) return undefined;
  const single = Math.hypot(scatter.within, scatter.between);
  const means = groups.map((group) => mean(group.map(({ left }) => left)));
  const structure = structureOf(groups, means, scatter);
  return {
    ...scatter,
    groups: groups.map((group, place) => {
      const { point, direction } = group[0]!;
      const noise = single ** 2 / group.length;
      const share = structure === 0 ? 0 : structure / (structure + noise);
      return {
        point,
        direction,
        size: group.length,
        left: share * means[place]!,
        uncertainty: Math.sqrt(share * noise),
      };
    }),
  };
}

type Residual = ModelReading & { left: number };
type ModelScatter = Pick<ErrorModel, "within" | "between" | "degreesOfFreedom">;

function repeated(groups: readonly (readonly Residual[])[]): ModelScatter | undefined {
  const deviations = groups
    .filter(({ length }) => length > 1)
    .flatMap((group) => {
      const middle = mean(group.map(({ left }) => left));
      return group.map(({ cycle, left }) => ({ cycle, deviation: left - middle, size: group.length }));
    });
  if (deviations.length === 0) return undefined;
  const total = sumOfSquares(deviations.map(({ deviation }) => deviation));
  const degreesOfFreedom = groups.reduce((sum, { length }) => sum + length - 1, 0);
  const cycles = [...groupedBy(deviations, ({ cycle }) => cycle).values()].map((group) =>
    group.map(({ deviation }) => deviation),
  );
  const ofCycles = cycles.reduce((sum, group) => sum + group.length * mean(group) ** 2, 0);
  const [freeCycles, each] = [cycles.length - 1, mean(cycles.map(({ length }) => length))];
  const freeWithin = degreesOfFreedom - freeCycles;
  if (freeCycles < 1 || freeWithin < 1)
    return { within: Math.sqrt(total / degreesOfFreedom), between: 0, degreesOfFreedom };
  const meanSquare = (total - ofCycles) / freeWithin;
  const between = Math.max(0, (ofCycles / freeCycles - meanSquare) / each);
  const within = between > 0 ? meanSquare : total / degreesOfFreedom;
  return {
    within: Math.sqrt(within),
    between: Math.sqrt(between),
    degreesOfFreedom: between > 0 ? freeWithin : degreesOfFreedom,
  };
}

/** With one cycle: how unevenly the two directions lie apart. */
function fromGaps(residuals: readonly Residual[]): ModelScatter | undefined {
  const gaps = [...groupedBy(residuals, ({ point }) => point).values()].flatMap((group) => {
    const of = (wanted: Direction) => group.filter(({ direction }) => direction === wanted).map(({ left }) => left);
    const [rising, falling] = [of("rising"), of("falling")];
    return rising.length === 0 || falling.length === 0 ? [] : [mean(rising) - mean(falling)];
  });
  if (gaps.length < 3) return undefined;
  const middle = mean(gaps);
  const variance = sumOfSquares(gaps.map((gap) => gap - middle)) / (gaps.length - 1) / 2;
  return { within: Math.sqrt(variance), between: 0, degreesOfFreedom: gaps.length - 1 };
}

function fromLine(residuals: readonly Residual[]): ModelScatter | undefined {
  const degreesOfFreedom = residuals.length - 2;
  if (degreesOfFreedom < 1) return undefined;
  return {
    within: Math.sqrt(sumOfSquares(residuals.map(({ left }) => left)) / degreesOfFreedom),
    between: 0,
    degreesOfFreedom,
  };
}

/** Variance of the mean errors about the line that scatter does not explain. */
function structureOf(
  groups: readonly (readonly Residual[])[],
  means: readonly number[],
  { within, between }: ModelScatter,
): number {
  const free = groups.length - 2;
  if (free < 1) return 0;
  const found = groups.reduce((sum, { length }, place) => sum + length * means[place]! ** 2, 0) / free;
  const each = mean(groups.map(({ length }) => length));
  return Math.max(0, (found - within ** 2 - between ** 2) / each);
}

function sumOfSquares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}
