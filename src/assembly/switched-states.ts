import type { PhaseName } from "../record/phase-name.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import type { SwitchedState } from "../verdict/switching/switched-state.ts";

/**
 * The switched outputs of a record as one phase leaves them, for whoever draws conclusions from them.
 *
 * @param record with its switched outputs
 * @param phase whose trips are meant; the wiring holds for both
 * @returns one state an output, in the order of the table; `found` is null where it was not tripped in that phase
 * Source: `assembleSwitching`.
 * @example switchedStates({ ...record, switching: undefined }, "asFound") // []
 */
export function switchedStates(
  { switching = [] }: Pick<CalibrationRecord, "switching">,
  phase: PhaseName,
): readonly SwitchedState[] {
  return switching.map(({ output, wiring, phases }) => ({ output, wiring, found: phases[phase] ?? null }));
}
