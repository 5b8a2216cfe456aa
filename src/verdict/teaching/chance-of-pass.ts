import type { RangeEnds } from "../../analysis/figures/two-constant-correction.ts";
import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { spanOf } from "../../model/range.ts";
import { gapShare } from "../../model/test-points.ts";
import { drawFrom } from "../../numeric/draw-from.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { normalCumulative } from "../../numeric/normal-distribution.ts";
import { parabolaWeights } from "../../numeric/parabola-weights.ts";
import { type RandomStream, randomStream } from "../../numeric/random-stream.ts";
import { type ErrorModel, errorModel, type ModelReading } from "./error-model.ts";

/** One reading of the plan: what was read, and between which errors the rule accepts it or the mean that it is part of. */
export type PlannedReading = ModelReading & { acceptance: ToleranceLimits };

/** How the new readings are judged: each by itself, or the mean of a direction at a test point. */
export type JudgedBy = "reading" | "mean";

const normal = { shape: "normal" } as const;

/** A chance that was drawn, and from how many draws. */
export type DrawnChance = { chance: number; draws: number };

/** Where all hangs on what is drawn, the standard deviation of the mean is 0.022 after the most draws. */
const [fewestDraws, mostDraws] = [100, 500];

/** The standard deviation of the mean at which no more is drawn. */
const closeEnough = 0.01;

/**
 * The chance that new readings pass after the sensor is taught anew at the two ends of its range.
 *
 * The whole procedure is played through: the curve that stays, drawn within what the readings leave open; a scatter drawn
 * within its own uncertainty; a teach at either end, each with the scatter of one reading; what each cycle of new readings
 * shares. Given these, the scatter of the single readings leaves a chance that needs no drawing: the product of what the
 * normal distribution gives each of them to lie within its limits, or the mean of each direction at each test point.
 * It is drawn 100 to 500 times: until the chance would be known within 0.02 (two standard deviations of the mean) even
 * if the next draw came out the other way.
 *
 * @param readings of the record, those left out that say nothing of the curve; distances in one unit
 * @param range its ends
 * @param judgedBy the rule
 * @param seed 16 bytes or more, see `randomStream`
 * @returns mean over the draws, 0 to 1, and their number; undefined where nothing tells the scatter
 * Source: JCGM 101:2008, propagation of distributions by simulation; the mean of conditional chances after D. Blackwell,
 * Ann. Math. Statist. 18, 105 (1947); own choice of the model (`errorModel`).
 * @example chanceOfPass([], { rangeLower: 0, rangeUpper: 100 }, "reading", new Uint8Array(16).fill(7)) // undefined
 */
export function chanceOfPass(
  readings: readonly PlannedReading[],
  range: RangeEnds,
  judgedBy: JudgedBy,
  seed: Uint8Array,
): DrawnChance | undefined {
  const model = errorModel(readings);
  if (model === undefined) return undefined;
  const stream = randomStream(seed, 0);
  const plan = planOf(readings, model, range, judgedBy);
  let [draws, chance, squares] = [0, 0, 0];
  while (draws < fewestDraws || (draws < mostDraws && deviationOfMean(draws + 1, chance, squares) > closeEnough)) {
    const drawn = chanceGiven(model, plan, stream);
    const before = drawn - chance;
    draws += 1;
    chance += before / draws;
    squares += before * (drawn - chance);
  }
  return { chance, draws };
}

/** Of so many draws, the last of which came out other than their mean so far. */
function deviationOfMean(draws: number, chance: number, squares: number): number {
  const other = chance < 0.5 ? 1 : 0;
  const all = squares + ((other - chance) ** 2 * (draws - 1)) / draws;
  return Math.sqrt(all / (draws - 1) / draws);
}

type Plan = {
  /** Place in the range, 0 to 1, of each reading; its group and its cycle in the model. */
  readings: readonly { place: number; group: number; cycle: number; low: number; high: number }[];
  cycles: number;
  /** What each group counts in the curve at the lower and the upper end of the range, where the sensor is taught. */
  weightsAtEnds: readonly [readonly number[], readonly number[]];
  /** Of each group: how many readings, and the limits that all of them have. */
  groups: readonly { size: number; low: number; high: number }[];
  judgedBy: JudgedBy;
};

function planOf(
  readings: readonly PlannedReading[],
  { groups }: ErrorModel,
  range: RangeEnds,
  judgedBy: JudgedBy,
): Plan {
  const span = spanOf(range);
  const groupOf = new Map(groups.map(({ point, direction }, place) => [`${point} ${direction}`, place]));
  const cycles = [...groupedBy(readings, ({ cycle }) => cycle).keys()];
  const points = groups.map(({ point }) => point);
  const planned = readings.map(({ point, direction, cycle, reference, acceptance: { low, high } }) => ({
    place: (reference - range.rangeLower) / span,
    group: groupOf.get(`${point} ${direction}`) as number,
    cycle: cycles.indexOf(cycle),
    low,
    high,
  }));
  const byGroup = groupedBy(planned, ({ group }) => group);
  const ofGroup = (place: number) => byGroup.get(place) ?? [];
  return {
    readings: planned,
    cycles: cycles.length,
    weightsAtEnds: [weightsAt(points, range.rangeLower, span), weightsAt(points, range.rangeUpper, span)],
    groups: groups.map(({ size }, place) => ({
      size,
      low: greatestOf(ofGroup(place).map(({ low }) => low)),
      high: leastOf(ofGroup(place).map(({ high }) => high)),
    })),
    judgedBy,
  };
}

/** With fewer test points a parabola would say more than they do. */
const fewestForParabola = 4;

/**
 * The mean of the groups at an end; where nothing usable was read there, such as signals at their limit, what a parabola
 * through all groups says of it.
 */
function weightsAt(points: readonly number[], end: number, span: number): readonly number[] {
  const nearest = leastOf(points.map((point) => Math.abs(point - end)));
  const isRead = nearest <= gapShare * span || new Set(points).size < fewestForParabola;
  if (!isRead) return parabolaWeights(points, end);
  const count = points.filter((point) => Math.abs(point - end) === nearest).length;
  return points.map((point) => (Math.abs(point - end) === nearest ? 1 / count : 0));
}

function weighted(values: Float64Array, weights: readonly number[]): number {
  let sum = 0;
  for (let place = 0; place < values.length; place++) sum += values[place]! * weights[place]!;
  return sum;
}

/** The chance of one draw: everything but the scatter of the single new readings is drawn. */
function chanceGiven(model: ErrorModel, plan: Plan, stream: RandomStream): number {
  const factor = scatterFactor(model.degreesOfFreedom, stream);
  const [within, between] = [factor * model.within, factor * model.between];
  const { groups } = model;
  const curve = new Float64Array(groups.length);
  for (let place = 0; place < groups.length; place++) {
    const { left, uncertainty } = groups[place]!;
    curve[place] = left + factor * uncertainty * drawFrom(normal, stream);
  }
  const [atLower, atUpper] = plan.weightsAtEnds.map(
    (weights) => weighted(curve, weights) + between * drawFrom(normal, stream) + within * drawFrom(normal, stream),
  );
  const offsets = new Float64Array(plan.cycles);
  for (let cycle = 0; cycle < plan.cycles; cycle++) offsets[cycle] = between * drawFrom(normal, stream);
  const expected = expectedErrors(plan.readings, { curve, offsets, atLower: atLower!, slope: atUpper! - atLower! });
  return plan.judgedBy === "reading" ? chanceOfReadings(plan, expected, within) : chanceOfMeans(plan, expected, within);
}

type Drawn = { curve: Float64Array; offsets: Float64Array; atLower: number; slope: number };

/** What a reading is expected to be off, without its own scatter. */
function expectedErrors(readings: Plan["readings"], { curve, offsets, atLower, slope }: Drawn): Float64Array {
  const errors = new Float64Array(readings.length);
  for (let index = 0; index < readings.length; index++) {
    const { place, group, cycle } = readings[index]!;
    errors[index] = curve[group]! - (atLower + slope * place) + offsets[cycle]!;
  }
  return errors;
}

/** Less than this no mean of the draws shows. */
const noChance = 1e-9;

function chanceOfReadings({ readings }: Plan, expected: Float64Array, within: number): number {
  let chance = 1;
  for (let index = 0; index < readings.length; index++) {
    const { low, high } = readings[index]!;
    chance *= chanceInside(low, high, expected[index]!, within);
    if (chance < noChance) return 0;
  }
  return chance;
}

function chanceOfMeans({ readings, groups }: Plan, expected: Float64Array, within: number): number {
  const sums = new Float64Array(groups.length);
  for (let index = 0; index < readings.length; index++) sums[readings[index]!.group]! += expected[index]!;
  let chance = 1;
  for (let place = 0; place < groups.length; place++) {
    const { size, low, high } = groups[place]!;
    chance *= chanceInside(low, high, sums[place]! / size, within / Math.sqrt(size));
    if (chance < noChance) return 0;
  }
  return chance;
}

/** Beyond it lies 4e-11 of a normal distribution: of a thousand readings together less than a mean of draws shows. */
const reach = 6.5;

/** That a normal error of this mean and standard deviation lies within limits. */
function chanceInside(low: number, high: number, middle: number, deviation: number): number {
  if (!(deviation > 0)) return middle >= low && middle <= high ? 1 : 0;
  const [below, above] = [(low - middle) / deviation, (high - middle) / deviation];
  if (below > reach || above < -reach) return 0;
  return 1 - (below < -reach ? 0 : normalCumulative(below)) - (above > reach ? 0 : normalCumulative(-above));
}

/** √(ν/χ²): the true scatter over the one that was found, drawn. */
function scatterFactor(degreesOfFreedom: number, stream: RandomStream): number {
  // χ² after E. B. Wilson and M. M. Hilferty (1931), within 1 % from three degrees of freedom on.
  if (degreesOfFreedom < 3) {
    const squares = Array.from({ length: Math.max(1, Math.round(degreesOfFreedom)) }, () =>
      drawFrom(normal, stream),
    ).reduce((sum, value) => sum + value * value, 0);
    return Math.sqrt(Math.max(1, Math.round(degreesOfFreedom)) / squares);
  }
  const spread = 2 / (9 * degreesOfFreedom);
  const root = 1 - spread + Math.sqrt(spread) * drawFrom(normal, stream);
  return Math.max(root, 0.05) ** -1.5;
}
