import { errorOffLine } from "../../analysis/stages/stage-lines.ts";
import { inUnitOf, type StagedReading } from "../../analysis/stages/staged-readings.ts";
import { namedCause } from "./cause-of.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { errorWords, lineNumbers, placeNumber, unitOf } from "./evidence/line-words.ts";
import { lonePoints } from "./evidence/lone-points.ts";
import { isOff, lineErrorAt, type StageEvidence } from "./evidence/stage-evidence.ts";
import { statedAirOf } from "./evidence/stated-air.ts";
import { namedByZero } from "./evidence/zero-candidates.ts";
import type { CauseNote, NamedCause } from "./finding.ts";

/**
 * What the readings cannot tell, and which reading would: stages that share an error because a column is missing, wild
 * readings that nothing explains, too few readings.
 *
 * @param evidence of a phase
 * @returns notes in the order of the loop
 * Source: own choice.
 * @example stageNotes(evidence) // []
 */
export function stageNotes(evidence: CauseEvidence): readonly CauseNote[] {
  const shared = evidence.stages.flatMap((stage) => sharedStage(evidence, stage));
  return [
    ...shared,
    ...airContradicted(evidence),
    ...railedReadings(evidence),
    ...wildReadings(evidence),
    ...oneCycle(evidence),
  ];
}

const missing: Readonly<Partial<Record<StageEvidence["stage"], string>>> = {
  "whole loop": "signal",
  "sensor and input card": "signal",
};

function sharedStage(evidence: CauseEvidence, stage: StageEvidence): readonly CauseNote[] {
  const column = missing[stage.stage];
  if (column === undefined) return [];
  const off = isOff(stage, evidence.matteringAtEnds);
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
function candidatesOf(stage: StageEvidence): NamedCause[] {
  const scaling = (id: string) => (stage.stage === "whole loop" ? [id] : []);
  const { named, rivals } = namedByZero(stage, [
    { name: ["datum-shifted", "offset-of-card", ...scaling("both-constants-wrong")], at: "nowhere" as const },
    { name: ["ends-taught-wrong", "range-of-card-wrong", ...scaling("high-constant-wrong")], at: 0 },
    { name: ["ends-taught-wrong", "range-of-card-wrong", ...scaling("low-constant-wrong")], at: 100 },
  ]);
  const ids = new Set([...(named ?? []), ...rivals.flat()]);
  const anyLine = ["both-ends-taught-wrong", "range-of-card-wrong", ...scaling("both-constants-wrong")];
  return (ids.size === 0 ? anyLine : [...ids]).map(namedCause);
}

/** Of a sensor that is stated not to correct for it: what the air alone would make is not in the readings. */
function airContradicted(evidence: CauseEvidence): readonly CauseNote[] {
  const stage = evidence.stages.find(({ stage: name }) => name === "sensor" || name === "sensor and wiring");
  const air = stage && statedAirOf(evidence, stage);
  if (stage === undefined || air?.isStatedUncorrected !== true) return [];
  const isAsAirSays = !isOff({ ...air.rest, sharedUncertainty: stage.sharedUncertainty }, evidence.matteringAtEnds);
  if (isOff(stage, evidence.matteringAtEnds) || isAsAirSays) return [];
  const unit = "% of span";
  return [
    {
      title: "the air as it is stated contradicts the readings",
      says: `The stated air alone would make ${errorWords(evidence, air.far)} at the far end of a sensor that does not correct for it, and the readings do not show it. The air temperature, the one at which it was taught, or temperature_compensated is not as it is stated.`,
      evidence: [
        { name: "by the stated air, at the far end", value: air.far, unit },
        { name: "as read, at the far end", value: lineErrorAt(stage, 100).percentSpan, unit },
      ],
      candidates: [],
      separatedBy:
        "measure the temperature of the air between sensor and target, and read from the sensor's settings whether it corrects and for what",
    },
  ];
}

function railedReadings({ railed, readings, loop, instrument }: CauseEvidence): readonly CauseNote[] {
  if (railed.length === 0) return [];
  const places = readings.filter(({ index }) => railed.includes(index));
  const count = railed.length === 1 ? "One reading stands" : `${railed.length} readings stand`;
  return [
    {
      title: "readings at an end of the signal",
      says: `${count} at an end of what the signal can say: at or beyond, and no number. The line, the forecast and new constants leave ${railed.length === 1 ? "it" : "them"} out.`,
      evidence: places.slice(0, 5).map(({ percent, reading }) => ({
        name: `signal at ${placeNumber(inUnitOf(loop, "reference", percent.reference as number))} ${instrument.distanceUnit}`,
        value: reading.signal as number,
        unit: instrument.signalUnit,
      })),
      candidates: ["datum-shifted", "both-ends-taught-wrong", "target-beyond-range"].map(namedCause),
      separatedBy: "read points that the signal can show, or simulate the output beyond its end",
    },
  ];
}

/** Readings that the line leaves out: of many, noise alone puts some there, so only those that matter are told. */
function farOff({ line, input, output }: StageEvidence, { readings, mattering }: CauseEvidence): readonly number[] {
  if (line === undefined) return [];
  const isFar = ({ percent }: StagedReading) => {
    const given = percent[input] as number;
    return Math.abs(errorOffLine((percent[output] as number) - given, line.fit, given)) > mattering;
  };
  return line.excluded.filter((index) => readings.some((reading) => reading.index === index && isFar(reading)));
}

function wildReadings(evidence: CauseEvidence): readonly CauseNote[] {
  const named = [...evidence.slips, ...evidence.wild].map(({ index }) => index);
  const pairs = evidence.exchanged.flatMap(({ first, second }) => [first, second]);
  const lone = lonePoints(evidence).flatMap(({ lone: { members } }) => members);
  const explained = new Set([...evidence.faults, ...evidence.held, ...evidence.railed, ...named, ...pairs, ...lone]);
  const wild = evidence.stages.flatMap((stage) => farOff(stage, evidence)).filter((index) => !explained.has(index));
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
      candidates: ["typing-error", "target-lost-held"].map(namedCause),
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
      candidates: ["warm-up-or-drift", "weak-target", "curved-characteristic"].map(namedCause),
      separatedBy: "read a second cycle",
    },
  ];
}
