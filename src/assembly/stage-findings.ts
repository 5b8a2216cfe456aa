import { isInTolerance } from "../model/statement.ts";
import { phaseWords } from "../record/phase-name.ts";
import { lastPhaseOf } from "../record/phases-of.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import type { AppliedKey } from "../verdict/loop-check/loop-items.ts";
import type { LoopLimit } from "../verdict/loop-check/loop-limits.ts";
import { type ScalingShare, scalingFinding } from "../verdict/loop-check/scaling-finding.ts";

/**
 * What the readings of the last phase say of two items of a loop check: whether the value shown is that computed from
 * the raw counts, and whether what the controller shows passes.
 *
 * @param record with its phases
 * @returns a limit with a finding for "scaling" and for "end to end", as far as the readings hold counts and values
 * Source: `stage-shares.ts`; the greatest share of the tolerance at its reading decides.
 * @example [...stageFindings(record).keys()] // []
 */
export function stageFindings(record: CalibrationRecord): ReadonlyMap<AppliedKey, LoopLimit> {
  const last = lastPhaseOf(record);
  if (last === undefined) return new Map();
  const { phase } = last;
  const title = phaseWords[last.name];
  const findings: [AppliedKey, LoopLimit][] = [];
  const { distanceUnit: unit } = record.instrument;
  const scaling = scalingFinding(scalingOf(phase), { title, unit, range: record.instrument });
  if (scaling !== undefined) findings.push(["scaling", scaling]);
  const { controller } = phase.verdicts;
  if (controller !== null) {
    const says = `${title}, what the controller shows: ${controller}`;
    findings.push(["end to end", { finding: { isPass: isInTolerance(controller), says }, basis: "the readings" }]);
  }
  return new Map(findings);
}

function scalingOf({ readings }: PhaseRecord): readonly ScalingShare[] {
  return readings.flatMap(({ shares: { scaling } = {}, leftOut, reference, toleranceLow, toleranceHigh }) =>
    scaling === undefined || leftOut !== undefined ? [] : [{ share: scaling, reference, toleranceLow, toleranceHigh }],
  );
}
