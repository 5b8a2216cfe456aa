import { lineErrorAt, type StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";

/** A cause that leaves a stage without error at one input: a place in percent of span, or nowhere for a pure offset. */
export type ZeroCandidate<Name> = { name: Name; at: number | "nowhere" };

/** The candidate that fits best and those that are not excluded. */
export type NamedByZero<Name> = { named?: Name; rivals: readonly Name[] };

/**
 * Names the candidate through whose point the error line of a stage goes, and those that its uncertainty leaves open.
 *
 * @param stage with a line
 * @param candidates in the order of preference where two fit alike
 * @returns the best one within three uncertainties, if any, and the others within two
 * @throws TypeError for a stage without a line
 * Source: own choice of 3 and 2, see `thresholds`; the uncertainty of the line after JCGM 100:2008 H.3.4.
 * @example namedByZero(stage, [{ name: "datum", at: "nowhere" }, { name: "teach", at: 0 }]).named // "datum"
 */
export function namedByZero<Name>(stage: StageEvidence, candidates: readonly ZeroCandidate<Name>[]): NamedByZero<Name> {
  const scored = candidates
    .map(({ name, at }) => ({ name, misses: missOf(stage, at) }))
    .sort((left, right) => left.misses - right.misses);
  const [best] = scored;
  const isNamed = best !== undefined && best.misses <= thresholds.namedWithinUncertainties;
  const rivals = scored
    .slice(isNamed ? 1 : 0)
    .filter(({ misses }) => misses <= thresholds.excludedBeyondUncertainties)
    .map(({ name }) => name);
  return { ...(isNamed && { named: best.name }), rivals };
}

/**
 * By how many uncertainties a stage's line misses being without error at a place, or being level.
 *
 * @param stage with a line
 * @param at percent of span of the input; "nowhere" asks how far the line is from level
 * @returns error over its uncertainty, 0 or above
 * @throws TypeError for a stage without a line
 * Source: JCGM 100:2008 H.3.
 * @example missOf(stage, 0) > 3 // true
 */
export function missOf(stage: StageEvidence, at: number | "nowhere"): number {
  if (at !== "nowhere") return ratio(lineErrorAt(stage, at));
  const { line } = stage;
  if (line === undefined) throw new TypeError(`missOf: no line of the ${stage.stage}`);
  const standardUncertainty = Math.hypot(100 * line.gainStandardUncertainty, stage.sharedUncertainty);
  return ratio({ percentSpan: 100 * line.fit.slope, standardUncertainty });
}

// Exact data have no uncertainty; what is below the last stored digits is no error either.
function ratio({ percentSpan, standardUncertainty }: { percentSpan: number; standardUncertainty: number }): number {
  const size = Math.abs(percentSpan);
  return size < 1e-9 ? 0 : size / Math.max(standardUncertainty, 1e-9);
}

/**
 * Whether the output of a stage falls where it is to rise, about the middle of the range.
 *
 * @param stage with or without a line
 * @returns true for a gain of −1 and no error at the middle, both within what the line allows
 * Source: own choice, see `thresholds`.
 * @example isTurnedRound(stage) // false
 */
export function isTurnedRound(stage: StageEvidence): boolean {
  const { line } = stage;
  if (line === undefined) return false;
  const slack = Math.max(thresholds.inverseGainWithin, 2 * line.gainStandardUncertainty);
  return Math.abs(line.gain + 1) <= slack && Math.abs(lineErrorAt(stage, 50).percentSpan) <= 100 * slack;
}
