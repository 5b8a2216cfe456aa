import { type Figure, notDetermined } from "../../analysis/figures/figure.ts";
import type { AnalysedReading } from "../../analysis/readings/analyse-readings.ts";
import { partOfTolerance } from "../../analysis/readings/place-in-range.ts";
import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import { type Statement, worstStatement } from "../../model/statement.ts";
import { isInside } from "../../units/is-inside.ts";
import { simpleAcceptance } from "./simple-acceptance.ts";

/** What is decided of one reading: inside the tolerance or not, whatever the rule. */
export type ReadingVerdict = "pass" | "fail";

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
  readingVerdicts: readonly (ReadingVerdict | undefined)[];
  sensor: Figure<Statement>;
  controller: Figure<Statement>;
  overall: Figure<Statement>;
  worst: Figure<WorstReading>;
};

/** The test points of the sensor and of the controller with what is said of each; none under simple acceptance. */
export type PointStatements = { sensor: readonly Statement[]; controller: readonly Statement[] };

/**
 * Decides one phase: the sensor, the controller, and the worse of the two.
 *
 * Simple acceptance judges every reading on its own. The other rules judge the mean of each direction at each test
 * point with its uncertainty, which holds the scatter of the readings already; readings outside the tolerance are then
 * marked and decide nothing. Whatever the rule, a reading inside the range whose signal reports a fault fails: the loop
 * gave no measurement where it should.
 *
 * @param readings of one phase, analysed
 * @param magnitude greatest distance from zero within the range
 * @param points statements of the test points; left out for simple acceptance
 * @returns a verdict a reading (none where it is left out), a part, and overall
 * Source: ILAC-G8:09/2019; ISO/IEC 17025:2017, 7.8.6, for a statement that names the results which it covers.
 * @example decidePhase([{ reading: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50,
 *   signal: 12.16 }, point: 50, cycle: 1, tolerance: { low: -1, high: 1 }, error: { indicated: 51, errorDistance: 1,
 *   errorOutput: 0.16, errorPercentSpan: 1 }, shares: { sensor: 1 }, isFaultInRange: false }], 100).overall // "pass"
 */
export function decidePhase(
  readings: readonly AnalysedReading[],
  magnitude: number,
  points?: PointStatements,
): PhaseVerdict {
  const decided = readings.map((reading) => decideReading(reading, magnitude));
  const faults = readings.filter(({ isFaultInRange }) => isFaultInRange).map((): Statement => "fail");
  const sensor = points?.sensor ?? decided.flatMap((reading) => reading.sensor ?? []);
  const controller = points?.controller ?? decided.flatMap((reading) => reading.controller ?? []);
  return {
    readingVerdicts: decided.map(({ sensor, controller }) =>
      worstStatement([sensor, controller].filter((verdict) => verdict !== undefined)),
    ),
    sensor: worstStatement([...sensor, ...faults]) ?? notDetermined("no usable reading"),
    controller: worstStatement(controller) ?? notDetermined("no controller value was read"),
    overall: worstStatement([...sensor, ...faults, ...controller]) ?? notDetermined("no usable reading"),
    worst: worstReading(readings, magnitude),
  };
}

type DecidedReading = { sensor?: ReadingVerdict; controller?: ReadingVerdict };

function decideReading(analysed: AnalysedReading, magnitude: number): DecidedReading {
  const { leftOut, isFaultInRange, error, loopError, tolerance } = analysed;
  if (isFaultInRange) return { sensor: "fail" };
  if (leftOut !== undefined) return {};
  return {
    ...(error && { sensor: simpleAcceptance(error.errorDistance, tolerance, magnitude) }),
    ...(loopError && { controller: simpleAcceptance(loopError.distance, tolerance, magnitude) }),
  };
}

function worstReading(readings: readonly AnalysedReading[], magnitude: number): Figure<WorstReading> {
  let worst: WorstReading | undefined;
  for (const reading of readings) {
    for (const candidate of candidatesOf(reading, magnitude)) {
      if (worst === undefined || beyond(candidate) > beyond(worst)) worst = candidate;
    }
  }
  return worst ?? notDetermined("no usable reading");
}

function beyond({ partOfTolerance }: WorstReading): number {
  return partOfTolerance ?? Number.POSITIVE_INFINITY;
}

function candidatesOf(reading: AnalysedReading, magnitude: number): readonly WorstReading[] {
  const { leftOut, error, loopError, tolerance } = reading;
  if (leftOut !== undefined) return [];
  const candidate = (of: JudgedPart, errorDistance: number, errorPercentSpan: number): WorstReading => ({
    of,
    reading,
    errorDistance,
    errorPercentSpan,
    partOfTolerance: partIn(errorDistance, tolerance, magnitude),
  });
  return [
    ...(error ? [candidate("sensor", error.errorDistance, error.errorPercentSpan)] : []),
    ...(loopError ? [candidate("controller", loopError.distance, loopError.percentSpan)] : []),
  ];
}

/** A tolerance in percent of reading is zero at a reference of zero: no part of it can be given there. */
function partIn(errorDistance: number, tolerance: ToleranceLimits, magnitude: number): number | null {
  const part = partOfTolerance(errorDistance, tolerance.low, tolerance.high);
  if (Number.isFinite(part)) return part;
  return isInside(errorDistance, tolerance, magnitude) ? 0 : null;
}
