import { type Figure, isDetermined } from "../analysis/figures/figure.ts";
import type { Correction } from "../analysis/figures/two-constant-correction.ts";
import { indicatedDistance } from "../analysis/readings/ideal-characteristic.ts";
import { type Loop, loopOf } from "../analysis/readings/loop.ts";
import { spanOf } from "../model/range.ts";
import { digestOf } from "../record/file-digest.ts";
import { decidingPoints } from "../record/loop-end.ts";
import type { PhaseName } from "../record/phase-name.ts";
import type { CalibrationRecord, JudgedPointRecord, PhaseRecord, ReadingRecord } from "../record/record-schema.ts";
import type { CorrectedCurve, ErrorLeftRecord, NewConstants, ReteachPhase } from "../record/reteach-schema.ts";
import type { DecisionRule } from "../verdict/decision/decision-rule.ts";
import { chanceOfPass, type PlannedReading } from "../verdict/teaching/chance-of-pass.ts";
import { judgedErrors } from "../verdict/teaching/judged-errors.ts";
import { newConstantsOf } from "../verdict/teaching/new-constants.ts";
import { leastScatter, readingScatter } from "../verdict/teaching/reading-scatter.ts";
import { correctionOf, type ErrorLeft, errorLeft, type JudgedError, reteach } from "../verdict/teaching/reteach.ts";
import { steadyLeft } from "../verdict/teaching/steady-left.ts";
import { orNull, type Reasons } from "./phase/assemble-figures.ts";

/**
 * What re-teaching the sensor, or new constants in the controller, could do in each phase.
 *
 * @param record with its phases
 * @returns the part; a phase in which no test point was judged is absent from it
 * Source: `reteach`, `newConstantsOf`.
 * @example assembleReteach(record).reteach?.asFound?.sensor?.isCurable // true
 */
export function assembleReteach(record: CalibrationRecord): Pick<CalibrationRecord, "reteach"> {
  const { asFound, asLeft } = record.phases;
  const found = asFound && phaseOf(record, "asFound", asFound);
  const left = asLeft && phaseOf(record, "asLeft", asLeft);
  if (found === undefined && left === undefined) return {};
  return { reteach: { ...(found && { asFound: found }), ...(left && { asLeft: left }) } };
}

type Setting = { loop: Loop; rule: DecisionRule; span: number; setAside: ReadonlySet<number> };

function phaseOf(record: CalibrationRecord, name: PhaseName, phase: PhaseRecord): ReteachPhase | undefined {
  const loop = loopOf(record.instrument);
  const { name: rule, guardFactor } = record.decisionRule;
  const setting = {
    loop,
    rule: { name: rule, guardFactor },
    span: spanOf(loop.characteristics.signal),
    setAside: new Set(record.causes?.[name]?.setAside?.map(({ reading }) => reading)),
  };
  const sensor = errorsOf(phase, phase.points, ({ indicated }) => indicated, setting);
  const controller = errorsOf(phase, phase.endPoints ?? [], controllerDistance, setting);
  if (sensor.length === 0 && controller.length === 0) return undefined;
  const reasons: Reasons = {};
  return {
    sensor:
      sensor.length === 0 ? null : { ...curveOf("sensor", sensor, setting, reasons), ...expectedOf(phase, setting) },
    ...(controller.length > 0 && { controller: curveOf("controller", controller, setting, reasons) }),
    newConstants: orNull("newConstants", constantsOf(phase, { sensor, controller }, setting), reasons),
    notDetermined: reasons,
  };
}

function controllerDistance({ reference, loopErrorDistance }: ReadingRecord): number | undefined {
  return loopErrorDistance === undefined ? undefined : reference + loopErrorDistance;
}

/** Readings that say nothing of the curve are left out: railed, wild, exchanged, mistyped. */
function usedErrors(
  { readings }: PhaseRecord,
  distanceOf: (reading: ReadingRecord) => number | undefined,
  { setAside }: Setting,
) {
  return readings.flatMap((reading, place) => {
    const indicated = distanceOf(reading);
    if (reading.leftOut !== undefined || indicated === undefined || setAside.has(place)) return [];
    const { point, direction, cycle = 1, reference, toleranceLow: low, toleranceHigh: high } = reading;
    return [{ point, direction, cycle, reference, indicated, tolerance: { low, high } }];
  });
}

function errorsOf(
  phase: PhaseRecord,
  points: readonly JudgedPointRecord[],
  distanceOf: (reading: ReadingRecord) => number | undefined,
  setting: Setting,
): readonly JudgedError[] {
  const { rule } = setting;
  const errors = usedErrors(phase, distanceOf, setting);
  const limits = points.map(({ point, toleranceLow: low, toleranceHigh: high, ...judged }) => ({
    point,
    tolerance: { low, high },
    expandedUncertainty: judged.expandedUncertainty,
    coverageFactor: judged.coverageFactor,
  }));
  return judgedErrors(errors, limits, rule);
}

/** What stays of the curve for certain, its scatter, and the chance that new readings pass after a teach. */
function expectedOf(phase: PhaseRecord, setting: Setting): Pick<CorrectedCurve, "steadyLeft" | "scatter" | "expected"> {
  const range = setting.loop.characteristics.signal;
  const errors = usedErrors(phase, ({ indicated }) => indicated, setting);
  const scatter = readingScatter(errors);
  const planned = plannedReadings(errors, phase, setting);
  const judgedBy = setting.rule.name === "simple acceptance" ? "reading" : "mean";
  const seed = digestOf(new TextEncoder().encode(JSON.stringify(planned)));
  const drawn = planned.length === 0 ? undefined : chanceOfPass(planned, range, judgedBy, seed);
  return {
    steadyLeft: steadyLeft(errors, scatter, range),
    ...(scatter && { scatter: { ...scatter, least: leastScatter(scatter) } }),
    ...(drawn !== undefined && { expected: { chanceOfPass: drawn.chance, draws: drawn.draws } }),
  };
}

/** None where at some test point no error can pass. */
function plannedReadings(
  errors: ReturnType<typeof usedErrors>,
  { points }: PhaseRecord,
  { rule }: Setting,
): readonly PlannedReading[] {
  const acceptanceAt = new Map(points.map(({ point, ...judged }) => [point, judged]));
  const planned = errors.flatMap(({ tolerance, ...reading }): PlannedReading[] => {
    const judged = acceptanceAt.get(reading.point);
    if (rule.name === "simple acceptance") return [{ ...reading, acceptance: tolerance }];
    if (judged === undefined || judged.acceptanceLow === null || judged.acceptanceHigh === null) return [];
    return [{ ...reading, acceptance: { low: judged.acceptanceLow, high: judged.acceptanceHigh } }];
  });
  return planned.length < errors.length ? [] : planned;
}

function contextOf({ loop, rule }: Setting) {
  return { rule, range: loop.characteristics.signal };
}

function curveOf(
  name: "sensor" | "controller",
  errors: readonly JudgedError[],
  setting: Setting,
  reasons: Reasons,
): CorrectedCurve {
  const { now, best, ends, isCurable, whyNot } = reteach(errors, contextOf(setting));
  const correction = (of: "best" | "ends", figure: Figure<Correction & { worst: ErrorLeft }>) => {
    const found = orNull(`${name}.${of}`, figure, reasons);
    return found && { lower: found.lower, upper: found.upper, worst: leftRecord(found.worst, setting) };
  };
  return {
    now: leftRecord(now, setting),
    best: correction("best", best),
    ends: correction("ends", ends),
    isCurable: orNull(`${name}.isCurable`, isCurable, reasons),
    ...(whyNot && { whyNot }),
  };
}

function leftRecord(left: ErrorLeft, { span }: Setting): ErrorLeftRecord {
  return { ...left, errorPercentSpan: (100 * left.errorDistance) / span };
}

type Curves = { sensor: readonly JudgedError[]; controller: readonly JudgedError[] };

/** From the last quantity before the controller's own scaling: the counts where they were read. */
function constantsOf(phase: PhaseRecord, { sensor, controller }: Curves, setting: Setting): Figure<NewConstants> {
  const { counts } = setting.loop.characteristics;
  const limits = decidingPoints(phase);
  const fromCounts = counts
    ? errorsOf(phase, limits, (reading) => countsDistance(reading, counts), setting)
    : ([] as const);
  if (fromCounts.length > 0) return constants("counts", fromCounts, setting);
  if (controller.length > 0) return constants("value", controller, setting);
  return constants(phase.judged, sensor, setting);
}

function countsDistance(
  { counts }: ReadingRecord,
  characteristic: Parameters<typeof indicatedDistance>[0],
): number | undefined {
  return counts === undefined ? undefined : indicatedDistance(characteristic, counts);
}

function constants(
  of: "signal" | "counts" | "value",
  errors: readonly JudgedError[],
  setting: Setting,
): Figure<NewConstants> {
  const context = contextOf(setting);
  const correction = correctionOf(errors, context);
  if (!isDetermined(correction)) return correction;
  const found = newConstantsOf(of, correction, setting.loop);
  if (!isDetermined(found)) return found;
  return { ...found, worst: leftRecord(errorLeft(errors, context, correction), setting) };
}
