import { cyclesSource } from "../../model/scatter-source.ts";
import { type Figure, isDetermined } from "../figures/figure.ts";
import { type Contribution, contribution } from "./contribution.ts";
import type { KnownDeviation } from "./cycle-differences.ts";
import type { BetweenCycles, ReadingScatter } from "./reading-scatter.ts";
import type { FoundContributions } from "./standard-contributions.ts";

type ScatterBasis = { repeatability: Figure<ReadingScatter>; distanceUnit: string };
type ScatterPoint = { readings: number; point?: number; cycles?: number };

/** Who shares what of the uncertainty: standard uncertainties, distance. */
export type Sharing = {
  /** The same at all readings of the phase, but for what grows with the distance: standards, drifts, alignment, air. */
  all: number;
  /** The same at the readings of one cycle; 0 where the cycles could be seen to differ, and do not. */
  cycle: number;
  /** Of one reading alone: its scatter, in which that of repeats has the steps already, and no less than the steps. */
  reading: number;
};

/**
 * The contributions of the scatter of the readings, and of what the cycles differ by: measured, or taken as large as the
 * scatter where it was not.
 *
 * @param basis scatter of one reading, unit of distances
 * @param point how many readings of how many cycles are in the mean, and where
 * @returns contributions in distance, or why there are none
 * Source: JCGM 100:2008, 4.2.3 (s/√n) and H.5 (between and within); `readingScatter`.
 * @example scatterContributions({ repeatability: { pooledStdDev: 0.3, degreesOfFreedom: 20 }, distanceUnit: "mm" },
 *   { readings: 9 }).own[0].standardUncertainty // 0.1
 */
export function scatterContributions(basis: ScatterBasis, point: ScatterPoint): FoundContributions {
  const { repeatability: scatter, distanceUnit: unit } = basis;
  const { readings, cycles = readings } = point;
  if (!isDetermined(scatter)) return { shared: [], own: [], missing: [`repeatability: ${scatter.notDetermined}`] };
  const { ofReading, isOfPoint, betweenCycles } = scatterAt(basis, point);
  const line = (source: string, known: KnownDeviation, count: number) =>
    contribution({
      source,
      value: known.standardDeviation,
      unit,
      distribution: "normal",
      divisor: Math.sqrt(count),
      degreesOfFreedom: known.degreesOfFreedom,
    });
  const name = `${scatter.isAboutLine ? "scatter about the line" : "repeatability"}${isOfPoint ? " at this point" : ""}`;
  const likeScatter = scatter.isAboutLine ? "the scatter about the line" : "the repeatability";
  const ofCycles = cyclesSource(cycles, betweenCycles?.isAssumed && likeScatter);
  return {
    shared: [],
    own: [
      line(`${name}, mean of ${readings}`, ofReading, readings),
      ...(betweenCycles ? [line(ofCycles, betweenCycles, cycles)] : []),
    ],
    missing: [],
  };
}

/**
 * Who shares which part of the uncertainty of a mean error.
 *
 * @param parts of the budget: reference, output, scatter, and others that all readings share
 * @param basis of the phase
 * @param point of which the scatter is
 * @returns standard uncertainties, distance
 * Source: JCGM 100:2008, 5.2.2, for what is common.
 * @example sharingOf([], { repeatability: { notDetermined: "one cycle only" }, distanceUnit: "mm" }, { readings: 1 }).all //
 *   0
 */
export function sharingOf(
  [reference, output, , ...others]: readonly FoundContributions[],
  basis: ScatterBasis,
  point: ScatterPoint,
): Sharing {
  const { ofReading, isAboutLine, betweenCycles } = scatterAt(basis, point);
  const size = (some: readonly Contribution[] = []) => some.map(({ standardUncertainty }) => standardUncertainty);
  const common = [...(reference?.shared ?? []), ...(output?.shared ?? [])];
  const steps = Math.hypot(...size(reference?.own), ...size(output?.own));
  const { standardDeviation } = ofReading;
  return {
    all: Math.hypot(...size(common), ...others.flatMap(({ shared, own }) => size([...shared, ...own]))),
    cycle: betweenCycles?.standardDeviation ?? 0,
    reading: isAboutLine ? Math.hypot(standardDeviation, steps) : Math.max(standardDeviation, steps),
  };
}

type ScatterAt = {
  ofReading: KnownDeviation;
  isOfPoint: boolean;
  /** Of residuals, which were freed of the steps. */
  isAboutLine: boolean;
  betweenCycles?: BetweenCycles;
};

/** What one reading scatters by at a test point: the point's own where the scatter changes along the range. */
function scatterAt({ repeatability: scatter }: ScatterBasis, { point }: ScatterPoint): ScatterAt {
  if (!isDetermined(scatter)) {
    return { ofReading: { standardDeviation: 0, degreesOfFreedom: 1 }, isOfPoint: false, isAboutLine: false };
  }
  const { pooledStdDev, degreesOfFreedom, ofPoints, betweenCycles, isAboutLine = false } = scatter;
  const own = point === undefined ? undefined : ofPoints?.get(point);
  return {
    ofReading: own ?? { standardDeviation: pooledStdDev, degreesOfFreedom },
    isOfPoint: own !== undefined,
    isAboutLine,
    ...(betweenCycles && { betweenCycles }),
  };
}
