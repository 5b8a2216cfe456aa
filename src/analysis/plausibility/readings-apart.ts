import { groupedBy } from "../../model/grouped-by.ts";
import { type Axis, axes } from "../../model/loop-stages.ts";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import { median } from "../../numeric/median.ts";
import { theilSenLine } from "../../numeric/theil-sen-line.ts";
import type { StagedReading } from "../stages/staged-readings.ts";
import { fellowsOf, type Item } from "./fellow-readings.ts";

/** A reading whose columns do not belong together as they do in its fellows. */
export type ApartReading = {
  /** Place in the list of readings, as `StagedReading.index`. */
  index: number;
  /** The column that the others contradict. */
  axis: Axis;
  /** Nothing tells whether it is this column or the reference. */
  isEither: boolean;
  /** Several outputs agree with one another, so that no slip in one column explains it. */
  isOfAll: boolean;
  /** Percent of span by which the column is off, with its sign. */
  deviation: number;
  /** What would fit there, percent of span. */
  expected: number;
  /** From which deviation on it is called apart, percent of span. */
  limit: number;
};

export type ApartContext = {
  /** Smallest deviation that matters, percent of span. */
  mattering: number;
  /** Smallest step of each column, percent of span. */
  steps: Readonly<Partial<Record<Axis, number>>>;
};

type Output = Exclude<Axis, "reference">;
type Deviation = { deviation: number; limit: number };

/** Fewer readings have no fellows. */
const fewest = 4;
/** More than a quarter of the readings, and more than two, are no slips but a pattern. */
const mostPart = 0.25;
const mostFew = 2;
/** Few are taken out one by one, the worst first: a wild reading makes its neighbours look wild. */
const mostOneByOne = 20;
/** Own choice, held against simulated loops: beyond it chance alone does not come in a thousand phases. */
const beyondScatters = 8;
/** A reading at a place where no other was taken is in doubt before its number is looked at. */
const aloneBeyondScatters = 5;
const beyondSteps = 3;

/**
 * The readings that their fellows contradict: those of the same test point, or where there are none the curve through the
 * neighbouring points.
 *
 * Each output is held against the reference. Where all outputs of a reading are off by the same, and its nominal position
 * is too, it is the reference that does not fit.
 *
 * @param readings of one phase, without copies
 * @param context what matters, and how finely the columns were written
 * @returns the readings apart, in order; none where more than a quarter would be
 * Source: own choice; robust scatter by the median of absolute deviations (factor 1.4826 for a normal distribution).
 * @example readingsApart(staged, { mattering: 0.25, steps: {} })[0]?.axis // "signal"
 */
export function readingsApart(readings: readonly StagedReading[], context: ApartContext): readonly ApartReading[] {
  const most = Math.max(mostFew, mostPart * readings.length);
  const atOnce = apartAtOnce(readings, context);
  const rows = rowsOf(atOnce).size;
  if (rows > mostOneByOne) return rows > most ? [] : atOnce;
  const slips: ApartReading[] = [];
  let left = readings;
  for (let apart = atOnce; apart.length > 0; apart = apartAtOnce(left, context)) {
    const worst = apart.reduce((one, other) => (Math.abs(other.deviation) > Math.abs(one.deviation) ? other : one));
    slips.push(...apart.filter(({ index }) => index === worst.index));
    left = left.filter(({ index }) => index !== worst.index);
    if (rowsOf(slips).size > most) return [];
  }
  return slips.toSorted((one, other) => one.index - other.index);
}

const rowsOf = (apart: readonly ApartReading[]): ReadonlySet<number> => new Set(apart.map(({ index }) => index));

/** The readings that all others contradict; among them may be one that its wild neighbour alone contradicts. */
function apartAtOnce(readings: readonly StagedReading[], context: ApartContext): readonly ApartReading[] {
  const outputs = axes.filter((axis): axis is Output => axis !== "reference");
  const byOutput = new Map(outputs.map((output) => [output, deviationsOf(readings, output, context)]));
  const apart = readings.flatMap((reading) => {
    const deviations = outputs.flatMap((output) => {
      const found = byOutput.get(output)?.get(reading.index);
      return found === undefined ? [] : [{ output, ...found }];
    });
    return contradicted(reading, deviations);
  });
  return apart.filter((one) => !isDirectionGap(one, apart, readings));
}

/** Two readings of a point, one in each direction, that are off to opposite sides: that is hysteresis. */
function isDirectionGap(
  one: ApartReading,
  apart: readonly ApartReading[],
  readings: readonly StagedReading[],
): boolean {
  const own = readings.find(({ index }) => index === one.index);
  const atPoint = readings.filter(({ point, index }) => point === own?.point && index !== one.index);
  const [partner] = atPoint;
  if (atPoint.length !== 1 || partner === undefined || partner.direction === own?.direction) return false;
  const other = apart.find(({ index }) => index === partner.index);
  return other !== undefined && other.deviation * one.deviation < 0;
}

/** Which column of a reading the others contradict; several where several outputs differ each in its own way. */
function contradicted(
  { index, reading, percent, point }: StagedReading,
  deviations: readonly ({ output: Output } & Deviation)[],
): readonly ApartReading[] {
  const off = deviations.filter(({ deviation, limit }) => Math.abs(deviation) > limit);
  const [first] = off;
  if (first === undefined) return [];
  const own = { index, isEither: false, isOfAll: false };
  const ofOutput = (one: { output: Output } & Deviation): ApartReading => ({
    ...own,
    axis: one.output,
    deviation: one.deviation,
    expected: (percent[one.output] ?? 0) - one.deviation,
    limit: one.limit,
  });
  const widest = greatestOf(deviations.map(({ limit }) => limit));
  const isShared = deviations.every(({ deviation }) => Math.abs(deviation - first.deviation) <= widest);
  if (off.length < deviations.length || !isShared) return off.map(ofOutput);
  const reference = percent.reference ?? 0;
  const isNamed = reading.point !== undefined;
  const isAtPoint = isNamed && Math.abs(point - reference) <= Math.abs(first.deviation) / 2;
  if (isAtPoint) return [{ ...ofOutput(first), isOfAll: deviations.length > 1 }];
  const ofReference: ApartReading = {
    ...own,
    axis: "reference",
    deviation: -first.deviation,
    expected: reference + first.deviation,
    limit: widest,
  };
  if (isNamed || deviations.length > 1) return [{ ...ofReference, isOfAll: !isNamed }];
  return [{ ...ofOutput(first), isEither: true }];
}

/** How far each reading of an output lies from the nearest of what its fellows say. */
function deviationsOf(
  readings: readonly StagedReading[],
  output: Output,
  context: ApartContext,
): ReadonlyMap<number, Deviation> {
  const { mattering, steps } = context;
  const items = readings.flatMap(({ index, point, direction, percent }): Item[] => {
    const [input, shown] = [percent.reference, percent[output]];
    return input === undefined || shown === undefined ? [] : [{ index, point, direction, input, error: shown - input }];
  });
  if (items.length < fewest) return new Map();
  const fellows = fellowsOf(items);
  const contradicts = witnessed(readings, output, context);
  const points = visitedPoints(items);
  const found = items.map((item) => {
    const { repeats, others } = fellows(item);
    const distances = [...repeats, ...others].map((predicted) => item.error - predicted);
    const [nearest = 0] = distances.toSorted((one, other) => Math.abs(one) - Math.abs(other));
    return { item, deviation: nearest, closest: distances[0] ?? 0, isRepeated: repeats.length > 1 };
  });
  const scatterOf = (distances: readonly number[]) => 1.4826 * median(distances.map(Math.abs));
  // Two readings of a point, one in each direction, lie apart by the hysteresis too, which is no scatter.
  const scatter = Math.min(
    scatterOf(found.map(({ closest }) => closest)),
    Math.SQRT2 * scatterOf(found.map(({ deviation }) => deviation)),
  );
  const step = beyondSteps * ((steps.reference ?? 0) + (steps[output] ?? 0));
  const limitOf = (item: Item, isRepeated: boolean) => {
    if (contradicts(item)) return Math.max(mattering, step);
    if (!points.has(item.point)) return Math.max(mattering, aloneBeyondScatters * scatter, step);
    return Math.max(isRepeated ? mattering : 2 * mattering, beyondScatters * scatter, step);
  };
  return new Map(
    found.map(({ item, deviation, isRepeated }) => [item.index, { deviation, limit: limitOf(item, isRepeated) }]),
  );
}

/** The test points that were read more than once, or all where more than two were not: a reading at none stands alone. */
function visitedPoints(items: readonly Item[]): ReadonlySet<number> {
  const byPoint = [...groupedBy(items, ({ point }) => point)];
  const twice = byPoint.filter(([, { length }]) => length > 1);
  return new Set((twice.length < byPoint.length - 2 ? byPoint : twice).map(([point]) => point));
}

/** Whether another output of the same reading says otherwise, by more than matters, than it does in its fellows. */
function witnessed(
  readings: readonly StagedReading[],
  output: Output,
  { mattering, steps }: ApartContext,
): (item: Item) => boolean {
  const told = new Set<number>();
  for (const witness of axes) {
    if (witness === "reference" || witness === output) continue;
    const pairs = readings.flatMap(({ index, percent }) => {
      const [shown, said] = [percent[output], percent[witness]];
      return shown === undefined || said === undefined ? [] : [{ index, said, apart: shown - said }];
    });
    const said = pairs.map((pair) => pair.said);
    // A witness that says the same of every reading says nothing.
    if (pairs.length < fewest || new Set(said).size < 2) continue;
    const line = theilSenLine(
      said,
      pairs.map(({ apart }) => apart),
    );
    const residuals = pairs.map(({ apart, said }) => apart - line.intercept - line.slope * said);
    const scatter = 1.4826 * median(residuals.map(Math.abs));
    const step = beyondSteps * ((steps[output] ?? 0) + (steps[witness] ?? 0));
    const limit = Math.max(mattering, beyondScatters * scatter, step);
    pairs.forEach(({ index }, place) => {
      if (Math.abs(residuals[place] as number) > limit) told.add(index);
    });
  }
  return ({ index }) => told.has(index);
}
