import { fitLine } from "../../numeric/fit-line.ts";
import { deviationsFromRepeats, type StageReading } from "../readings/repeated-readings.ts";

/** How the scatter of repeated readings changes over the range. */
export type SpreadGrowth = {
  /** Standard deviation in the nearest and in the farthest third of the readings, percent of span. */
  near: number;
  far: number;
  /** Slope of the size of the deviations on the distance, in its own standard uncertainties. */
  slopeInUncertainties: number;
  degreesOfFreedom: number;
};

const fewestReadings = 9;

/**
 * Whether repeated readings scatter more the farther the target is.
 *
 * @param readings of one stage, at least two cycles
 * @returns scatter near and far, and how sure the growth is; undefined for fewer than nine repeated readings or where
 *   there is no scatter at all
 * Source: the size of the residuals on the abscissa, H. Glejser (1969), J. Am. Stat. Assoc. 64, 316.
 * @example spreadGrowth(outAndBack([0, 50, 100], 3, ({ point, cycle }) => point * (cycle - 2)))?.far // 100
 */
export function spreadGrowth(readings: readonly StageReading[]): SpreadGrowth | undefined {
  const sized = deviationsFromRepeats(readings)
    .map(({ reading, error, groupSize }) => ({
      input: reading.input,
      size: Math.abs(error) * Math.sqrt(groupSize / (groupSize - 1)),
    }))
    .sort((left, right) => left.input - right.input);
  const inputs = sized.map(({ input }) => input);
  if (sized.length < fewestReadings || new Set(inputs).size < 2) return undefined;
  const fit = fitLine(
    inputs,
    sized.map(({ size }) => size),
  );
  if (fit.slopeStdError === null || fit.slopeStdError === 0) return undefined;
  const third = Math.floor(sized.length / 3);
  return {
    near: rootMeanSquare(sized.slice(0, third)),
    far: rootMeanSquare(sized.slice(-third)),
    slopeInUncertainties: fit.slope / fit.slopeStdError,
    degreesOfFreedom: fit.degreesOfFreedom,
  };
}

function rootMeanSquare(sized: readonly { size: number }[]): number {
  return Math.sqrt(sized.reduce((total, { size }) => total + size * size, 0) / sized.length);
}
