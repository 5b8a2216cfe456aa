import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Finding, rivalName } from "./finding.ts";
import { lineNumbers, placeOf } from "./line-words.ts";
import { isLiveZero, signalEnds, signalErrorAt } from "./signal-order.ts";
import { isOff, type StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";

/**
 * Rows 1 and 2: a live zero where there is none, or none where there is one.
 *
 * A live-zero signal scaled from zero gives p = 0.2 + 0.8p: +20 % at its low end, right at its high end. The other way
 * round gives 1.25p − 0.25. In the controller the first needs a loop declared with a live zero; at the sensor, whose
 * signal is compared with what the loop declares, it needs one declared without.
 *
 * @param evidence of a phase
 * @returns a finding for each stage that shows one of the two
 * Source: arithmetic of 4–20 mA (IEC 60381-1) and 1–5 V (IEC 60381-2).
 * @example liveZeroCauses(evidence)[0].row // 1
 */
export function liveZeroCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.stages.flatMap((stage) => {
    const row = isOff(stage, evidence.mattering) ? liveZeroRow(evidence, stage) : undefined;
    return row === undefined ? [] : [findingOf(evidence, stage, row)];
  });
}

/**
 * Which of the two mistakes a stage shows, if any; other causes of its line step back then.
 *
 * @param evidence of the phase
 * @param stage of the loop
 * @returns row 1 or 2, or undefined
 * Source: as `liveZeroCauses`.
 * @example liveZeroRow(evidence, stage) // undefined
 */
export function liveZeroRow({ instrument }: CauseEvidence, stage: StageEvidence): 1 | 2 | undefined {
  if (stage.line === undefined || stage.stage === "wiring") return undefined;
  const ends = signalEnds(instrument);
  const isAtSensor = placeOf(stage.stage) === "sensor";
  const low = signalErrorAt(stage, ends, 0);
  const high = signalErrorAt(stage, ends, 100);
  const meets = ({ percentSpan, standardUncertainty }: typeof low, expected: number) =>
    Math.abs(percentSpan - expected) <= Math.max(thresholds.mistakeWithin, 2 * standardUncertainty);
  if (!meets(high, 0)) return undefined;
  if (meets(low, thresholds.liveZeroMistake) && isLiveZero(ends) !== isAtSensor) return 1;
  const isFromZero = ends.low === 0;
  if (meets(low, -thresholds.fromZeroMistake) && isFromZero !== isAtSensor) return 2;
  return undefined;
}

function findingOf(evidence: CauseEvidence, stage: StageEvidence, row: 1 | 2): Finding {
  const place = placeOf(stage.stage);
  const where = place === "sensor" ? "the signal itself" : "what the controller makes of the signal";
  const shape =
    row === 1
      ? "20 % too much at the low end and right at the high end, gain 0.8"
      : "25 % too little at the low end and right at the high end, gain 1.25";
  return {
    row,
    title: causeTitles[row] as string,
    stage: place,
    says: `In ${where}: ${shape}. This is consistent with a ${causeTitles[row]}.`,
    evidence: lineNumbers(evidence, stage),
    rivals: place === "sensor" ? [rivalName(21)] : [rivalName(3)],
    separatedBy:
      place === "sensor"
        ? "read the output setting of the sensor, and compare its signal type with the drawing"
        : "read the configured range of the card's channel and the constants of the scaling",
  };
}
