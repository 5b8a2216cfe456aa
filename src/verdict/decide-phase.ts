import type { AnalysedReading } from "../analysis/analyse-readings.ts";
import { type Figure, notDetermined } from "../analysis/figure.ts";
import type { ToleranceLimits } from "../analysis/tolerance.ts";
import { simpleAcceptance } from "./simple-acceptance.ts";

/** The four words of a statement of conformity (ILAC-G8:09/2019); simple acceptance uses the first and the last. */
export type Verdict = "pass" | "conditional pass" | "conditional fail" | "fail";

/** The part of the loop that a verdict speaks of. */
export type JudgedPart = "sensor" | "controller";

/** The reading that comes nearest to its limit or goes farthest beyond it. */
export type WorstReading = {
  of: JudgedPart;
  reading: AnalysedReading;
  errorDistance: number;
  errorPercentSpan: number;
  partOfTolerance: number;
};

/** What was decided for one phase; the overall verdict is the worst of the parts. */
export type PhaseVerdict = {
  readingVerdicts: readonly (Verdict | undefined)[];
  sensor: Figure<Verdict>;
  controller: Figure<Verdict>;
  overall: Figure<Verdict>;
  worst: Figure<WorstReading>;
};

/**
 * Decides one phase by simple acceptance: each reading of the sensor and each value of the controller on its own,
 * then the worst of them.
 *
 * A reading inside the range whose signal reports a fault fails: the loop gave no measurement where it should.
 *
 * @param readings of one phase, analysed
 * @param span of the range, distance
 * @returns a verdict a reading (none where it is left out), a part, and overall
 * Source: ILAC-G8:09/2019; ISO/IEC 17025:2017, 7.8.6, for a statement that names the results which it covers.
 * @example decidePhase(readings, 1800).overall // "pass"
 */
export function decidePhase(readings: readonly AnalysedReading[], span: number): PhaseVerdict {
  const decided = readings.map((reading) => decideReading(reading, span));
  const sensor = worstVerdict(
    decided.map((reading) => reading.sensor),
    "no usable reading",
  );
  const controller = worstVerdict(
    decided.map((reading) => reading.controller),
    "no controller value was read",
  );
  return {
    readingVerdicts: decided.map((reading) => worseOf(reading.sensor, reading.controller)),
    sensor,
    controller,
    overall: worstVerdict(
      decided.flatMap((reading) => [reading.sensor, reading.controller]),
      "no usable reading",
    ),
    worst: worstReading(readings),
  };
}

type ReadingVerdict = { sensor?: Verdict; controller?: Verdict };

function decideReading(analysed: AnalysedReading, span: number): ReadingVerdict {
  const { leftOut, isFaultInRange, error, loopError, tolerance } = analysed;
  if (isFaultInRange) return { sensor: "fail" };
  if (leftOut !== undefined) return {};
  return {
    ...(error && { sensor: simpleAcceptance(error.errorDistance, tolerance, span) }),
    ...(loopError && { controller: simpleAcceptance(loopError.distance, tolerance, span) }),
  };
}

function worstVerdict(verdicts: readonly (Verdict | undefined)[], reason: string): Figure<Verdict> {
  return verdicts.reduce(worseOf, undefined) ?? notDetermined(reason);
}

const severity: Record<Verdict, number> = { pass: 0, "conditional pass": 1, "conditional fail": 2, fail: 3 };

function worseOf(left: Verdict | undefined, right: Verdict | undefined): Verdict | undefined {
  if (left === undefined || right === undefined) return left ?? right;
  return severity[left] >= severity[right] ? left : right;
}

function worstReading(readings: readonly AnalysedReading[]): Figure<WorstReading> {
  let worst: WorstReading | undefined;
  for (const reading of readings) {
    for (const candidate of candidatesOf(reading)) {
      if (worst === undefined || candidate.partOfTolerance > worst.partOfTolerance) worst = candidate;
    }
  }
  return worst ?? notDetermined("no usable reading");
}

function candidatesOf(reading: AnalysedReading): readonly WorstReading[] {
  const { leftOut, error, loopError, tolerance } = reading;
  if (leftOut !== undefined) return [];
  const parts: WorstReading[] = [];
  if (error) parts.push(worstOf("sensor", reading, error.errorDistance, error.errorPercentSpan, tolerance));
  if (loopError) parts.push(worstOf("controller", reading, loopError.distance, loopError.percentSpan, tolerance));
  return parts;
}

function worstOf(
  of: JudgedPart,
  reading: AnalysedReading,
  errorDistance: number,
  errorPercentSpan: number,
  { low, high }: ToleranceLimits,
): WorstReading {
  const partOfTolerance = errorDistance === 0 ? 0 : errorDistance / (errorDistance > 0 ? high : low);
  return { of, reading, errorDistance, errorPercentSpan, partOfTolerance };
}
