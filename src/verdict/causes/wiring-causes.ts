import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Evidence, type Finding, rivalName } from "./finding.ts";
import { isLeakage, leakageNumbers } from "./leakage.ts";
import { lineNumbers } from "./line-words.ts";
import { atSignal, signalEnds, trueZero } from "./signal-order.ts";
import { isOff, type StageEvidence } from "./stage-evidence.ts";
import { missOf, namedByZero, type ZeroCandidate } from "./zero-candidates.ts";

/**
 * Rows 9, 11 and 12 between the terminals of the sensor and those of the card, where the signal was read at both.
 *
 * @param evidence of a phase
 * @returns at most one finding
 * Source: Ohm's law; the choice by `namedByZero`.
 * @example wiringCauses(evidence)[0].stage // "wiring"
 */
export function wiringCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.stages
    .filter((stage) => stage.stage === "wiring" && isOff(stage, evidence.mattering))
    .map((stage) => findingOf(evidence, stage));
}

function findingOf(evidence: CauseEvidence, stage: StageEvidence): Finding {
  const ends = signalEnds(evidence.instrument);
  const candidates: ZeroCandidate<number>[] = [
    { name: 9, at: "nowhere" },
    { name: 11, at: atSignal(ends, trueZero(ends)) },
  ];
  const { named, rivals } = namedByZero(stage, candidates);
  const leaks = isLeakage(evidence, stage) && (named === undefined || missOf(stage, "nowhere") > 2);
  const row = leaks ? 12 : (named ?? 11);
  const more: Evidence[] = row === 12 ? leakageNumbers(evidence, stage) : [];
  return {
    row,
    title: causeTitles[row] as string,
    stage: "wiring",
    says: `The signal at the card is not the signal at the sensor. ${says[row]}`,
    evidence: [...lineNumbers(evidence, stage), ...more],
    rivals: rivals.filter((rival) => rival !== row).map(rivalName),
    separatedBy:
      "with the loop isolated, measure the insulation between the cores and to earth, and the shunt resistor",
  };
}

const says: Readonly<Record<number, string>> = {
  9: "The difference is the same over the whole range: consistent with a voltage along a shared 0 V, or with a constant current that comes in or gets lost.",
  11: "The difference grows in proportion to the signal: consistent with a leakage beside the shunt that takes part of the signal.",
  12: "The difference is greater at the low end: consistent with a leakage across the two wires of the loop.",
};
