import type { Reading } from "../../../src/model/calibration.ts";
import { type CauseEvidence, causeEvidence } from "../../../src/verdict/causes/cause-evidence.ts";
import type { CauseDetector } from "../../../src/verdict/causes/find-causes.ts";
import { inputsOf, withoutColumns } from "../../computed/faults/classify-draw.ts";
import { type Fault, type Setting, signalKinds } from "../../computed/faults/faulty-loop.ts";

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

/** The evidence that a planted fault leaves; a sheet without some columns where they are named. */
export function planted(
  fault: Fault,
  changes: Partial<Setting> = {},
  missing: readonly (keyof Reading)[] = [],
): CauseEvidence {
  const inputs = inputsOf({ setting: { ...usual, ...changes }, fault, variant: "" }, 20_260_101);
  return causeEvidence(withoutColumns(inputs, missing));
}

/** Rows that a detector names. */
export function rowsOf(detector: CauseDetector, evidence: CauseEvidence): readonly number[] {
  return detector(evidence).map(({ row }) => row);
}

export const nothingWrong: Fault = {};
