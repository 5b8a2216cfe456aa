import type { CauseEvidence } from "./cause-evidence.ts";
import { controllerValueCauses } from "./controller-value-causes.ts";
import { deadSignalCauses } from "./dead-signal-causes.ts";
import { directionCauses } from "./direction-causes.ts";
import type { CauseNote, Finding } from "./finding.ts";
import { limitCauses } from "./limit-causes.ts";
import { liveZeroCauses } from "./live-zero-causes.ts";
import { lostTargetCauses } from "./lost-target-causes.ts";
import { scalingCauses } from "./scaling-causes.ts";
import { sensorLineCauses } from "./sensor-line-causes.ts";
import { shapeCauses } from "./shape-causes.ts";
import { stageNotes } from "./stage-notes.ts";
import { switchCauses } from "./switch-causes.ts";
import { timeCauses } from "./time-causes.ts";
import { typingCauses } from "./typing-causes.ts";
import { wiringCauses } from "./wiring-causes.ts";

/** One kind of cause: what it finds in the evidence of a phase. */
export type CauseDetector = (evidence: CauseEvidence) => readonly Finding[];

/** In the order in which a fault is looked for: no measurement, standing still, the line, its shape, the switch. */
export const causeDetectors: readonly CauseDetector[] = [
  deadSignalCauses,
  lostTargetCauses,
  typingCauses,
  limitCauses,
  controllerValueCauses,
  liveZeroCauses,
  sensorLineCauses,
  wiringCauses,
  scalingCauses,
  shapeCauses,
  directionCauses,
  timeCauses,
  switchCauses,
];

/**
 * Everything that the readings of one phase are consistent with, and what they cannot tell.
 *
 * @param evidence of the phase
 * @returns findings in the order of the detectors, none for a healthy loop; notes
 * Source: own choice of the order; each detector's own file.
 * @example findCauses(evidence).findings.map(({ row }) => row) // [10]
 */
export function findCauses(evidence: CauseEvidence): { findings: Finding[]; notes: CauseNote[] } {
  return {
    findings: causeDetectors.flatMap((detector) => detector(evidence)),
    notes: [...stageNotes(evidence)],
  };
}
