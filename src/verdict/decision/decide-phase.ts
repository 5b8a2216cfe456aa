import { type Figure, notDetermined } from "../../analysis/figures/figure.ts";
import type { AnalysedReading, StageError } from "../../analysis/readings/analyse-readings.ts";
import { type ReadStage, readStages, type Stage } from "../../analysis/readings/loop.ts";
import { partOfTolerance } from "../../analysis/readings/place-in-range.ts";
import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import { type Statement, worstStatement } from "../../model/statement.ts";
import { isInside } from "../../units/is-inside.ts";
import { simpleAcceptance } from "./simple-acceptance.ts";

/** What is decided of one reading: inside the tolerance or not, whatever the rule. */
export type ReadingVerdict = "pass" | "fail";

/** How far into the loop a word goes: the first stage that was read, or everything up to and with a later one. */
export type JudgedPart = "sensor" | "wiring" | "input card" | "controller";

/** The reading that comes nearest to its limit or goes farthest beyond it. */
export type WorstReading = {
  of: JudgedPart;
  reading: AnalysedReading;
  errorDistance: number;
  errorPercentSpan: number;
  /** Error divided by the tolerance on its side; null where that is zero and the error is not. */
  partOfTolerance: number | null;
};

/** What was decided for one phase: a word for each stage that was read, and the loop's own, which is that of its end. */
export type PhaseVerdict = {
  readingVerdicts: readonly (ReadingVerdict | undefined)[];
  parts: ReadonlyMap<JudgedPart, Statement>;
  /** The part that the last stage which was read stands for. */
  end: JudgedPart;
  overall: Figure<Statement>;
  worst: Figure<WorstReading>;
};

/** What is said of each test point, by stage: nothing under simple acceptance. */
export type PointStatements = ReadonlyMap<ReadStage, readonly { point: number; statement: Statement }[]>;

type Decided = { readings: readonly AnalysedReading[]; magnitude: number; judged: Stage };

/**
 * The part of the loop that a stage stands for: "sensor" for the first that was read, whatever it is.
 *
 * @param stage that was read
 * @param judged the first stage that was read
 * @returns the part
 * Source: own choice of words.
 * @example partOfStage("counts", "signal") // "input card"
 */
export function partOfStage(stage: ReadStage, judged: Stage): JudgedPart {
  if (stage === judged || stage === "signal") return "sensor";
  if (stage === "signalAtCard") return "wiring";
  return stage === "counts" ? "input card" : "controller";
}

/**
 * Decides one phase: each stage of the loop that was read, and the loop where it ends.
 *
 * The plant acts on what the last stage gives, so the loop's word is that of the last stage that was read; at a test
 * point where that was not read, of the last one that was. A stage before it keeps its own word against the same
 * tolerance. Simple acceptance judges every reading on its own. The other rules judge the mean of each direction at each
 * test point with its uncertainty, which holds the scatter of the readings already; readings outside the tolerance are
 * then marked and decide nothing. Whatever the rule, a reading inside the range whose signal reports a fault fails, or
 * stands at an end where it should not: the loop gave no measurement where it should.
 *
 * @param phase its readings, analysed; greatest distance from zero within the range; the first stage that was read
 * @param points statements of the test points of each stage; left out for simple acceptance
 * @returns a verdict a reading (none where it is left out), a word a part, and the loop's
 * Source: ILAC-G8:09/2019; ISO/IEC 17025:2017, 7.8.6, for a statement that names the results which it covers; own choice
 * of where a loop is judged.
 * @example decidePhase({ readings: [{ reading: { calibration: "C-1", phase: "as_found", direction: "rising",
 *   reference: 50, signal: 12.16 }, point: 50, cycle: 1, tolerance: { low: -1, high: 1 },
 *   stageErrors: { signal: { distance: 1, percentSpan: 1 } }, shares: { sensor: 1 }, isOutsideAnyway: false }],
 *   magnitude: 100, judged: "signal" }).overall // "pass"
 */
export function decidePhase(phase: Decided, points?: PointStatements): PhaseVerdict {
  const { readings, judged } = phase;
  const read = stagesRead(readings, judged);
  const faults = readings.filter(({ isOutsideAnyway }) => isOutsideAnyway).map((): Statement => "fail");
  const isOfFirst = ({ isOutsideAnyway, isFirstInside }: AnalysedReading) => isOutsideAnyway && isFirstInside !== true;
  const ofFirst = readings.filter(isOfFirst).map((): Statement => "fail");
  const ofStage = (stage: ReadStage): readonly Statement[] => [
    ...(points ? (points.get(stage) ?? []).map(({ statement }) => statement) : verdictsAt(phase, stage)),
    ...(stage === judged ? ofFirst : []),
  ];
  const readingVerdicts = readings.map((reading) => verdictOf(reading, phase));
  const atEnd = points ? endStatements(points) : readingVerdicts.filter((verdict) => verdict !== undefined);
  return {
    readingVerdicts,
    parts: new Map(
      [...new Set([judged, ...read])].flatMap((stage) => {
        const word = worstStatement(ofStage(stage));
        return word === undefined ? [] : [[partOfStage(stage, judged), word] as const];
      }),
    ),
    end: partOfStage(read.at(-1) ?? judged, judged),
    overall: worstStatement([...atEnd, ...faults]) ?? notDetermined("no usable reading"),
    worst: worstReading(phase),
  };
}

/**
 * The stages that readings of a phase give, the first judged one and those behind it.
 *
 * @param readings of one phase, analysed
 * @param judged the first stage that was read
 * @returns stages in the order of the loop; none where no reading counts
 * Source: own choice.
 * @example stagesRead([], "signal") // []
 */
export function stagesRead(readings: readonly AnalysedReading[], judged: Stage): readonly ReadStage[] {
  const counted = readings.filter(({ leftOut }) => leftOut === undefined);
  return readStages
    .slice(readStages.indexOf(judged))
    .filter((stage) => counted.some(({ stageErrors }) => stageErrors[stage] !== undefined));
}

/** At each test point the word of the last stage that was read there. */
function endStatements(points: PointStatements): readonly Statement[] {
  const last = new Map([...points.values()].flatMap((some) => some.map(({ point, statement }) => [point, statement])));
  return [...last.values()];
}

function verdictsAt({ readings, magnitude }: Decided, stage: ReadStage): readonly Statement[] {
  return readings.flatMap(({ leftOut, stageErrors, tolerance }) => {
    const error = stageErrors[stage];
    return leftOut !== undefined || error === undefined ? [] : [simpleAcceptance(error.distance, tolerance, magnitude)];
  });
}

function verdictOf(reading: AnalysedReading, { magnitude, judged }: Decided): ReadingVerdict | undefined {
  if (reading.isOutsideAnyway) return "fail";
  if (reading.railed !== undefined && reading.reading.rejected === undefined) return "pass";
  const end = endError(reading, judged);
  return end && simpleAcceptance(end.distance, reading.tolerance, magnitude);
}

/** The error of the last stage that was read at one reading; none where it is left out. */
function endError(
  { leftOut, stageErrors }: AnalysedReading,
  judged: Stage,
): (StageError & { stage: ReadStage }) | undefined {
  if (leftOut !== undefined) return undefined;
  const stage = readStages.slice(readStages.indexOf(judged)).findLast((one) => stageErrors[one] !== undefined);
  const error = stage && stageErrors[stage];
  return stage && error && { ...error, stage };
}

function worstReading({ readings, magnitude, judged }: Decided): Figure<WorstReading> {
  let worst: WorstReading | undefined;
  for (const reading of readings) {
    const end = endError(reading, judged);
    if (end === undefined) continue;
    const candidate = {
      of: partOfStage(end.stage, judged),
      reading,
      errorDistance: end.distance,
      errorPercentSpan: end.percentSpan,
      partOfTolerance: partIn(end.distance, reading.tolerance, magnitude),
    };
    if (worst === undefined || beyond(candidate) > beyond(worst)) worst = candidate;
  }
  return worst ?? notDetermined("no usable reading");
}

function beyond({ partOfTolerance }: WorstReading): number {
  return partOfTolerance ?? Number.POSITIVE_INFINITY;
}

/** A tolerance in percent of reading is zero at a reference of zero: no part of it can be given there. */
function partIn(errorDistance: number, tolerance: ToleranceLimits, magnitude: number): number | null {
  const part = partOfTolerance(errorDistance, tolerance.low, tolerance.high);
  if (Number.isFinite(part)) return part;
  return isInside(errorDistance, tolerance, magnitude) ? 0 : null;
}
