import type { Direction } from "../../model/calibration-words.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { centre } from "../../numeric/centre.ts";
import { mean } from "../../numeric/mean.ts";
import { parabolaResiduals } from "../../numeric/parabola-residuals.ts";
import { pooledStandardDeviation } from "../../numeric/pooled-standard-deviation.ts";
import { sampleStandardDeviation } from "../../numeric/sample-standard-deviation.ts";

/** The error of a stage at one reading, percent of span, with what it may depend on besides the distance. */
export type StageReading = {
  index: number;
  /** Nominal position, percent of span. */
  point: number;
  input: number;
  direction: Direction;
  cycle: number;
  elapsed: number;
  error: number;
};

/** How far repeated readings of one point and direction scatter. */
export type Scatter = { standardDeviation: number; degreesOfFreedom: number };

/**
 * Gathers the readings that repeat each other: those of one test point in one direction.
 *
 * @param readings of one stage
 * @returns groups in the order of their first reading
 * Source: own choice.
 * @example repeatedReadings(outAndBack([0, 100], 3, () => 0)).map((group) => group.length) // [3, 3, 3, 3]
 */
export function repeatedReadings(readings: readonly StageReading[]): readonly (readonly StageReading[])[] {
  const groups = new Map<string, StageReading[]>();
  for (const reading of readings) {
    const key = `${reading.point} ${reading.direction}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [reading]);
    else group.push(reading);
  }
  return [...groups.values()];
}

/**
 * The scatter of repeated readings, over all points and directions.
 *
 * @param readings of one stage
 * @returns pooled standard deviation in percent of span; undefined where nothing was repeated
 * Source: GUM (JCGM 100:2008) 4.2.4.
 * @example repeatScatter(outAndBack([0, 50, 100], 1, () => 0)) // undefined
 */
export function repeatScatter(readings: readonly StageReading[]): Scatter | undefined {
  const groups = repeatedReadings(readings).map((group) => group.map(({ error }) => error));
  return groups.some(({ length }) => length >= 2) ? pooledStandardDeviation(groups) : undefined;
}

/**
 * The scatter of readings that were taken once out and once back: how unlike the gaps between the two ways are.
 *
 * @param readings of one stage
 * @returns standard deviation of a reading in percent of span; undefined for fewer than three test points read both ways.
 *   A hysteresis that is not the same everywhere counts as scatter, so it is rather too large
 * Source: the difference of two readings scatters √2 times as much as a reading, GUM (JCGM 100:2008) 5.1.2.
 * @example scatterOfWays(outAndBack([0, 50, 100], 1, () => 0)).standardDeviation // 0
 */
export function scatterOfWays(readings: readonly StageReading[]): Scatter | undefined {
  const gaps = [...groupedBy(readings, ({ point }) => point).values()].flatMap((there) => {
    const [rising, falling] = (["rising", "falling"] as const).map((way) =>
      there.filter(({ direction }) => direction === way).map(({ error }) => error),
    );
    return rising?.length && falling?.length ? [mean(rising) - mean(falling)] : [];
  });
  if (gaps.length < 3) return undefined;
  return { standardDeviation: sampleStandardDeviation(gaps) / Math.SQRT2, degreesOfFreedom: gaps.length - 1 };
}

const fewestOfOneWay = 6;

/**
 * The scatter of readings that were taken once, about a parabola through those of each way.
 *
 * @param readings of one stage
 * @returns standard deviation of a reading in percent of span; undefined for fewer than six test points each way. What
 *   bends otherwise counts as scatter, so it is rather too large
 * Source: residual standard deviation, NIST/SEMATECH e-Handbook 4.4.3.1; the parabola is own choice.
 * @example scatterAboutParabola(outAndBack([0, 20, 40, 60, 80, 100], 1, () => 1)).standardDeviation // 0
 */
export function scatterAboutParabola(readings: readonly StageReading[]): Scatter | undefined {
  const ways = (["rising", "falling"] as const)
    .map((way) => readings.filter(({ direction }) => direction === way))
    .filter(({ length }) => length > 0);
  const isShort = (way: readonly StageReading[], placeOf: (one: StageReading) => number) =>
    new Set(way.map(placeOf)).size < fewestOfOneWay;
  if (ways.length === 0) return;
  if (ways.some((way) => isShort(way, ({ point }) => point) || isShort(way, ({ input }) => input))) return;
  const residuals = ways.flatMap((way) =>
    parabolaResiduals(
      way.map(({ input }) => input),
      way.map(({ error }) => error),
    ),
  );
  const degreesOfFreedom = residuals.length - 3 * ways.length;
  const squares = residuals.reduce((sum, residual) => sum + residual ** 2, 0);
  return { standardDeviation: Math.sqrt(squares / degreesOfFreedom), degreesOfFreedom };
}

/** A reading less the mean of those that repeat it. */
export type Deviation = { reading: StageReading; elapsed: number; error: number; groupSize: number };

/**
 * Each reading less the mean of the readings that repeat it, in error and in time.
 *
 * What the distance and the direction do to the error drops out; what is left is scatter and drift.
 *
 * @param readings of one stage
 * @returns deviations of all readings that were repeated
 * Source: common practice ("within groups").
 * @example deviationsFromRepeats(outAndBack([0], 2, ({ cycle }) => cycle)).map(({ error }) => error) // [-0.5, 0.5,
 *   -0.5, 0.5]
 */
export function deviationsFromRepeats(readings: readonly StageReading[]): readonly Deviation[] {
  return repeatedReadings(readings)
    .filter(({ length }) => length >= 2)
    .flatMap((group) => {
      const errors = centre(group.map(({ error }) => error)).deviations;
      const times = centre(group.map(({ elapsed }) => elapsed)).deviations;
      return group.map((reading, place) => ({
        reading,
        elapsed: times[place]!,
        error: errors[place]!,
        groupSize: group.length,
      }));
    });
}
