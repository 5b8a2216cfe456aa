import { groupedBy } from "../../model/grouped-by.ts";
import { extremeDeviates } from "../../numeric/extreme-deviates.ts";
import { fitLine } from "../../numeric/fit-line.ts";
import { lineValue } from "../../numeric/line-value.ts";
import { mean } from "../../numeric/mean.ts";
import { median } from "../../numeric/median.ts";
import { rankCorrelation } from "../../numeric/rank-correlation.ts";
import { studentTQuantile } from "../../numeric/student-t-quantile.ts";
import { theilSenLine } from "../../numeric/theil-sen-line.ts";

/** The error of a stage at one reading, percent of span. */
export type PlacedError = { index: number; point: number; input: number; error: number };

/** A reading that its fellows contradict: by how much, percent of span. */
export type WildReading = { index: number; deviation: number };

/** What is smaller than either, percent of span, is left alone. */
export type WildContext = { mattering: number; leastScatter: number };

/** Own choice: residuals about a robust line are not quite those of the test, and a healthy loop should hardly ever be suspected. */
const significance = 0.00001;
const fewest = 5;
const mostPart = 0.1;
const mostOfAll = 3;
const fewestForMiddle = 3;
/** Two-sided chance of finding that the scatter grows where it does not. */
const growthChance = 0.05;
/** Where the line of the sizes comes near 0, a reading counts as if it had this part of the mean size: own choice. */
const leastSize = 0.5;
/** The fellows lie nearer to what is expected there by this factor. */
const fellowsWithin = 1 / 3;

/**
 * The readings that lie far from what all others say, while the readings beside them do not: one echo, one slip, one knock.
 *
 * Judged are the residuals from the line through the medians of the test points, less the median of a test point that was
 * read three times or more, so that a bend is no wild reading. Where their sizes are shown to grow or to shrink along the
 * range, those that the test suspects left out, each is divided by the size of its place, by the least-squares line of the
 * sizes on the input, and the test is made again: far out by one scatter for all is near where all scatter far.
 *
 * @param readings of one stage, without those that are known to be none
 * @param context smallest deviation that matters, what rounding hides
 * @returns the wild readings, farthest first; at most a tenth of all, one at least, three at most
 * Source: generalised extreme Studentised deviate test, NIST/SEMATECH e-Handbook 1.3.5.17.3, on the residuals from the
 *   line of H. Theil and P. K. Sen; sizes: their rank correlation with the input (C. Spearman 1904) beyond Student's t at
 *   95 %, the line after H. Glejser (1969), J. Am. Stat. Assoc. 64, 316; that the fellows have to agree is own choice.
 * @example wildReadings([0, 20, 40, 60, 80, 100].flatMap((input, place) => [0, 1].map((cycle) => ({ index: 2 * place +
 *   cycle, point: input, input, error: place === 2 && cycle === 1 ? 3 : 0.01 * cycle }))), { mattering: 0.5,
 *   leastScatter: 0.01 }).map(({ index }) => index) // [5]
 */
export function wildReadings(
  readings: readonly PlacedError[],
  { mattering, leastScatter }: WildContext,
): readonly WildReading[] {
  if (readings.length < fewest || new Set(middlesOf(readings, ({ input }) => input)).size < fewestPlaces) return [];
  const residuals = residualsOf(readings);
  const most = Math.min(mostOfAll, Math.max(1, Math.floor(mostPart * readings.length)));
  const suspects = extremeDeviates(residuals, most, significance).outliers;
  const judged = overSizes(readings, residuals, suspects) ?? residuals;
  const outliers = judged === residuals ? suspects : extremeDeviates(judged, most, significance).outliers;
  const least = Math.max(mattering, 2 * Math.sqrt(12) * leastScatter);
  const far = outliers.filter((place) => Math.abs(residuals[place]!) > least);
  return far
    .filter((place) => fellowsAgree(readings, judged, place, far) && !isSharedByPoint(readings, residuals, place))
    .map((place) => ({ index: readings[place]!.index, deviation: residuals[place]! }));
}

/** Test points that were read at fewer distances than this have no line. */
const fewestPlaces = 3;

/** Of each test point, in the order in which they are met. */
function middlesOf(readings: readonly PlacedError[], of: (one: PlacedError) => number): readonly number[] {
  return [...groupedBy(readings, ({ point }) => point).values()].map((group) => median(group.map(of)));
}

function residualsOf(readings: readonly PlacedError[]): readonly number[] {
  const byPoint = groupedBy(readings, ({ point }) => point);
  const line = theilSenLine(
    middlesOf(readings, ({ input }) => input),
    middlesOf(readings, ({ error }) => error),
  );
  const offLine = ({ input, error }: PlacedError) => error - line.intercept - line.slope * input;
  const middles = new Map(
    [...byPoint].map(([point, group]) => [point, group.length < fewestForMiddle ? 0 : median(group.map(offLine))]),
  );
  return readings.map((reading) => offLine(reading) - middles.get(reading.point)!);
}

/** Each residual over the size of those of its place; undefined where the sizes are not shown to change along the range. */
function overSizes(
  readings: readonly PlacedError[],
  residuals: readonly number[],
  suspects: readonly number[],
): readonly number[] | undefined {
  const others = readings.map((_, place) => place).filter((place) => !suspects.includes(place));
  if (others.length < fewest) return undefined;
  const inputs = others.map((place) => readings[place]!.input);
  const sizes = others.map((place) => Math.abs(residuals[place]!));
  const freedom = others.length - 2;
  const correlation = rankCorrelation(inputs, sizes);
  const inDeviations = Math.abs(correlation) * Math.sqrt(freedom / (1 - correlation ** 2));
  if (!(inDeviations > studentTQuantile(1 - growthChance / 2, freedom))) return undefined;
  const line = fitLine(inputs, sizes);
  const least = leastSize * mean(sizes);
  return residuals.map((residual, place) => residual / Math.max(least, lineValue(line, readings[place]!.input)));
}

/** The readings of the same test point or, where it was read once, those of its neighbours. */
function fellowsAgree(
  readings: readonly PlacedError[],
  residuals: readonly number[],
  place: number,
  far: readonly number[],
): boolean {
  const { point } = readings[place]!;
  const others = readings.map((_, other) => other).filter((other) => other !== place && !far.includes(other));
  const same = others.filter((other) => readings[other]!.point === point);
  const fellows = same.length > 0 ? same : nearest(readings, point, others);
  const limit = fellowsWithin * Math.abs(residuals[place]!);
  return fellows.length > 0 && median(fellows.map((other) => Math.abs(residuals[other]!))) <= limit;
}

/** As many readings of the same point lie as far off as do not: it is the point that is off, and no one reading of it. */
function isSharedByPoint(readings: readonly PlacedError[], residuals: readonly number[], place: number): boolean {
  const { point } = readings[place]!;
  const others = readings
    .map((_, other) => other)
    .filter((other) => other !== place && readings[other]!.point === point);
  const limit = fellowsWithin * Math.abs(residuals[place]!);
  const alike = others.filter((other) => Math.abs(residuals[other]! - residuals[place]!) <= limit);
  return alike.length > 0 && 2 * alike.length >= others.length;
}

function nearest(readings: readonly PlacedError[], point: number, others: readonly number[]): readonly number[] {
  const points = [...new Set(others.map((other) => readings[other]!.point))].sort(
    (one, other) => Math.abs(one - point) - Math.abs(other - point),
  );
  return others.filter((other) => points.slice(0, 2).includes(readings[other]!.point));
}
