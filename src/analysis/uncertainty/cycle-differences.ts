import { groupedBy } from "../../model/grouped-by.ts";
import type { CurveReading } from "../figures/error-curve.ts";
import { leastScatter, type VarianceRatio, varianceRatio } from "./variance-ratio.ts";

/** A standard deviation, and how well it is known. */
export type KnownDeviation = { standardDeviation: number; degreesOfFreedom: number };

/** What the cycles of a phase differ by, beyond the scatter within them; all in the unit of the errors. */
export type CycleDifferences = {
  within: KnownDeviation;
  /** Of the means of cycles, freed of what the scatter within them makes; its degrees of freedom are the cycles less one. */
  between: KnownDeviation;
  /** What is common to all readings of a cycle, as far from the mean of all. */
  effectOf: ReadonlyMap<number, number>;
} & VarianceRatio;

const mostSweeps = 200;

/**
 * Whether the cycles differ by more than the readings within them scatter, and by how much.
 *
 * Each error is what its point and direction make, plus what its cycle makes, plus scatter, fitted by least squares.
 * F is the mean square of the cycles over that of the scatter; above its 95 % limit the cycles differ, and the variance
 * between them is (MS(cycles) − MS(scatter))/n, n readings a cycle.
 *
 * @param readings errors in percent of span
 * @returns scatter within and between the cycles, the test, and each cycle's effect; undefined for one cycle, or where
 *   nothing is left to judge the scatter by
 * Source: analysis of variance with two factors; JCGM 100:2008, H.5.2.2 (between and within), NIST/SEMATECH e-Handbook,
 *   7.4.2; n of unequal cycles as H. Scheffé, The Analysis of Variance (1959), 7.2, by the trace of the design.
 * @example cycleDifferences([[0, 1], [1, 3]].flatMap((row, cycle) => row.map((error, point) => ({ point,
 *   reference: point, error, direction: "rising", cycle })))).ratio // 9
 */
export function cycleDifferences(readings: readonly CurveReading[]): CycleDifferences | undefined {
  const groups = [...groupedBy(readings, ({ point, direction }) => `${point} ${direction}`).values()].filter(
    ({ length }) => length >= 2,
  );
  const repeated = groups.flat();
  const cycles = [...groupedBy(repeated, ({ cycle }) => cycle).values()];
  const [cycleFreedom, freedom] = [cycles.length - 1, repeated.length - groups.length - cycles.length + 1];
  const perCycle = readingsPerCycle(groups, cycles);
  if (cycleFreedom < 1 || freedom < 1 || !(perCycle > 0)) return undefined;
  const { withCycles, withoutCycles, effectOf } = fittedEffects(groups, cycles);
  const withinSquare = withCycles / freedom;
  const cycleSquare = Math.max(0, withoutCycles - withCycles) / cycleFreedom;
  return {
    within: { standardDeviation: Math.sqrt(withinSquare), degreesOfFreedom: freedom },
    between: {
      standardDeviation: Math.sqrt(Math.max(0, cycleSquare - withinSquare) / perCycle),
      degreesOfFreedom: cycleFreedom,
    },
    ...varianceRatio(
      { square: cycleSquare, freedom: cycleFreedom, readings: perCycle },
      { square: withinSquare, freedom },
    ),
    effectOf,
  };
}

type Groups = readonly (readonly CurveReading[])[];

/** Least squares of what points and cycles make, one after the other until nothing moves: one sweep where none is missing. */
function fittedEffects(groups: Groups, cycles: Groups) {
  const effectOf = new Map(cycles.map(([first]) => [first!.cycle, 0]));
  const meanOf = new Map<CurveReading, number>();
  const levelGroups = () => {
    for (const group of groups) {
      const level = meanBy(group, (reading) => reading.error - effectOf.get(reading.cycle)!);
      for (const reading of group) meanOf.set(reading, level);
    }
  };
  levelGroups();
  const withoutCycles = squares(groups, (reading) => reading.error - meanOf.get(reading)!);
  for (let sweep = 0; sweep < mostSweeps; sweep++) {
    let moved = 0;
    for (const cycle of cycles) {
      const effect = meanBy(cycle, (reading) => reading.error - meanOf.get(reading)!);
      moved = Math.max(moved, Math.abs(effect - effectOf.get(cycle[0]!.cycle)!));
      effectOf.set(cycle[0]!.cycle, effect);
    }
    levelGroups();
    if (moved <= leastScatter * 1e-6) break;
  }
  const left = (reading: CurveReading) => reading.error - meanOf.get(reading)! - effectOf.get(reading.cycle)!;
  return { withCycles: squares(groups, left), withoutCycles, effectOf };
}

/** Readings that a cycle has, less what the means of the points take: (Σ N − Σ n²/n)/(cycles − 1). */
function readingsPerCycle(groups: Groups, cycles: Groups): number {
  const taken = groups.reduce(
    (sum, group) =>
      sum +
      [...groupedBy(group, ({ cycle }) => cycle).values()].reduce((part, { length }) => part + length ** 2, 0) /
        group.length,
    0,
  );
  return (groups.flat().length - taken) / (cycles.length - 1);
}

function meanBy(readings: readonly CurveReading[], takenOf: (reading: CurveReading) => number): number {
  return readings.reduce((sum, reading) => sum + takenOf(reading), 0) / readings.length;
}

function squares(groups: Groups, takenOf: (reading: CurveReading) => number): number {
  return groups.flat().reduce((sum, reading) => sum + takenOf(reading) ** 2, 0);
}
