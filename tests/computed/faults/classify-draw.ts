import { loopOf } from "../../../src/analysis/readings/loop.ts";
import { switchedStates } from "../../../src/assembly/switched-states.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { type CauseInputs, causeEvidence } from "../../../src/verdict/causes/cause-evidence.ts";
import { findCauses } from "../../../src/verdict/causes/find-causes.ts";
import { rivalName } from "../../../src/verdict/causes/finding.ts";
import { converterFaults, type DrawnFault, type FaultDraw } from "./converter-faults.ts";
import { instrumentOf, takeReadings, valueDecimals } from "./faulty-loop.ts";
import { healthy, otherFaults } from "./other-faults.ts";
import { recordOfRows, rowsOfDraw } from "./record-of-draw.ts";
import { seededDraws } from "./seeded-draws.ts";
import { sensorFaults } from "./sensor-faults.ts";

export const faultDraws: Readonly<Record<number, FaultDraw>> = {
  ...converterFaults,
  ...sensorFaults,
  ...otherFaults,
  0: healthy,
};

/** A drawn fault with the sheet that it leaves, as the search for causes takes it. */
export function inputsOf(drawn: DrawnFault, seed: number): CauseInputs {
  const { setting, fault } = drawn;
  const instrument = instrumentOf(setting);
  return {
    instrument,
    calibration: { calibration: "C-1", tag: "LT-1", ...setting.calibration },
    loop: loopOf(instrument),
    readings: takeReadings(setting, fault, seededDraws(seed)),
    switching: setting.outputs.length === 0 ? [] : switchedStates(recordOfRows(rowsOfDraw(drawn, seed)), "asFound"),
    loopChecks: setting.loopChecks,
    decimals: { reference: 1, signal: 3, signalAtCard: 3, counts: 0, value: valueDecimals(setting) },
    sharedUncertainty: 0,
  };
}

/** The same without some columns. */
export function withoutColumns(inputs: CauseInputs, columns: readonly (keyof Reading)[]): CauseInputs {
  const readings = inputs.readings.map(
    (reading) =>
      Object.fromEntries(
        Object.entries(reading).filter(([key]) => !columns.some((column) => column === key)),
      ) as Reading,
  );
  return { ...inputs, readings };
}

export type Classified = {
  variant: string;
  rows: readonly number[];
  stages: readonly string[];
  /** Whether the row that was planted is found, named as a rival only, or not at all. */
  outcome: "found" | "rival" | "missed";
  isAlone: boolean;
};

/** What the search says of draw number `number` of a row. */
export function classifyDraw(row: number, number: number): Classified {
  const seed = 1_000_003 * row + 7919 * number + 17;
  const drawn = (faultDraws[row] as FaultDraw)(seededDraws(seed));
  const { findings } = findCauses(causeEvidence(inputsOf(drawn, seed + 1)));
  const rows = findings.map((finding) => finding.row);
  const isFound = rows.includes(row);
  const isRival = row !== 0 && findings.some(({ rivals }) => rivals.includes(rivalName(row)));
  return {
    variant: drawn.variant,
    rows,
    stages: findings.map(({ stage }) => stage),
    outcome: isFound ? "found" : isRival ? "rival" : "missed",
    isAlone: isFound && new Set(rows).size === 1,
  };
}
