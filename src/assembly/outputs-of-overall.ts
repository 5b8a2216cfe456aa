import { isInTolerance, worstStatement } from "../model/statement.ts";
import { type PhaseName, phaseWords } from "../record/phase-name.ts";
import { outputStatement } from "../record/phase-statement.ts";
import type { CalibrationRecord, Statement } from "../record/record-schema.ts";
import type { SwitchingRecord } from "../record/switching-schema.ts";
import type { Missing } from "../verdict/completeness/missing-points.ts";

type Switched = Pick<CalibrationRecord, "switching">;

/**
 * What the switched outputs lack for the state that the record speaks of.
 *
 * Every output of the table is to be tried, and its set point measured in the direction in which it counts: trips the
 * other way say how it lets go, not where it switches. One that did not pass as found is to be tried again as left; one
 * that passed as found stands for itself.
 *
 * @param record with its switched outputs
 * @param of the state; null where nothing was read or tried
 * @returns a reason for each output that is open
 * Source: own choice; ISO/IEC 17025:2017, 7.8.4.1 d, asks for results before and after an adjustment.
 * @example missingOutputs({ switching: [] }, "asFound") // []
 */
export function missingOutputs({ switching = [] }: Switched, of: PhaseName | null): readonly Missing[] {
  return switching.flatMap((one): readonly Missing[] => {
    const says = whyOpen(one, of);
    return says === undefined ? [] : [{ about: "output", says }];
  });
}

function whyOpen({ output, phases }: SwitchingRecord, of: PhaseName | null): string | undefined {
  const { asFound, asLeft } = phases;
  const named = `switched output ${output.output}`;
  const unmeasured = (phase: PhaseName) =>
    `the set point of ${named} was not measured on ${output.criticalDirection ?? "approach"}, the direction in which it counts, ${phaseWords[phase]}`;
  if (asFound === undefined && asLeft === undefined) return `${named} was not tried`;
  if (asLeft !== undefined) {
    const isProved = asLeft.setPoint !== null || isProvedAsFound(asFound);
    return isProved ? undefined : unmeasured("asLeft");
  }
  if (asFound?.setPoint === null) return unmeasured("asFound");
  const isTriedAgain = of !== "asLeft" || isInTolerance(asFound?.statement ?? "pass");
  return isTriedAgain ? undefined : `${named}, as found ${asFound?.statement}, was not tried again as left`;
}

/**
 * The switched outputs that trip elsewhere as left than as found, by more than both uncertainties explain: somebody did
 * something to them, and where no adjustment is named the record does not say what.
 *
 * @param record with its switched outputs
 * @param write a distance in words
 * @returns a reason for each of them
 * Source: own choice, as for readings (`missingBeside`).
 * @example changedOutputs({ switching: [] }, String) // []
 */
export function changedOutputs({ switching = [] }: Switched, write: (distance: number) => string): readonly Missing[] {
  return switching.flatMap(({ output, phases }): readonly Missing[] => {
    const [found, left] = [phases.asFound?.setPoint, phases.asLeft?.setPoint];
    if (!found || !left) return [];
    const by = Math.abs(left.error - found.error);
    if (by <= Math.hypot(left.expandedUncertainty, found.expandedUncertainty)) return [];
    const says = `switched output ${output.output} trips ${write(by)} off where it tripped as found, more than the uncertainty, and no adjustment is named`;
    return [{ about: "adjustment", says }];
  });
}

function isProvedAsFound(asFound: SwitchingRecord["phases"]["asFound"]): boolean {
  return asFound !== undefined && asFound.setPoint !== null && isInTolerance(asFound.statement);
}

/**
 * The worst word of the switched outputs for the state that the record speaks of; wiring that does not fit fails them.
 *
 * @param record with its switched outputs
 * @param of the state; null where nothing was read or tried
 * @returns statement; null where no output was judged
 * Source: `outputStatement`, `worstStatement`.
 * @example outputsWord({ switching: [] }, "asFound") // null
 */
export function outputsWord({ switching = [] }: Switched, of: PhaseName | null): Statement | null {
  const words = switching.flatMap(({ phases, wiring }): readonly Statement[] => {
    const word = outputStatement(phases, of ?? "asFound");
    return [...(word === null ? [] : [word]), ...(wiring.statement === "fail" ? ["fail" as const] : [])];
  });
  return worstStatement(words) ?? null;
}
