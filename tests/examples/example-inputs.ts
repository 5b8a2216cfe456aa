import { stagedReadings } from "../../src/analysis/stages/staged-readings.ts";
import type { SwitchContext } from "../../src/assembly/assemble-switched-phase.ts";
import { type Tell, tellOf } from "../../src/assembly/plausibility/measured-phase.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { sealRecord } from "../../src/proof/seal-record.ts";
import { basis } from "../analysis/sample-basis.ts";
import { signalLoop } from "../analysis/sample-loop.ts";
import { sheetOf } from "../analysis/sample-staged.ts";
import { phaseOf } from "../assembly/plausibility/measured-rows.ts";
import { ada } from "../proof/sample-signing.ts";
import { switchingRecord, switchingRows } from "../record/sample-switching.ts";
import { demoRecord } from "../report/demo-records.ts";
import { planted } from "../verdict/causes/planted.ts";
import { stateOf } from "../verdict/recommendation/sample-state.ts";
import { loopNeeds } from "../verdict/replacement/sample-loop-needs.ts";
import { withCell } from "../workbook/full-workbook.ts";

// Names that an example may use besides what the folders export: inputs too large for a docblock, all of invented loops.

export { emptyAnalysis } from "../analysis/sample-analysis.ts";
export { basis } from "../analysis/sample-basis.ts";
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

/** A sensor of 200 to 1200 mm on 4 to 20 mA that shows 20 mm too much: the evidence of its phase, and its first stage. */
export const evidence = planted({ seen: (part) => part + 0.02 });
export const stage = evidence.stages[0]!;

/** What an ultrasonic loop of 400 to 4000 mm on 4 to 20 mA, ±36 mm, needs of another sensor. */
export const needs = loopNeeds();

/** Somebody's key, and the row of it. */
export const { key, signer } = ada;

/** Two cycles over 0 to 100 mm on 4 to 20 mA, right but for the signal of the third reading, 14.28 mA for 10.4. */
const wobble = (place: number) => ((place * 5) % 11) / 1000;
export const staged = stagedReadings(
  sheetOf(2, (reference, place) => ({ signal: place === 2 ? 14.28 : 4 + reference / 6.25 + wobble(place) })),
  signalLoop,
).readings;

/** The same in inches; and with counts in the column of the signal. */
export const stagedInInches = stagedReadings(
  sheetOf(2, (reference, place) => ({
    reference: reference / 25.4,
    signal: 4 + reference / 6.25 + wobble(place),
  })),
  signalLoop,
).readings;
export const stagedCounts = stagedReadings(
  sheetOf(2, (reference, place) => ({ signal: 3000 + 40 * reference + place })),
  signalLoop,
).readings;

/** A calibration with a slip in a signal and one in a trip, and its readings as found. */
const { "trips.csv": spoiledTrips } = withCell("trips.csv", 2, "reference", "302.2");
const spoiledTexts = { ...withCell("readings.csv", 3, "signal", "61.16"), "trips.csv": spoiledTrips ?? "" };
export const { rows: spoiledRows, measured: spoiledPhase } = await phaseOf(spoiledTexts);

/** The rows of that calibration as a workbook holds them. */
const held = <Row>(rows: readonly Row[]) => Object.assign([...rows], { of: () => rows });
export const spoiledWorkbook = {
  ...{ instruments: held([spoiledRows.instrument]), calibrations: held([spoiledRows.calibration]) },
  ...{ standards: held(spoiledRows.standards), outputs: held(spoiledRows.outputs) },
  ...{ readings: held(spoiledRows.readings), trips: held(spoiledRows.trips), files: [] },
};

/** What a check tells: each code with its line. */
export function toldBy(check: (tell: Tell, problems: ProblemList) => unknown): readonly string[] {
  const problems = new ProblemList();
  check(tellOf("C-1", problems), problems);
  return problems.all.map(({ code, place }) => `${code} ${place.line}`);
}

/** Errors of four years, each a year apart: a line of 2.2 a year. */
/** One result, ratio 4: 95 % found in tolerance. */
export { onePointAtRisk } from "../verdict/decision/sample-risk.ts";
export const fourErrors = [1, 3, 4, 8].map((error, year) => ({ day: 365.25 * year, error }));
