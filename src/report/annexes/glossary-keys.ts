import type { FigureKey } from "../../record/figure-definitions.ts";
import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord, Shares } from "../../record/record-schema.ts";
import { figureKeysOf } from "../parts/figures-table.tsx";
import { causesOf } from "../texts/cause-texts.ts";
import { burdenWords } from "../texts/loop-check-texts.ts";

/** Every figure that a record shows anywhere, in the order of its annexes. */
export function glossaryKeys(record: CalibrationRecord): readonly FigureKey[] {
  return [
    ...sheetKeys(record),
    ...figureKeysOf(record),
    ...uncertaintyKeys(record),
    ...switchingKeys(record),
    ...(burdenWords(record)
      ? (["burden", "burden.highestCurrent", "burden.greatest", "burden.neededSupply"] as const)
      : []),
    ...causeKeys(record),
    ...(record.reteach === undefined ? [] : reteachKeys),
    ...(record.candidates?.fits.some(({ accuracy }) => accuracy !== null) ? candidateKeys : []),
    ...(record.impact === undefined ? [] : (["impact.error", "impact.outside"] as const)),
    ...(record.overTheYears === undefined ? [] : historyKeys),
    ...soundKeys(record),
    ...setPointKeys(record),
    ...(record.controllerLimits === undefined ? [] : (["limit.meant", "limit.actedAt"] as const)),
  ];
}

/** Those of one stage alone. */
const singleShares = ["sensor", "wiring", "inputCard", "scaling"] as const satisfies readonly (keyof Shares)[];

/** What the columns of the working sheets are, as far as they are there. */
function sheetKeys(record: CalibrationRecord): readonly FigureKey[] {
  const readings = phasesOf(record).flatMap(({ phase }) => phase.readings);
  const shares = new Set(readings.flatMap((reading) => Object.keys(reading.shares ?? {})));
  const hasSeveral = readings.some((reading) => Object.keys(reading.shares ?? {}).length > 1);
  const single = singleShares.filter((name) => shares.has(name));
  const isJoined = [...shares].some((name) => !single.some((known) => known === name));
  return [
    ...(["indicatedDistance", "error", "tolerance", "partOfTolerance"] as const),
    ...(hasSeveral ? single.map((name) => `shares.${name}` as const) : []),
    ...(hasSeveral && isJoined ? (["shares.joined"] as const) : []),
  ];
}

function uncertaintyKeys(record: CalibrationRecord): readonly FigureKey[] {
  const phases = phasesOf(record).map(({ phase }) => phase);
  const points = phases.flatMap(({ points, endPoints = [] }) => [...points, ...endPoints]);
  return [
    ...(points.length > 0 ? [...budgetKeys, ...decisionKeys] : []),
    ...(points.some(({ monteCarlo }) => monteCarlo !== undefined) ? (["monteCarlo"] as const) : []),
    ...(record.falseAccept === undefined
      ? []
      : (["globalFalseAccept", "globalFalseReject", "spreadOfTrueErrors"] as const)),
    ...(phases.some(({ uncertainLine }) => uncertainLine !== null)
      ? (["chiSquared", "calibratedDistance"] as const)
      : []),
  ];
}

const budgetKeys = [
  "divisor",
  "sensitivity",
  "standardUncertainty",
  "degreesOfFreedom",
  "shareOfVariance",
  "combinedUncertainty",
  "sharedUncertainty",
  "differencesBetweenCycles",
  "effectiveDegreesOfFreedom",
  "coverageFactor",
  "expandedUncertainty",
] as const;

const decisionKeys = [
  "meanError",
  "guardBand",
  "acceptanceLimit",
  "testUncertaintyRatio",
  "specificRisk",
  "statement",
] as const;

function switchingKeys({ switching = [] }: CalibrationRecord): readonly FigureKey[] {
  const phases = switching.flatMap((output) => phasesOf(output).map(({ phase }) => phase));
  const hasVoltage = switching.some(({ wiring }) => wiring.onVoltage !== null || wiring.offVoltage !== null);
  return [
    ...(phases.length > 0 ? trippedKeys : []),
    ...(phases.some(({ shares }) => shares !== null) ? (["setPointShift", "setPointTeach"] as const) : []),
    ...(hasVoltage ? (["inputVoltage"] as const) : []),
  ];
}

const trippedKeys = [
  "operatingDistance",
  "releaseDistance",
  "setPointError",
  "differentialTravel",
  "repeatAccuracy",
  "chatter",
] as const;

function causeKeys(record: CalibrationRecord): readonly FigureKey[] {
  const hasLines = causesOf(record).some(({ causes }) => causes.stageLines.length > 0);
  return hasLines ? ["stageLine", "stageLine.greatestResidual", "stageLine.zeroCrossing"] : [];
}

const reteachKeys = [
  "bestCorrection",
  "endsCorrection",
  "halfSpread",
  "steadyLeft",
  "readingScatter",
  "chanceOfPass",
  "newConstants",
] as const;

const candidateKeys = ["candidates.ratio", "candidates.standardsUncertainty", "candidates.together"] as const;

/** Those of the years: a page of a tag says them too. */
export const historyKeys = [
  "driftPerYear",
  "driftScatter",
  "predictionBand",
  "limitCrossing",
  "changeSinceRecord",
  "staircaseInterval",
  "controlChartInterval",
  "observedReliability",
] as const;

function soundKeys({ sound }: CalibrationRecord): readonly FigureKey[] {
  if (sound === undefined) return [];
  const air = ["speedOfSound", "speedOfSound.short", "airError"] as const;
  return sound.explained.length > 0 ? [...air, "leftWithoutAir"] : air;
}

function setPointKeys({ setPointTable }: CalibrationRecord): readonly FigureKey[] {
  if (setPointTable === undefined) return [];
  return [
    "idealSignal",
    ...(setPointTable.some(({ counts }) => counts !== null) ? (["idealCounts"] as const) : []),
    ...(setPointTable.some(({ value }) => value !== null) ? (["idealValue"] as const) : []),
    "percentOfSpan",
  ];
}
