import type { SwitchContext } from "../../src/assembly/assemble-switched-phase.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { basis } from "../analysis/sample-basis.ts";
import { ada } from "../proof/sample-signing.ts";
import { switchingRecord, switchingRows } from "../record/sample-switching.ts";
import { demoRecord } from "../report/demo-records.ts";
import { stateOf } from "../verdict/recommendation/sample-state.ts";
import { loopNeeds } from "../verdict/replacement/sample-loop-needs.ts";

// Names that an example may use besides what the folders export: inputs too large for a docblock, all of invented loops.

export { loop } from "../analysis/sample-loop.ts";
export { outAndBack, sheetOf } from "../analysis/sample-staged.ts";
export { curable, notCurable } from "../verdict/recommendation/sample-state.ts";
export { judgedError } from "../verdict/sample-errors.ts";

/** A laser of the demonstration, as it was assembled, and sealed. */
export const record = demoRecord("LT-310");
export const sealed = sealRecord(record);

/** A loop of 0 to 200 mm with one switched output: its rows, and its record. */
export const rows = switchingRows();
export const switched = switchingRecord();

/** What else the trips of that output are judged by. */
export const switchContext: SwitchContext = {
  output: rows.outputs[0]!.row,
  rule: { name: "simple acceptance", guardFactor: 0 },
  basis: { ...basis, standards: rows.standards.map(({ row }) => row) },
  typed: { decimals: 1, step: 0.1 },
  span: 200,
  phase: undefined,
};

/** A sensor of 200 to 1200 mm that is off by twice its tolerance of 10 mm. */
export const state = stateOf();

/** What an ultrasonic loop of 400 to 4000 mm on 4 to 20 mA, ±36 mm, needs of another sensor. */
export const needs = loopNeeds();

/** Somebody's key, and the row of it. */
export const { key, signer } = ada;
