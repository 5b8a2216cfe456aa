import { mean } from "../../numeric/mean.ts";
import { repeatScatter, type Scatter, type StageReading, scatterAboutParabola } from "../readings/repeated-readings.ts";

/** Rising minus falling error of a stage, percent of span. */
export type DirectionGap = {
  /** Mean over the test points between the first and the last. */
  inner: number;
  innerStandardUncertainty: number;
  /** Mean over the first and the last test point; undefined where they were not read both ways. */
  outer: number | undefined;
  outerStandardUncertainty: number;
  /** Standard deviation of the gap from one inner test point to the next. */
  unevenness: number;
  /** Mean gap of each cycle over the inner test points. */
  byCycle: readonly number[];
  degreesOfFreedom: number;
  innerPoints: number;
};

const fewestPoints = 3;

/**
 * How far the rising readings of a stage lie from the falling ones: inside the range, and at its two ends, where the
 * target turns round.
 *
 * @param readings of one stage
 * @returns the gap; undefined for fewer than three test points that were read both ways, or where nothing tells the
 *   scatter (one cycle and one inner point)
 * Source: IEC 61298-2:2008 for the averages; which points count as turning points is own choice.
 * @example directionGap(outAndBack([0, 50, 100], 2, ({ direction }) => (direction === "rising" ? 0 : 0.8)))?.inner //
 *   -0.8
 */
export function directionGap(readings: readonly StageReading[]): DirectionGap | undefined {
  const points = [...new Set(readings.map(({ point }) => point))].sort((left, right) => left - right);
  const gaps = points.flatMap((point) => gapAt(point, readings));
  if (gaps.length < fewestPoints) return undefined;
  const ends = [points[0], points.at(-1)];
  const inner = gaps.filter(({ point }) => !ends.includes(point));
  const outer = gaps.filter(({ point }) => ends.includes(point));
  if (inner.length === 0) return undefined;
  const sizes = inner.map(({ gap }) => gap);
  const scatter = repeatScatter(readings) ?? lesserScatter(scatterOfGaps(sizes), scatterAboutParabola(readings));
  if (scatter === undefined) return undefined;
  return {
    inner: mean(sizes),
    innerStandardUncertainty: scatter.standardDeviation * meanWeight(inner),
    outer: outer.length === 0 ? undefined : mean(outer.map(({ gap }) => gap)),
    outerStandardUncertainty: scatter.standardDeviation * meanWeight(outer),
    unevenness: scatterOfGaps(sizes)?.standardDeviation ?? 0,
    byCycle: gapsByCycle(
      readings,
      inner.map(({ point }) => point),
    ),
    degreesOfFreedom: scatter.degreesOfFreedom,
    innerPoints: inner.length,
  };
}

type PointGap = { point: number; gap: number; rising: number; falling: number };

function gapAt(point: number, readings: readonly StageReading[]): readonly PointGap[] {
  const errorsOf = (direction: string) =>
    readings.filter((reading) => reading.point === point && reading.direction === direction).map(({ error }) => error);
  const rising = errorsOf("rising");
  const falling = errorsOf("falling");
  if (rising.length === 0 || falling.length === 0) return [];
  return [{ point, gap: mean(rising) - mean(falling), rising: rising.length, falling: falling.length }];
}

/** Standard uncertainty of the mean gap for readings that scatter by one. */
function meanWeight(gaps: readonly PointGap[]): number {
  if (gaps.length === 0) return 0;
  return Math.hypot(...gaps.map(({ rising, falling }) => Math.sqrt(1 / rising + 1 / falling))) / gaps.length;
}

/** Each of them is too large where the gap has a shape, and not for the same shapes. */
function lesserScatter(one: Scatter | undefined, other: Scatter | undefined): Scatter | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return other.standardDeviation < one.standardDeviation ? other : one;
}

// With one cycle the gaps themselves tell the scatter: a gap scatters √2 times as much as a reading.
function scatterOfGaps(sizes: readonly number[]): Scatter | undefined {
  if (sizes.length < 2) return undefined;
  const middle = mean(sizes);
  const squares = sizes.reduce((total, size) => total + (size - middle) ** 2, 0);
  return {
    standardDeviation: Math.sqrt(squares / (sizes.length - 1) / 2),
    degreesOfFreedom: sizes.length - 1,
  };
}

function gapsByCycle(readings: readonly StageReading[], points: readonly number[]): readonly number[] {
  const cycles = [...new Set(readings.map(({ cycle }) => cycle))];
  return cycles.flatMap((cycle) => {
    const ofCycle = readings.filter((reading) => reading.cycle === cycle && points.includes(reading.point));
    const gaps = points.flatMap((point) => gapAt(point, ofCycle)).map(({ gap }) => gap);
    return gaps.length === 0 ? [] : [mean(gaps)];
  });
}
