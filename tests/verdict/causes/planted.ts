import type { Reading } from "../../../src/model/calibration.ts";
import type { Cause } from "../../../src/verdict/causes/cause.ts";
import { type CauseEvidence, causeEvidence } from "../../../src/verdict/causes/evidence/cause-evidence.ts";
import { findCauses } from "../../../src/verdict/causes/find-causes.ts";
import type { Finding } from "../../../src/verdict/causes/finding.ts";
import { inputsOf, withoutColumns } from "../../computed/faults/classify-draw.ts";
import type { DrawnFault } from "../../computed/faults/converter-faults.ts";
import { type Fault, type Setting, signalKinds } from "../../computed/faults/faulty-loop.ts";

export const seed = 20_260_101;

/** 200 to 1200 mm on 4 to 20 mA, eleven points out and back twice, 0.02 % noise, a value of 0 to 100. */
const usual: Setting = {
  kind: signalKinds["4–20"],
  rangeLower: 200,
  span: 1000,
  points: Array.from({ length: 11 }, (_, place) => place / 10),
  cycles: 2,
  noise: 0.02,
  hasCounts: false,
  hasCard: false,
  hasTimes: true,
  valueEnds: [0, 100],
  instrument: {},
  calibration: {},
  outputs: [],
  trips: [],
  loopChecks: [],
};

/** A planted fault in a loop of the usual kind. */
export function plantedDraw(fault: Fault, changes: Partial<Setting> = {}): DrawnFault {
  return { setting: { ...usual, ...changes }, fault, variant: "" };
}

/** The evidence that a planted fault leaves; a sheet without some columns where they are named. */
export function planted(
  fault: Fault,
  changes: Partial<Setting> = {},
  missing: readonly (keyof Reading)[] = [],
): CauseEvidence {
  const inputs = inputsOf(plantedDraw(fault, changes), seed);
  return causeEvidence(withoutColumns(inputs, missing));
}

/** The findings of some causes, as a record would have them. */
export function findingsOf(some: readonly Cause[], evidence: CauseEvidence): readonly Finding[] {
  return findCauses(evidence).findings.filter(({ id }) => some.some((cause) => cause.id === id));
}

/** Which of some causes are found. */
export function idsOf(some: readonly Cause[], evidence: CauseEvidence): readonly string[] {
  return findingsOf(some, evidence).map(({ id }) => id);
}

export const nothingWrong: Fault = {};
