import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { type CauseNote, rivalName } from "./finding.ts";
import { lineNumbers, unitOf } from "./line-words.ts";
import { isOff, type StageEvidence } from "./stage-evidence.ts";
import { namedByZero } from "./zero-candidates.ts";

/**
 * What the readings cannot tell, and which reading would: stages that share an error because a column is missing, wild
 * readings that nothing explains, too few readings.
 *
 * @param evidence of a phase
 * @returns notes in the order of the loop
 * Source: own choice.
 * @example stageNotes(evidence)[0].separatedBy // "read the signal at the same points"
 */
export function stageNotes(evidence: CauseEvidence): readonly CauseNote[] {
  const shared = evidence.stages.flatMap((stage) => sharedStage(evidence, stage));
  return [...shared, ...wildReadings(evidence), ...oneCycle(evidence)];
}

const missing: Readonly<Partial<Record<StageEvidence["stage"], string>>> = {
  "whole loop": "signal",
  "sensor and input card": "signal",
};

function sharedStage(evidence: CauseEvidence, stage: StageEvidence): readonly CauseNote[] {
  const column = missing[stage.stage];
  if (column === undefined) return [];
  const off = isOff(stage, evidence.mattering);
  const last = stage.stage === "whole loop" ? "the scaling" : "the input card";
  return [
    {
      title: `stage not separable: ${column} was not read`,
      says: off
        ? `The error may arise in the sensor or in ${last}, for the ${column} between them was not read.`
        : `An error of the sensor and one of ${last} could hide each other, for the ${column} between them was not read.`,
      evidence: off ? lineNumbers(evidence, stage) : [],
      candidates: off ? candidatesOf(stage) : [],
      separatedBy: `read the ${column} in ${evidence.instrument.signalUnit} at the same points`,
    },
  ];
}

/** Causes of both stages whose point of no error the line goes through. */
function candidatesOf(stage: StageEvidence): string[] {
  const { named, rivals } = namedByZero(stage, [
    { name: [10, 9], at: "nowhere" as const },
    { name: [21, 4], at: 0 },
    { name: [21, 3], at: 100 },
  ]);
  const rows = [...(named ?? []), ...rivals.flat()];
  return (rows.length === 0 ? [21, 4] : [...new Set(rows)]).map(rivalName);
}

function wildReadings(evidence: CauseEvidence): readonly CauseNote[] {
  const explained = new Set([...evidence.faults, ...evidence.held, ...evidence.slips.map(({ index }) => index)]);
  const wild = evidence.stages.flatMap(({ line }) => line?.excluded ?? []).filter((index) => !explained.has(index));
  const indexes = [...new Set(wild)];
  if (indexes.length === 0) return [];
  const places = evidence.readings.filter(({ index }) => indexes.includes(index));
  return [
    {
      title: "readings that stand apart",
      says: `${indexes.length === 1 ? "One reading lies" : `${indexes.length} readings lie`} far from the line of the others, and no slip of the typing hand explains it. The lines above leave such readings out.`,
      evidence: places.slice(0, 5).map(({ percent }) => ({
        name: "reading at",
        value: inUnitOf(evidence.loop, "reference", percent.reference as number),
        unit: unitOf(evidence, "reference"),
      })),
      candidates: [rivalName(33), rivalName(19)],
      separatedBy: "read these points again",
    },
  ];
}

function oneCycle({ readings }: CauseEvidence): readonly CauseNote[] {
  const cycles = new Set(readings.map(({ cycle }) => cycle)).size;
  if (readings.length === 0 || cycles > 1) return [];
  return [
    {
      title: "one cycle only",
      says: "Drift in time, growing scatter and curvature cannot be told from the distance itself.",
      evidence: [],
      candidates: [rivalName(34), rivalName(25), rivalName(26)],
      separatedBy: "read a second cycle",
    },
  ];
}
