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
  /** Error divided by the tolerance on its side; null where that is zero and the error is not. */
  partOfTolerance: number | null;
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
 * @example decidePhase([{ reading: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50,
 *   signal: 12.16 }, point: 50, cycle: 1, tolerance: { low: -1, high: 1 }, error: { indicated: 51, errorDistance: 1,
 *   errorOutput: 0.16, errorPercentSpan: 1 }, shares: { sensor: 1 }, isFaultInRange: false }], 100).overall // "pass"
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
    worst: worstReading(readings, span),
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

function worstReading(readings: readonly AnalysedReading[], span: number): Figure<WorstReading> {
  let worst: WorstReading | undefined;
  for (const reading of readings) {
    for (const candidate of candidatesOf(reading, span)) {
      if (worst === undefined || beyond(candidate) > beyond(worst)) worst = candidate;
    }
  }
  return worst ?? notDetermined("no usable reading");
}

function beyond({ partOfTolerance }: WorstReading): number {
  return partOfTolerance ?? Number.POSITIVE_INFINITY;
}

function candidatesOf(reading: AnalysedReading, span: number): readonly WorstReading[] {
  const { leftOut, error, loopError, tolerance } = reading;
  if (leftOut !== undefined) return [];
  const candidate = (of: JudgedPart, errorDistance: number, errorPercentSpan: number): WorstReading => ({
    of,
    reading,
    errorDistance,
    errorPercentSpan,
    partOfTolerance: partOfTolerance(errorDistance, tolerance, span),
  });
  return [
    ...(error ? [candidate("sensor", error.errorDistance, error.errorPercentSpan)] : []),
    ...(loopError ? [candidate("controller", loopError.distance, loopError.percentSpan)] : []),
  ];
}

/** A tolerance in percent of reading is zero at a reference of zero: no part of it can be given there. */
function partOfTolerance(errorDistance: number, tolerance: ToleranceLimits, span: number): number | null {
  if (errorDistance === 0) return 0;
  const limit = errorDistance > 0 ? tolerance.high : tolerance.low;
  if (limit !== 0) return errorDistance / limit;
  return simpleAcceptance(errorDistance, tolerance, span) === "pass" ? 0 : null;
}
