import type { Loop } from "../../../analysis/readings/loop.ts";
import { railedReadings } from "../../../analysis/readings/railed-readings.ts";
import { toleranceAt } from "../../../analysis/readings/tolerance.ts";
import { type StageEnds, type StageLine, stagesRead } from "../../../analysis/stages/stage-lines.ts";
import { inUnitOf, type StagedReading, stagedReadings } from "../../../analysis/stages/staged-readings.ts";
import type { Calibration, LoopCheck, Reading } from "../../../model/calibration.ts";
import type { Instrument } from "../../../model/instrument.ts";
import type { Axis } from "../../../model/loop-stages.ts";
import { spanOf } from "../../../model/range.ts";
import { greatestOf } from "../../../numeric/least-and-greatest.ts";
import type { SwitchedState } from "../../switching/switched-state.ts";
import { faultReadings } from "./fault-readings.ts";
import { countedTwice, type Echoes, heldStageReadings, stagePlateaus } from "./flagged-readings.ts";
import { type ApartReadings, apartReadings, membersOf } from "./set-aside.ts";
import {
  hasGrowingSpread,
  type StageContext,
  type StageEvidence,
  stageCorrelation,
  stageEvidence,
} from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";
import { type TypedDecimals, type TypingSlip, typingSlips } from "./typing-slips.ts";
import { valueRounding } from "./value-grid.ts";

/** One phase of a calibration as the search for causes takes it. */
export type CauseInputs = {
  instrument: Instrument;
  calibration: Calibration;
  loop: Loop;
  readings: readonly Reading[];
  /** The switched outputs as they were judged in this phase. */
  switching: readonly SwitchedState[];
  loopChecks: readonly LoopCheck[];
  decimals: TypedDecimals;
  /** Standard uncertainty that all readings share through the standards, percent of span. */
  sharedUncertainty: number;
};

/** Everything that the causes are judged from. */
export type CauseEvidence = Omit<CauseInputs, "readings" | "sharedUncertainty"> &
  ApartReadings & {
    readings: readonly StagedReading[];
    isByClock: boolean;
    /** Smallest error that matters in the middle of the range, percent of span. */
    mattering: number;
    /** The same at its lower and its upper end, where a tolerance may be another. */
    matteringAtEnds: readonly [number, number];
    faults: readonly number[];
    held: readonly number[];
    echoes?: Echoes | undefined;
    slips: readonly TypingSlip[];
    /** Readings whose signal stands at an end of what it can say. */
    railed: readonly number[];
    stages: readonly StageEvidence[];
  };

/**
 * Gathers what the readings of one phase show, in the order in which it can be told apart: no measurements first, then
 * outputs that stand still, then the line of the rest, then the shape about it.
 *
 * @param inputs instrument, calibration, readings of the phase, switched outputs as judged, loop checks
 * @returns evidence by stage
 * Source: own choice of the order; each figure in its own file.
 * @example causeEvidence({ ...evidence, readings: evidence.readings.map(({ reading }) => reading), sharedUncertainty: 0 }).stages
 *   .map(({ stage }) => stage) // ["sensor", "input card and scaling"]
 */
export function causeEvidence(inputs: CauseInputs): CauseEvidence {
  const { loop, decimals, sharedUncertainty, readings: _, ...facts } = inputs;
  const { readings, isByClock } = stagedReadings(inputs.readings, loop);
  const { mattering, matteringAtEnds } = matteringOf(loop);
  const faults = faultReadings(readings, loop);
  const measured = readings.filter(({ index }) => !faults.includes(index));
  const ends = stagesRead(readings);
  const [first] = ends;
  const contextOf = (stage: StageEnds): StageContext => ({
    loop,
    mattering,
    leastScatter: leastScatterOf(stage, loop, decimals, readings),
    sharedUncertainty: stage.input === "reference" ? sharedUncertainty : 0,
  });
  const sensor = first === undefined ? noFlags : sensorFlags(first, measured, loop, contextOf(first));
  const railed =
    first === undefined
      ? []
      : railedReadings(measured, { loop, mattering, step: stepOf(contextOf(first)) }).map(({ index }) => index);
  const stagesWithout = (apart: readonly number[]) =>
    ends.map((stage) => {
      const context = contextOf(stage);
      const follows = Math.abs(stageCorrelation(stage, measured)) >= thresholds.followsFrom;
      const found = stage === first ? sensor.plateaus : stagePlateaus(stage, measured, mattering, context.leastScatter);
      const plateaus = follows || stage === first ? found : [];
      const own = plateaus.flatMap(({ members }) => members);
      const ofSensor = stage === first ? [...sensor.members, ...railed] : [];
      return stageEvidence(
        stage,
        readings,
        { indexes: new Set([...faults, ...own, ...ofSensor, ...apart]), plateaus },
        context,
      );
    });
  const all = stagesWithout([]);
  const straight = all.filter(({ made }) => made === undefined);
  const slips = slipsOf(readings, faults, [...sensor.members, ...railed], straight, {
    loop,
    decimals,
    mattering: leastSlip(all, mattering),
  });
  const known = [...faults, ...flatOf(all), ...sensor.members, ...railed, ...slips.map(({ index }) => index)];
  const apart = apartReadings(straight, readings, new Set(known), mattering);
  const hidden = [...slips.map(({ index }) => index), ...membersOf(apart)];
  return {
    ...facts,
    ...{ loop, decimals, readings, isByClock, mattering, matteringAtEnds },
    faults,
    held: sensor.held,
    echoes: sensor.echoes,
    slips,
    railed,
    ...apart,
    stages: hidden.length === 0 ? all : stagesWithout(hidden),
  };
}

function stepOf({ leastScatter }: StageContext): number {
  return Math.sqrt(12) * leastScatter;
}

/** Own choice, percent of span: a reference farther out is no distance that a target was put at. */
const beyondRange = 20;

function isNearRange(percent: number): boolean {
  return percent >= -beyondRange && percent <= 100 + beyondRange;
}

type SensorFlags = Pick<CauseEvidence, "held" | "echoes"> & Pick<StageEvidence, "plateaus"> & { members: number[] };
const noFlags: SensorFlags = { plateaus: [], held: [], members: [] };

function sensorFlags(
  ends: StageEnds,
  measured: readonly StagedReading[],
  loop: Loop,
  { mattering, leastScatter }: StageContext,
): SensorFlags {
  const near = measured.filter(({ percent }) => isNearRange(percent.reference ?? 0));
  const echoes = countedTwice(near, ends.output, loop);
  const firstEchoes = near.filter(({ index }) => !echoes?.members.includes(index));
  const plateaus = stagePlateaus(ends, firstEchoes, mattering, leastScatter);
  const flat = plateaus.flatMap(({ members }) => members);
  const moving = firstEchoes.filter(({ index }) => !flat.includes(index));
  const held = heldStageReadings(ends, moving, mattering, leastScatter);
  return { echoes, plateaus, held, members: [...(echoes?.members ?? []), ...flat, ...held] };
}

function flatOf(stages: readonly StageEvidence[]): readonly number[] {
  return stages.flatMap(({ plateaus }) => plateaus.flatMap(({ members }) => members));
}

/** A fault signal that stands there once may be a slip; readings that belong to a pattern are none, nor those of a wide scatter. */
function slipsOf(
  readings: readonly StagedReading[],
  faults: readonly number[],
  patterned: readonly number[],
  stages: readonly StageEvidence[],
  { loop, decimals, mattering }: { loop: Loop; decimals: TypedDecimals; mattering: number },
): readonly TypingSlip[] {
  const skipped = new Set([...patterned, ...flatOf(stages), ...(faults.length > 1 ? faults : [])]);
  const lines = stages.map(({ line }) => line).filter((line): line is StageLine => line !== undefined);
  const looked = readings.filter(({ index }) => !skipped.has(index));
  const isWide = stages.some((stage) => hasGrowingSpread(stage, mattering));
  return lines.length === 0 || isWide ? [] : typingSlips(looked, lines, loop, decimals, mattering);
}

/** What is coarser than a step of the display cannot be told from it. */
function leastSlip(stages: readonly StageEvidence[], mattering: number): number {
  return Math.max(mattering, greatestOf(stages.map(({ resolution }) => resolution)));
}

/** Own choice: where a tolerance vanishes at an end, what is smaller than this part of the middle's does not matter. */
const leastPartAtEnds = 0.1;

function matteringOf(loop: Loop): Pick<CauseEvidence, "mattering" | "matteringAtEnds"> {
  const at = (percent: number) => thresholds.matteringPartOfTolerance * tolerancePercent(loop, percent);
  const mattering = at(50);
  const least = leastPartAtEnds * mattering;
  return { mattering, matteringAtEnds: [Math.max(at(0), least), Math.max(at(100), least)] };
}

function tolerancePercent({ toleranceTerms, characteristics: { signal } }: Loop, percent: number): number {
  const distance = signal.rangeLower + (percent / 100) * spanOf(signal);
  const { low, high } = toleranceAt(toleranceTerms, signal, distance);
  return (100 * Math.min(-low, high)) / spanOf(signal);
}

/** Standard deviation of a rounded number: its step over √12, in percent of span, for both ends of the stage. */
function leastScatterOf(
  ends: StageEnds,
  loop: Loop,
  decimals: TypedDecimals,
  readings: readonly StagedReading[],
): number {
  const grid = ends.output === "value" ? valueRounding(ends, loop, readings, decimals.value ?? 0) : undefined;
  const ofAxis = (axis: Axis) => {
    const unitPerPercent = Math.abs(inUnitOf(loop, axis, 1) - inUnitOf(loop, axis, 0));
    const step = axis === "value" && grid !== undefined ? grid.step : 10 ** -(decimals[axis] ?? 0);
    return step / unitPerPercent / Math.sqrt(12);
  };
  return Math.hypot(ofAxis(ends.input), ofAxis(ends.output));
}
