import { groupedBy } from "../../model/grouped-by.ts";
import { fitLine } from "../../numeric/fit-line.ts";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import { lineValue } from "../../numeric/line-value.ts";
import { mean } from "../../numeric/mean.ts";
import {
  repeatScatter,
  type StageReading,
  scatterAboutParabola,
  scatterOfWays,
} from "../readings/repeated-readings.ts";

/** How far the mean errors of a stage leave their own straight line. */
export type Bow = {
  /** Greatest residual of a test point's mean, with its sign, percent of span. */
  greatest: number;
  point: number;
  standardUncertainty: number;
  degreesOfFreedom: number;
  repeatability: number;
  /** Residuals of the means in the order of the points. */
  residuals: readonly number[];
};

const fewestPoints = 4;

/**
 * How far the mean errors of the test points leave the straight line through them: curvature that comes again in every
 * cycle and direction, told from scatter by that of repeated readings; by how unlike the gaps of the two ways are where each point was
 * read once out and back, and by a parabola where there is one run one way.
 *
 * @param readings of one stage
 * @returns the bow; undefined for fewer than four test points, at as many inputs, or one run one way of fewer than six
 * Source: pure error against lack of fit, NIST/SEMATECH e-Handbook 4.4.4.6; the greatest residual in place of the F test
 *   is own choice, because it can be read off the picture.
 * @example bowOf(outAndBack([0, 25, 50, 75, 100], 2, ({ point }) => (point === 50 ? 1 : 0)))?.greatest // 0.8
 */
export function bowOf(readings: readonly StageReading[]): Bow | undefined {
  const byPoint = groupedBy(readings, ({ point }) => point);
  const points = [...byPoint.keys()].sort((left, right) => left - right);
  const scatter = repeatScatter(readings) ?? scatterOfWays(readings) ?? scatterAboutParabola(readings);
  if (points.length < fewestPoints || scatter === undefined) return undefined;
  const places = points.map((point) => meansOf(byPoint.get(point)!));
  // Points that were all read at one or two distances have no shape.
  if (new Set(places.map(({ input }) => input)).size < fewestPoints) return undefined;
  const line = fitLine(
    places.map(({ input }) => input),
    places.map(({ error }) => error),
  );
  const residuals = places.map(({ input, error }) => error - lineValue(line, input));
  const sizes = residuals.map(Math.abs);
  const place = sizes.indexOf(greatestOf(sizes));
  return {
    greatest: residuals[place]!,
    point: points[place]!,
    standardUncertainty: scatter.standardDeviation / Math.sqrt(places[place]!.count),
    degreesOfFreedom: scatter.degreesOfFreedom,
    repeatability: scatter.standardDeviation,
    residuals,
  };
}

// Rising and falling count alike, so that a point read more often one way does not lean to that side.
function meansOf(there: readonly StageReading[]) {
  const byWay = (["rising", "falling"] as const)
    .map((way) => there.filter(({ direction }) => direction === way).map(({ error }) => error))
    .filter(({ length }) => length > 0)
    .map((errors) => mean(errors));
  return { input: mean(there.map(({ input }) => input)), error: mean(byWay), count: there.length };
}
