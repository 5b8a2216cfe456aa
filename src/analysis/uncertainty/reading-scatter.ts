import { groupedBy } from "../../model/grouped-by.ts";
import { centre, sumOfProducts } from "../../numeric/centre.ts";
import { fitLine } from "../../numeric/fit-line.ts";
import type { CurveReading } from "../figures/error-curve.ts";
import { type Figure, isDetermined } from "../figures/figure.ts";
import { repeatability } from "../figures/repeatability.ts";
import { cycleDifferences, type KnownDeviation } from "./cycle-differences.ts";
import { growingScatter } from "./growing-scatter.ts";
import { doesScatterChange } from "./scatter-change.ts";

/** What one reading scatters by, and what a budget has to know of it; standard deviations of one reading. */
export type ReadingScatter = {
  pooledStdDev: number;
  degreesOfFreedom: number;
  /** Nothing, or too little, was repeated: the scatter about the line stands for it. */
  isAboutLine?: boolean;
  /** The test points' own, where the scatter is shown to differ from one to another. */
  ofPoints?: ReadonlyMap<number, KnownDeviation>;
  /** What is common to the readings of a cycle, where the cycles are shown to differ, or where nothing could show it. */
  betweenCycles?: BetweenCycles;
  /** What cycles that are not shown to differ may differ by all the same. */
  leftOpen?: KnownDeviation;
};

/** What cycles differ by; assumed where there was but one, or too little was repeated to see it. */
export type BetweenCycles = KnownDeviation & { isAssumed?: true };

/** Repeats of fewer degrees of freedom say less than the line does: own choice, k is 4.5 with 2 of them. */
const fewestDegrees = 3;

/**
 * What one reading scatters by: from the readings that repeat each other, or about the line where there are none.
 *
 * Repeated: pooled over the points and directions; freed of what the cycles differ by, where they are shown to (F test,
 * `cycleDifferences`), which is then a part of its own; the test point's own where the scatter is shown to change along
 * the range (slope of the groups' standard deviations on the distance, Student's t at 95 %). Not repeated: residual
 * standard deviation about the line of error on reference, n − 2 degrees of freedom, less what the steps of the display
 * make of it, which have their own lines in a budget. It holds curvature and hysteresis too, and so errs wide; the test
 * point's own where the residuals are shown to grow along the range (`growingScatter`).
 *
 * Where the readings cannot show what cycles differ by, it is taken to be as large as the scatter s. Where m cycles are not
 * shown to differ, s/√m is left open, so that their mean has s/m: two cycles of 22 readings, of an effect as large as s,
 * agree in a third of all cases. A line through all readings has it; of the few readings of one test point the scatter is
 * so wide that U holds without.
 *
 * @param readings errors in percent of span
 * @param roundingUncertainty standard uncertainty of one reading from the steps of reference and output, percent of span
 * @returns scatter of one reading in percent of span; or the reason why there is none
 * Source: JCGM 100:2008, 4.2.4 (pooled), H.3.2 (about a line), H.5 (between and within); growth after H. Glejser (1969),
 *   J. Am. Stat. Assoc. 64, 316. That the line stands for repeats, and that cycles differ by s/√m: own choices, so that
 *   reading less never makes U smaller; docs/uncertainty-simulated.md says how often U then holds.
 * @example readingScatter([0, 1, 0, 1].map((error, point) => ({ point, reference: point, error, direction: "rising",
 *   cycle: 1 })), 0) // { pooledStdDev: 0.6324555320336759, degreesOfFreedom: 2, isAboutLine: true,
 *   betweenCycles: { standardDeviation: 0.6324555320336759, degreesOfFreedom: 2, isAssumed: true } }
 */
export function readingScatter(readings: readonly CurveReading[], roundingUncertainty: number): Figure<ReadingScatter> {
  const repeated = repeatability(readings);
  const line = scatterAboutLine(readings, roundingUncertainty);
  if (!isDetermined(repeated)) return line ?? repeated;
  if (line !== undefined && repeated.degreesOfFreedom < Math.min(fewestDegrees, line.degreesOfFreedom)) return line;
  const found = cycleDifferences(readings);
  const cycles = found?.isShown ? found : undefined;
  const { within, between } = cycles ?? {};
  const groups = groupsFreedOf(readings, cycles?.effectOf);
  const freedomLeft = within === undefined ? 1 : within.degreesOfFreedom / repeated.degreesOfFreedom;
  const scatter: ReadingScatter = {
    pooledStdDev: within?.standardDeviation ?? repeated.pooledStdDev,
    degreesOfFreedom: within?.degreesOfFreedom ?? repeated.degreesOfFreedom,
    ...(doesChangeOver(groups) && { ofPoints: deviationOfPoints(groups, freedomLeft) }),
    ...(between && { betweenCycles: between }),
  };
  if (found === undefined) return withDifferencesAssumed(scatter);
  return found.isShown ? scatter : { ...scatter, leftOpen: leftOpenBy(found.between.degreesOfFreedom + 1, scatter) };
}

function scatterAboutLine(readings: readonly CurveReading[], rounding: number): ReadingScatter | undefined {
  const references = readings.map(({ reference }) => reference);
  if (readings.length < 3 || new Set(references).size < 2) return undefined;
  const fit = fitLine(
    references,
    readings.map(({ error }) => error),
  );
  const growing = growingScatter(readings);
  return withDifferencesAssumed({
    ...withoutRounding(fit.residualStdDev as number, fit.degreesOfFreedom, rounding),
    isAboutLine: true,
    ...(growing && { ofPoints: new Map([...growing].map(([point, known]) => [point, freedOfSteps(known, rounding)])) }),
  });
}

function freedOfSteps({ standardDeviation, degreesOfFreedom }: KnownDeviation, rounding: number): KnownDeviation {
  const { pooledStdDev, ...freed } = withoutRounding(standardDeviation, degreesOfFreedom, rounding);
  return { standardDeviation: pooledStdDev, ...freed };
}

/**
 * Taken as large as the scatter: two cycles would hardly show less, so one leaves no less open. A judgement, and named as
 * that (JCGM 100:2008, 4.3.1).
 */
function withDifferencesAssumed(scatter: ReadingScatter): ReadingScatter {
  return { ...scatter, betweenCycles: { ...leftOpenBy(1, scatter), isAssumed: true } };
}

/** Each further cycle that agrees takes its share of the variance. */
function leftOpenBy(cycles: number, { pooledStdDev, degreesOfFreedom }: ReadingScatter): KnownDeviation {
  return { standardDeviation: pooledStdDev / Math.sqrt(cycles), degreesOfFreedom };
}

/**
 * A scatter without what the steps of a display make of it.
 *
 * @param standardDeviation as found, any unit
 * @param degreesOfFreedom of it
 * @param rounding standard uncertainty from the steps, same unit
 * @returns √(s² − rounding²), 0 where that is negative, and its degrees of freedom: ν · (1 − rounding²/s²)², at least 1
 * Source: JCGM 100:2008, G.4.1, for the degrees of freedom of s² less a constant; F.2.2.1 for the steps.
 * @example withoutRounding(5, 8, 3) // { pooledStdDev: 4, degreesOfFreedom: 3.2768 }
 */
export function withoutRounding(standardDeviation: number, degreesOfFreedom: number, rounding: number) {
  if (rounding >= standardDeviation) return { pooledStdDev: 0, degreesOfFreedom };
  const part = 1 - (rounding / standardDeviation) ** 2;
  return {
    pooledStdDev: standardDeviation * Math.sqrt(part),
    degreesOfFreedom: Math.max(1, degreesOfFreedom * part ** 2),
  };
}

type Group = { point: number; reference: number; squares: number; degreesOfFreedom: number };

function groupsFreedOf(readings: readonly CurveReading[], effectOf?: ReadonlyMap<number, number>): readonly Group[] {
  const groups = groupedBy(readings, ({ point, direction }) => `${point} ${direction}`);
  return [...groups.values()]
    .filter(({ length }) => length >= 2)
    .map((group) => {
      const { deviations } = centre(group.map(({ error, cycle }) => error - (effectOf?.get(cycle) ?? 0)));
      const { point } = group[0]!;
      const reference = group.reduce((sum, one) => sum + one.reference, 0) / group.length;
      return { point, reference, squares: sumOfProducts(deviations, deviations), degreesOfFreedom: group.length - 1 };
    });
}

function doesChangeOver(groups: readonly Group[]): boolean {
  return doesScatterChange(
    groups.map(({ reference }) => reference),
    groups.map(({ squares, degreesOfFreedom }) => Math.sqrt(squares / degreesOfFreedom)),
  );
}

function deviationOfPoints(groups: readonly Group[], freedomLeft: number): ReadonlyMap<number, KnownDeviation> {
  return new Map(
    [...groupedBy(groups, ({ point }) => point)].map(([point, some]) => {
      const squares = some.reduce((sum, group) => sum + group.squares, 0);
      const freedom = freedomLeft * some.reduce((sum, group) => sum + group.degreesOfFreedom, 0);
      return [point, { standardDeviation: Math.sqrt(squares / freedom), degreesOfFreedom: Math.max(1, freedom) }];
    }),
  );
}
