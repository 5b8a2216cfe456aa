export { isInTolerance } from "../model/statement.ts";

import { isInTolerance, worstStatement } from "../model/statement.ts";
import type { PhaseName } from "./phase-name.ts";
import type { CalibrationRecord, Statement } from "./record-schema.ts";
import type { SwitchingRecord } from "./switching-schema.ts";

type Judged = Pick<CalibrationRecord, "phases" | "switching" | "overall">;

/**
 * What is said of one switched output in one phase. As left one that was not judged again stands for itself where it
 * passed as found; what did not pass is open, no pass and no fail.
 *
 * @param phases of the output
 * @param name of the phase
 * @returns statement; null where it was not judged
 * Source: own choice.
 * @example outputStatement({}, "asFound") // null
 */
export function outputStatement({ asFound, asLeft }: SwitchingRecord["phases"], name: PhaseName): Statement | null {
  const found = asFound?.statement ?? null;
  if (name === "asFound") return found;
  return asLeft?.statement ?? (isInTolerance(found) ? found : null);
}

/**
 * The worst statement of the switched outputs in one phase. Where a record of form 1 did not ask whether an output was
 * tried again, it is left as it was found; one that does not fit its input is no pass in any phase, however well it trips: the controller cannot read it.
 *
 * @param record with its switched outputs
 * @param name of the phase
 * @returns statement; null where no output was judged
 * Source: own choice, as `worstStatement`; `inputMatch` and `inputVoltage` for what does not fit.
 * @example outputsStatement({ phases: {} }, "asFound") // null
 */
export function outputsStatement({ switching = [], overall }: Judged, name: PhaseName): Statement | null {
  const words = switching.flatMap(({ phases, wiring }) => {
    const asFound = overall === undefined ? outputStatement(phases, "asFound") : null;
    const word = outputStatement(phases, name) ?? asFound;
    const fits: readonly Statement[] = wiring.statement === "fail" ? ["fail"] : [];
    return [...fits, ...(word ? [word] : [])];
  });
  return worstStatement(words) ?? null;
}

/**
 * What is said of a whole loop in one phase: the worst of its analog value and of its switched outputs.
 *
 * @param record with its phases and switched outputs
 * @param name of the phase
 * @returns statement; null where nothing was judged
 * Source: own choice; ISO/IEC 17025:2017, 7.8.6 asks that a statement says which results it covers.
 * @example phaseStatement({ phases: {} }, "asFound") // null
 */
export function phaseStatement(record: Judged, name: PhaseName): Statement | null {
  const found = [record.phases[name]?.verdict, outputsStatement(record, name)];
  return worstStatement(found.filter((statement) => statement !== null && statement !== undefined)) ?? null;
}
