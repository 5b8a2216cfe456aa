import { phasesOf } from "../../record/phases-of.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain } from "../../units/write-number.ts";
import { type SwitchedPhaseRecord, signedWithUncertainty } from "../texts/switching-texts.ts";
import { type RowOfPhase, shareWords, type TestPointRow } from "./test-point-rows.ts";

/** Every switched output as a row of the same table: its set point, where it operated and released, and its error. */
export function outputRows({ switching = [] }: CalibrationRecord): readonly TestPointRow[] {
  return switching.map((one) => ({
    name: `${one.output.output} ${writePlain(one.output.setPoint)}`,
    isOutput: true,
    of: Object.fromEntries(phasesOf(one).map(({ name, phase }) => [name, rowOfPhase(phase)])),
  }));
}

function rowOfPhase(phase: SwitchedPhaseRecord): RowOfPhase {
  const { setPoint, operating, release, decimals } = phase;
  const trip = (found: SwitchedPhaseRecord["operating"]) =>
    found === null ? "–" : writeFixed(found.mean, found.count === 1 ? decimals : decimals + 1);
  return {
    distance: "",
    expected: "",
    rising: trip(release),
    falling: trip(operating),
    error: setPoint === null ? "–" : signedWithUncertainty(setPoint.error, setPoint.expandedUncertainty),
    shareOfTolerance: setPoint?.decision ? shareWords(setPoint.error, setPoint.decision) : "–",
    statement: phase.statement ?? "not determined",
  };
}
