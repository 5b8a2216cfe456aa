import type { Plateau } from "../../analysis/figures/plateau.ts";
import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { burdenLimitedCurrent, fullSimulation } from "./burden-evidence.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Evidence, type Finding, rivalName } from "./finding.ts";
import { placeNumber, unitOf } from "./line-words.ts";
import { signalEnds } from "./signal-order.ts";
import type { StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";

/**
 * Rows 13, 15, 16 and 17: a signal that stands still at an end of the range while the rest is right, and echoes that are
 * counted twice.
 *
 * Near end: blind zone. Far end: obstruction. At the limits of the measuring signal (3.8 and 20.5 mA): the target is
 * beyond the range. At the great end of a current: perhaps not the distance stands still but the current, for want of
 * voltage; a simulated 20 mA, or supply and burden, tell.
 *
 * @param evidence of a phase
 * @returns a finding for each plateau of the sensor, and one for echoes
 * Source: NAMUR NE 43 for the limits of the measuring signal; Ohm's law.
 * @example limitCauses(evidence)[0].row // 16
 */
export function limitCauses(evidence: CauseEvidence): readonly Finding[] {
  const sensor = evidence.stages.find(({ stage }) => stage === "sensor" || stage === "sensor and wiring");
  if (sensor === undefined || Math.abs(sensor.correlation) < thresholds.followsFrom) return [];
  return [...sensor.plateaus.map((plateau) => plateauFinding(evidence, sensor, plateau)), ...echoFindings(evidence)];
}

function plateauFinding(evidence: CauseEvidence, sensor: StageEvidence, plateau: Plateau): Finding {
  const { row, rivals } = rowOf(evidence, plateau);
  return {
    row,
    title: causeTitles[row] as string,
    stage: "sensor",
    says: saysOf(evidence, plateau, row),
    evidence: [...plateauNumbers(evidence, sensor, plateau), ...limitNumbers(evidence, row)],
    rivals: rivals.map(rivalName),
    separatedBy: separations[row] as string,
  };
}

type Row = 13 | 15 | 16 | 17;

function rowOf(evidence: CauseEvidence, plateau: Plateau): { row: Row; rivals: readonly number[] } {
  const { instrument, loop } = evidence;
  const ends = signalEnds(instrument);
  const level = inUnitOf(loop, "signal", plateau.level);
  const above = (100 * (level - ends.high)) / (ends.high - ends.low);
  const below = (100 * (ends.low - level)) / (ends.high - ends.low);
  const standing: Row = plateau.end === "lower" ? 15 : 16;
  const most = instrument.signalUnit === "mA" ? thresholds.saturationAbove : thresholds.voltageSaturationAbove;
  if (
    isBetween(above, -thresholds.saturationSlack, most) ||
    isBetween(below, -thresholds.saturationSlack, thresholds.saturationBelow)
  ) {
    return { row: 17, rivals: [standing] };
  }
  const isGreatEnd = (plateau.end === "upper") !== ends.isReverse;
  if (instrument.signalUnit !== "mA" || !isGreatEnd) return { row: standing, rivals: [19] };
  const isLimited = limitedByBurden(evidence, level);
  if (isLimited === undefined) {
    return instrument.loopPowered === true ? { row: 13, rivals: [standing] } : { row: standing, rivals: [13, 19] };
  }
  return isLimited ? { row: 13, rivals: [] } : { row: standing, rivals: [19] };
}

/** Undefined where neither a simulation nor supply and burden tell. */
function limitedByBurden(evidence: CauseEvidence, milliamps: number): boolean | undefined {
  const percentPerMilliamp = 100 / Math.abs(evidence.instrument.signalUpper - evidence.instrument.signalLower);
  const isLevel = (current: number) => Math.abs(current - milliamps) * percentPerMilliamp <= thresholds.burdenWithin;
  const simulated = fullSimulation(evidence);
  if (simulated !== undefined) return isLevel(simulated);
  const reckoned = burdenLimitedCurrent(evidence);
  return reckoned === undefined ? undefined : isLevel(reckoned.milliamps);
}

function isBetween(value: number, least: number, greatest: number): boolean {
  return value >= least && value <= greatest;
}

function saysOf(evidence: CauseEvidence, plateau: Plateau, row: Row): string {
  const unit = unitOf(evidence, "signal");
  const level = placeNumber(Number(inUnitOf(evidence.loop, "signal", plateau.level).toPrecision(4)));
  const side = plateau.end === "lower" ? "nearer" : "farther";
  const knee = placeNumber(Number(inUnitOf(evidence.loop, "reference", plateau.knee).toPrecision(4)));
  const what = `The signal stands still at ${level} ${unit} for every target ${side} than ${knee} ${evidence.instrument.distanceUnit}.`;
  return `${what} This is consistent with ${saysByRow[row]}.`;
}

const saysByRow: Readonly<Record<Row, string>> = {
  13: "a current that supply and burden do not let rise any further",
  15: "targets inside the blind zone of the sensor",
  16: "a fixed object in the beam at that distance",
  17: "targets beyond the range that the sensor was taught, at the limit of its signal",
};

const separations: Readonly<Record<Row, string>> = {
  13: "simulate 20 mA at the sensor's end, and measure current, supply at the terminals and burden",
  15: "move the target out of the blind zone step by step and note where the signal begins to follow; simulate the signal there",
  16: "look along the beam; take the target away and see whether the reading stays",
  17: "read the taught ends from the sensor and compare them with the range",
};

function plateauNumbers(evidence: CauseEvidence, sensor: StageEvidence, plateau: Plateau): Evidence[] {
  const { loop } = evidence;
  const last = sensor.line?.gain;
  return [
    {
      name: "signal stands still at",
      value: inUnitOf(loop, "signal", plateau.level),
      unit: unitOf(evidence, "signal"),
    },
    {
      name: "which stands for",
      value: inUnitOf(loop, "reference", plateau.level),
      unit: unitOf(evidence, "reference"),
    },
    { name: "it follows up to", value: inUnitOf(loop, "reference", plateau.knee), unit: unitOf(evidence, "reference") },
    { name: "farthest from the line of the rest", value: plateau.deviation, unit: "% of span" },
    { name: "readings there", value: plateau.members.length, unit: "" },
    ...(last === undefined ? [] : [{ name: "gain of the rest", value: last, unit: "" }]),
  ];
}

function limitNumbers(evidence: CauseEvidence, row: Row): Evidence[] {
  if (row !== 13 && row !== 16) return [];
  const simulated = fullSimulation(evidence);
  const reckoned = burdenLimitedCurrent(evidence);
  return [
    ...(simulated === undefined ? [] : [{ name: "simulated 20 mA gave", value: simulated, unit: "mA" }]),
    ...(reckoned?.evidence ?? []),
  ];
}

function echoFindings({ echoes, readings, loop, instrument }: CauseEvidence): readonly Finding[] {
  if (echoes === undefined) return [];
  const times = echoes.factor === 2 ? "twice" : "three times";
  const farthest = Math.max(
    ...readings.filter(({ index }) => echoes.members.includes(index)).map(({ percent }) => percent.reference as number),
  );
  const place = inUnitOf(loop, "reference", farthest);
  return [
    {
      row: 15,
      title: causeTitles[15] as string,
      stage: "sensor",
      says: `Up to ${placeNumber(place)} ${instrument.distanceUnit} the sensor shows ${times} the distance. This is consistent with an echo counted ${times} inside the blind zone.`,
      evidence: [
        { name: "shown over true", value: echoes.factor, unit: "" },
        { name: "up to", value: place, unit: instrument.distanceUnit },
        { name: "readings there", value: echoes.members.length, unit: "" },
      ],
      rivals: [],
      separatedBy: "move the target out of the blind zone step by step and note where the signal begins to follow",
    },
  ];
}
