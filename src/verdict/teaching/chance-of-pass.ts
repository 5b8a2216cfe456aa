import type { RangeEnds } from "../../analysis/figures/two-constant-correction.ts";
import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { spanOf } from "../../model/range.ts";
import { gapShare } from "../../model/test-points.ts";
import { drawFrom } from "../../numeric/draw-from.ts";
import { leastOf } from "../../numeric/least-and-greatest.ts";
import { parabolaWeights } from "../../numeric/parabola-weights.ts";
import { type RandomStream, randomStream } from "../../numeric/random-stream.ts";
import { type ErrorModel, errorModel, type ModelReading } from "./error-model.ts";

/** One reading of the plan: what was read, and between which errors the rule accepts it or the mean that it is part of. */
export type PlannedReading = ModelReading & { acceptance: ToleranceLimits };

/** How the new readings are judged: each by itself, or the mean of a direction at a test point. */
export type JudgedBy = "reading" | "mean";

const normal = { shape: "normal" } as const;

/** Enough for the chance to be known within 0.02 (standard deviation at one half 0.016). */
export const chanceDraws = 1000;

/**
 * The chance that new readings pass after the sensor is taught anew at the two ends of its range.
 *
 * The whole procedure is played through: the curve that stays, drawn within what the readings leave open; a scatter drawn
 * within its own uncertainty; a teach at either end, each with the scatter of one reading; all readings of this record
 * taken anew, cycle by cycle, and judged by the rule.
 *
 * @param readings of the record, those left out that say nothing of the curve; distances in one unit
 * @param range its ends
 * @param judgedBy the rule
 * @param seed 16 bytes or more, see `randomStream`
 * @returns share of `chanceDraws` that pass, 0 to 1; undefined where nothing tells the scatter
 * Source: JCGM 101:2008, propagation of distributions by simulation; own choice of the model (`errorModel`).
 * @example chanceOfPass([], { rangeLower: 0, rangeUpper: 100 }, "reading", new Uint8Array(16).fill(7)) // undefined
 */
export function chanceOfPass(
  readings: readonly PlannedReading[],
  range: RangeEnds,
  judgedBy: JudgedBy,
  seed: Uint8Array,
): number | undefined {
  const model = errorModel(readings);
  if (model === undefined) return undefined;
  const stream = randomStream(seed, 0);
  const plan = planOf(readings, model, range, judgedBy);
  let passed = 0;
  for (let draw = 0; draw < chanceDraws; draw++) if (passes(model, plan, stream)) passed += 1;
  return passed / chanceDraws;
}

type Plan = {
  /** Place in the range, 0 to 1, of each reading; its group and its cycle in the model. */
  readings: readonly { place: number; group: number; cycle: number; low: number; high: number }[];
  cycles: number;
  /** What each group counts in the curve at the lower and the upper end of the range, where the sensor is taught. */
  weightsAtEnds: readonly [readonly number[], readonly number[]];
  sizes: readonly number[];
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
  return {
    readings: readings.map(({ point, direction, cycle, reference, acceptance: { low, high } }) => ({
      place: (reference - range.rangeLower) / span,
      group: groupOf.get(`${point} ${direction}`) as number,
      cycle: cycles.indexOf(cycle),
      low,
      high,
    })),
    cycles: cycles.length,
    weightsAtEnds: [weightsAt(points, range.rangeLower, span), weightsAt(points, range.rangeUpper, span)],
    sizes: groups.map(({ size }) => size),
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

function weighted(values: readonly number[], weights: readonly number[]): number {
  return values.reduce((sum, value, place) => sum + value * (weights[place] as number), 0);
}

function passes(model: ErrorModel, plan: Plan, stream: RandomStream): boolean {
  const factor = scatterFactor(model.degreesOfFreedom, stream);
  const [within, between] = [factor * model.within, factor * model.between];
  const curve = model.groups.map(({ left, uncertainty }) => left + factor * uncertainty * drawFrom(normal, stream));
  const noise = () => between * drawFrom(normal, stream) + within * drawFrom(normal, stream);
  const [atLower, atUpper] = plan.weightsAtEnds.map((weights) => weighted(curve, weights) + noise());
  const slope = atUpper! - atLower!;
  const offsets: number[] = [];
  for (let cycle = 0; cycle < plan.cycles; cycle++) offsets.push(between * drawFrom(normal, stream));
  const sums = plan.sizes.map(() => 0);
  for (const { place, group, cycle, low, high } of plan.readings) {
    const taught = atLower! + slope * place;
    const error = curve[group]! - taught + offsets[cycle]! + within * drawFrom(normal, stream);
    if (plan.judgedBy === "reading" && (error < low || error > high)) return false;
    sums[group]! += error;
  }
  return plan.judgedBy === "reading" || plan.readings.every((reading) => isMeanAccepted(reading, sums, plan.sizes));
}

function isMeanAccepted({ group, low, high }: Plan["readings"][number], sums: number[], sizes: readonly number[]) {
  const middle = sums[group]! / sizes[group]!;
  return middle >= low && middle <= high;
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
