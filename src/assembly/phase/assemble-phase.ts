import { analysePhase, curveReadingsOf, type PhaseAnalysis } from "../../analysis/figures/analyse-phase.ts";
import { type Figure, isDetermined, notDetermined } from "../../analysis/figures/figure.ts";
import type { AnalysedReading } from "../../analysis/readings/analyse-readings.ts";
import type { Loop, Stage } from "../../analysis/readings/loop.ts";
import { readingUncertainties } from "../../analysis/uncertainty/shared-uncertainty.ts";
import { zeroAndSpanUncertainty } from "../../analysis/uncertainty/zero-and-span-uncertainty.ts";
import type { Calibration, Reading, Standard } from "../../model/calibration.ts";
import type { TableRow } from "../../model/calibration-case.ts";
import type { Instrument } from "../../model/instrument.ts";
import { greatestDistanceOf } from "../../model/range.ts";
import type { PhaseRecord, Statement } from "../../record/record-schema.ts";
import type { DecimalMark } from "../../units/read-number.ts";
import { decidePhase, type JudgedPart, type PhaseVerdict, partOfStage } from "../../verdict/decision/decide-phase.ts";
import type { DecisionRule } from "../../verdict/decision/decision-rule.ts";
import { decidingPoints, type JudgedPhase, judgePhase, worstOf } from "../../verdict/decision/judge-phase.ts";
import type { MeasuredPhase } from "../assemble-overall.ts";
import { assembleFigures, orNull, type Reasons } from "./assemble-figures.ts";
import { assembleLine } from "./assemble-line.ts";
import { assemblePoints, type DrawnBy } from "./assemble-points.ts";
import { assembleReading } from "./assemble-reading.ts";
import { type ReadingResolutions, readingResolutions, stepsOf } from "./typed-resolution.ts";

/** What a phase is judged by: the loop, its rows, the decision rule, how its numbers were typed. */
export type PhaseContext = {
  loop: Loop;
  instrument: Instrument;
  calibration: Calibration;
  standards: readonly Standard[];
  rule: DecisionRule;
  markOf: (file: string) => DecimalMark;
  drawnBy?: DrawnBy | undefined;
};

/**
 * One phase as the record carries it: readings, figures, judged points, verdicts; a figure that cannot be had is null,
 * with its reason in `notDetermined`.
 *
 * @param rows readings of the phase, in the order of the table
 * @param context loop, instrument, calibration, standards, decision rule, decimal mark of a file
 * @returns the phase, numbers at full precision; or the reason why nothing in it can be judged
 * Source: each figure's own file in `analysis`.
 * @example assemblePhase([{ file: "readings.csv", line: 2, cells: { reference: "50", signal: "12.16" },
 *   row: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.16 } }],
 *   { loop: { characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
 *   toleranceTerms: [{ basis: "distance", plus: 1, minus: 1 }], faultLevels: {}, signalUnit: "mA" },
 *   instrument: { tag: "LT-1", rangeLower: 0, rangeUpper: 100, distanceUnit: "mm", signalLower: 4,
 *   signalUpper: 20, signalUnit: "mA", tolerance: 1, toleranceBasis: "distance" },
 *   calibration: { calibration: "C-1", tag: "LT-1" }, standards: [],
 *   rule: { name: "simple acceptance", guardFactor: 0 }, markOf: () => "point" }).verdict // "pass"
 */
export function assemblePhase(rows: readonly TableRow<Reading>[], context: PhaseContext): Figure<MeasuredPhase> {
  const { loop, rule, drawnBy } = context;
  const typed = readingResolutions(rows, context.instrument, context.markOf);
  const steps = stepsOf(typed);
  const analysis = analysePhase(
    rows.map(({ row }) => row),
    loop,
    steps,
  );
  if (!isDetermined(analysis)) return analysis;
  const judged = judgePhase(analysis, { ...context, steps }, loop, rule);
  const shared = readingUncertainties(judged.basis);
  const uncertainties = zeroAndSpanUncertainty(
    curveReadingsOf(analysis.readings),
    judged.basis,
    loop.characteristics.signal,
  );
  const magnitude = greatestDistanceOf(loop.characteristics.signal);
  const decided = decidePhase(
    { readings: analysis.readings, judged: analysis.judged, magnitude },
    rule.name === "simple acceptance" ? undefined : statementsOf(judged),
  );
  const { points, endPoints, worstPoint } = pointsOf(judged, analysis);
  const reasons: Reasons = {};
  const line = assembleLine(analysis, judged.basis, shared, loop);
  if (isDetermined(line) && !line.isStraight)
    reasons["uncertainLine.inverse"] = "the readings do not lie on one straight line";
  return {
    readings: analysis.readings.map((reading, index) =>
      assembleReading(reading, rows[index]?.line ?? 0, decided.readingVerdicts[index]),
    ),
    judged: analysis.judged,
    counted: countedOf(analysis),
    decimals: decimalsOf(typed),
    ...assembleFigures(analysis, { uncertainties, reasons }),
    points: assemblePoints(points, drawnBy, 0),
    endOf: decided.end,
    ...(endPoints.length > 0 && { endPoints: assemblePoints(endPoints, drawnBy, 1) }),
    worstPoint,
    uncertainLine: orNull("uncertainLine", line, reasons),
    ...statementOf(analysis, decided, rows, reasons),
    notDetermined: reasons,
  };
}

function decimalsOf({ reference, signal, counts, value }: ReadingResolutions): PhaseRecord["decimals"] {
  return {
    reference: reference.decimals,
    signal: signal.decimals,
    counts: counts.decimals,
    value: value.decimals,
  };
}

/** The points of the first stage, those behind it by which the loop is decided, and where the worst of these stands. */
function pointsOf(judged: JudgedPhase, { judged: first }: PhaseAnalysis) {
  const deciding = decidingPoints(judged);
  const worst = deciding[worstOf(deciding) ?? -1];
  const points = judged.stages.get(first) ?? [];
  const endPoints = deciding.filter(({ stage }) => stage !== first);
  const index = (worst?.stage === first ? points : endPoints).findIndex(
    ({ curvePoint }) => curvePoint === worst?.curvePoint,
  );
  return { points, endPoints, worstPoint: worst === undefined ? null : { of: partOfStage(worst.stage, first), index } };
}

function statementsOf({ stages }: JudgedPhase) {
  const statementAt = ({
    curvePoint,
    decision,
  }: {
    curvePoint: { point: number };
    decision: { statement: Statement };
  }) => ({
    point: curvePoint.point,
    statement: decision.statement,
  });
  return new Map([...stages].map(([stage, points]) => [stage, points.map(statementAt)]));
}

function countedOf({ readings, curve, cycles }: PhaseAnalysis): PhaseRecord["counted"] {
  const leftOut = readings.filter((reading) => reading.leftOut !== undefined).length;
  return { readings: readings.length, used: readings.length - leftOut, leftOut, points: curve.length, cycles };
}

function statementOf(
  analysis: PhaseAnalysis,
  decided: PhaseVerdict,
  rows: readonly TableRow<Reading>[],
  reasons: Reasons,
): Pick<PhaseRecord, "loopError" | "worst" | "verdicts" | "verdict"> {
  const greatest = orNull("loopError", analysis.greatestLoopError, reasons);
  const worst = orNull("worst", decided.worst, reasons);
  const lineOf = (reading: AnalysedReading) => rows[analysis.readings.indexOf(reading)]?.line ?? 0;
  return {
    loopError: greatest?.loopError ? { ...greatest.loopError, row: lineOf(greatest), shares: greatest.shares } : null,
    worst: worst && {
      of: worst.of,
      row: lineOf(worst.reading),
      errorDistance: worst.errorDistance,
      errorPercentSpan: worst.errorPercentSpan,
      partOfTolerance: worst.partOfTolerance,
    },
    verdicts: verdictsOf(decided, analysis.judged, reasons),
    verdict: orNull("verdict", decided.overall, reasons),
  };
}

/** Where the controller's value is all that was read, its word is that of the first stage. */
function verdictsOf({ parts }: PhaseVerdict, judged: Stage, reasons: Reasons): PhaseRecord["verdicts"] {
  const word = (part: JudgedPart, why: string, name: string) =>
    orNull(`verdicts.${name}`, parts.get(part) ?? notDetermined(why), reasons);
  const [wiring, inputCard] = [parts.get("wiring"), parts.get("input card")];
  return {
    sensor: word("sensor", "no usable reading", "sensor"),
    ...(wiring && { wiring }),
    ...(inputCard && { inputCard }),
    controller: word(judged === "value" ? "sensor" : "controller", "no controller value was read", "controller"),
  };
}
