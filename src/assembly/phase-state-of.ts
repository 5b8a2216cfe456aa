import { loopOf } from "../analysis/readings/loop.ts";
import { greatestPart, partAt } from "../analysis/readings/part-at.ts";
import { type StageName, stageWords } from "../model/loop-stages.ts";
import { spanOf } from "../model/range.ts";
import { isInTolerance } from "../model/statement.ts";
import { placesOf } from "../model/test-points.ts";
import { greatestOf } from "../numeric/least-and-greatest.ts";
import type { PhaseCauses } from "../record/causes-schema.ts";
import { lastLooks } from "../record/looks-by-item.ts";
import { endError, faultsIn, worstPointOf } from "../record/loop-end.ts";
import type { PhaseName } from "../record/phase-name.ts";
import { lastPhaseName } from "../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord, ReadingRecord } from "../record/record-schema.ts";
import type { CorrectedCurve, ErrorLeftRecord, ReteachPhase } from "../record/reteach-schema.ts";
import { type LoopItemKey, listedKey } from "../verdict/loop-check/loop-items.ts";
import type {
  FailedCheck,
  Forecast,
  ForecastLeft,
  PartState,
  PhaseState,
} from "../verdict/recommendation/phase-state.ts";
import { thresholdsOf, thresholdValues } from "../verdict/recommendation/recommendation-thresholds.ts";
import { switchedStates } from "./switched-states.ts";
import { driftOf } from "./years/drift-of.ts";

/**
 * What one phase of a record shows, as a recommendation takes it: nothing is reckoned anew, only laid over the tolerance.
 *
 * @param record with all its other parts
 * @param name of the phase
 * @param phase of that name
 * @returns state; loop checks count in the last phase, for no row says when it was looked at
 * Source: the parts' own files.
 * @example phaseStateOf(record, "asFound", record.phases.asFound).sensor?.worst // 1.903
 */
export function phaseStateOf(record: CalibrationRecord, name: PhaseName, phase: PhaseRecord): PhaseState {
  const { instrument, decisionRule, reteach, causes } = record;
  const forecast = reteach?.[name];
  const loop = loopOf(instrument);
  const partOf: PartOf = (percentSpan, reference) => partAt(loop, percentSpan, reference);
  const isLast = name === lastPhaseName(record);
  const isWhole = phase.judged === "value";
  const isProved = (key: LoopItemKey) => isInOrder(record, key);
  const explained = record.sound?.explained.find((one) => one.phase === name);
  return {
    unit: instrument.distanceUnit,
    rangeLower: instrument.rangeLower,
    rangeUpper: instrument.rangeUpper,
    rule: { name: decisionRule.name, guardFactor: decisionRule.guardFactor },
    minimumTestUncertaintyRatio: decisionRule.minimumTestUncertaintyRatio,
    statement: phase.verdict,
    judged: phase.judged,
    sensor: partState(sensorStatement(phase), phase, ({ errorDistance }) => errorDistance, forecast?.sensor, partOf),
    controller:
      isWhole || phase.endOf === "sensor"
        ? null
        : partState(phase.verdict, phase, (reading) => endError(reading)?.errorDistance, forecast?.controller, partOf),
    stageParts: (causes?.[name]?.stageLines ?? []).map((line) => ({
      stage: line.stage as StageName,
      part: Math.max(
        partOf(line.errorAtLower.percentSpan, instrument.rangeLower),
        partOf(line.errorAtUpper.percentSpan, instrument.rangeUpper),
      ),
    })),
    ...lineOff(causes?.[name]?.stageLines.find(({ stage }) => sensorStages.includes(stage))),
    findings: causes?.[name]?.findings ?? [],
    ...othersOf(causes?.[name]?.setAside, forecast, partOf),
    faultReadings: faultsIn(phase),
    ...scatterOf(phase, forecast?.sensor),
    gap: phase.hysteresis && partOf(phase.hysteresis.percentSpan / 2, phase.hysteresis.point),
    isTargetProved: isProved("target"),
    isResponseProved: isProved("response") || isProved("filter"),
    newConstants: forecast?.newConstants?.worst.statement ?? null,
    worstPoint: worstPointIn(phase),
    missing: phase.missing.map(({ says }) => says),
    isThinlyRead:
      placesIn(phase, spanOf(instrument)) >= fewestToLeave &&
      phase.missing.every(({ about }) => about === "points" || about === "ends"),
    switching: switchedStates(record, name),
    failedChecks: isLast ? failedChecksOf(record) : [],
    leftWithoutAir: explained ? worstLeftPart(explained, record, partOf) : null,
    isJustTaught: name === "asLeft" && record.calibration.adjustment === "re-teach",
    isPassingBefore: name === "asLeft" && isInTolerance(sensorStatement(record.phases.asFound)),
    drift: driftOf(record),
    thresholds: thresholdValues(thresholdsOf(instrument)),
  };
}

/** Where only values were read, the word of the whole loop stands for the sensor. */
function sensorStatement(phase: PhaseRecord | undefined): PartState["statement"] {
  if (phase === undefined) return null;
  return phase.judged === "value" ? phase.verdict : phase.verdicts.sensor;
}

function isInOrder({ loopChecks }: CalibrationRecord, key: LoopItemKey): boolean {
  return lastLooks(loopChecks?.items ?? []).some(({ item, result }) => listedKey(item) === key && result === "pass");
}

/** Two test points lie on a line whatever the sensor does. */
const fewestToLeave = 3;

function placesIn({ points, readings }: PhaseRecord, span: number): number {
  const read = readings.filter(({ leftOut }) => leftOut === undefined);
  return placesOf(
    points.map(({ point }) => point),
    read.map(({ reference }) => reference),
    span,
  );
}

/** An error in percent of span over the tolerance at a distance. */
type PartOf = (percentSpan: number, reference: number) => number;

type ErrorOf = (reading: ReadingRecord) => number | undefined;

function partState(
  statement: PartState["statement"],
  { readings }: PhaseRecord,
  errorOf: ErrorOf,
  curve: CorrectedCurve | null | undefined,
  partOf: PartOf,
): PartState | null {
  if (statement === null) return null;
  const errors = readings.flatMap((reading) => {
    const error = errorOf(reading);
    return error === undefined || reading.leftOut !== undefined ? [] : [{ ...reading, error }];
  });
  return { statement, worst: greatestPart(errors), forecast: curve ? forecastOf(curve, partOf) : null };
}

/** Own choice: three standard uncertainties, which noise alone reaches three times in a thousand. */
const noiseReaches = 3;

const sensorStages: readonly string[] = [stageWords.sensor, stageWords.sensorAndWiring];

function lineOff(line: PhaseCauses["stageLines"][number] | undefined): Pick<PhaseState, "isLineOff"> {
  if (line === undefined) return {};
  const isOff = [line.errorAtLower, line.errorAtUpper].some(
    ({ percentSpan, standardUncertainty }) => Math.abs(percentSpan) > noiseReaches * standardUncertainty,
  );
  return { isLineOff: isOff };
}

/** The forecast leaves out what stands apart; so does what it takes for the error now. */
function othersOf(
  setAside: readonly { why: string }[] | undefined,
  forecast: ReteachPhase | undefined,
  partOf: PartOf,
): Pick<PhaseState, "others"> {
  const apart = setAside?.filter(({ why }) => why !== "railed").length ?? 0;
  const end = forecast?.controller ?? forecast?.sensor;
  if (apart === 0 || !forecast || !end) return {};
  const left = (curve: CorrectedCurve | null | undefined) => (curve ? leftOf(curve.now, partOf) : null);
  return {
    others: { apart, sensor: left(forecast.sensor), controller: left(forecast.controller), point: end.now.point },
  };
}

function leftOf({ statement, errorDistance, errorPercentSpan, point }: ErrorLeftRecord, partOf: PartOf): ForecastLeft {
  return { statement, errorDistance, part: partOf(errorPercentSpan, point) };
}

/** Half of the spread that 95 % of readings keep to: two standard deviations, which do not grow with their number. */
function scatterOf(
  { repeatability, notDetermined }: PhaseRecord,
  curve: CorrectedCurve | null | undefined,
): Pick<PhaseState, "scatter" | "leastScatter"> {
  const scatter = repeatability === null ? undefined : curve?.scatter;
  if (scatter === undefined) {
    return { scatter: { notDetermined: notDetermined.repeatability ?? "not in these data" }, leastScatter: 0 };
  }
  return { scatter: 2 * scatter.part, leastScatter: 2 * scatter.least };
}

function forecastOf(
  { now, best, ends, isCurable, whyNot, steadyLeft, expected }: CorrectedCurve,
  partOf: PartOf,
): Forecast {
  const left = (error: ErrorLeftRecord) => leftOf(error, partOf);
  return {
    now: left(now),
    best: best && left(best.worst),
    ends: ends && left(ends.worst),
    isCurable,
    ...(steadyLeft !== undefined && { steadyLeft }),
    ...(expected && { chanceOfPass: expected.chanceOfPass }),
    whyNot: whyNot ?? null,
  };
}

function worstPointIn(phase: PhaseRecord): PhaseState["worstPoint"] {
  const found = worstPointOf(phase);
  if (found === undefined) return null;
  const { point, errorDistance, expandedUncertainty, toleranceLow, toleranceHigh, budget } = found;
  const [greatest] = budget.lines.toSorted((one, other) => other.share - one.share);
  return {
    point,
    errorDistance,
    expandedUncertainty,
    tolerance: Math.min(-toleranceLow, toleranceHigh),
    greatestSource: greatest?.source ?? null,
  };
}

function failedChecksOf({ loopChecks }: CalibrationRecord): FailedCheck[] {
  return lastLooks(loopChecks?.items ?? [])
    .filter(({ result, isContradiction }) => result === "fail" || isContradiction)
    .map(({ item, number, outside, remark, isContradiction }) => ({
      item,
      key: number === null ? null : (listedKey(item) ?? null),
      says: [...outside, ...(remark === undefined ? [] : [remark])].join("; "),
      isContradiction,
    }));
}

function worstLeftPart(
  { points, worstLeft }: NonNullable<CalibrationRecord["sound"]>["explained"][number],
  { instrument }: CalibrationRecord,
  partOf: PartOf,
): number {
  const span = spanOf(instrument);
  const parts = points.map(({ left, reference }) => partOf((100 * left) / span, reference));
  return Math.max(partOf((100 * worstLeft) / span, instrument.rangeUpper), greatestOf(parts));
}
