import { greatestDistanceOf } from "../model/range.ts";
import { isInTolerance } from "../model/statement.ts";
import type { CalibrationRecord, PhaseRecord } from "../record/record-schema.ts";
import { isInside } from "../units/is-inside.ts";
import { numberWords } from "../verdict/loop-check/limit-words.ts";
import type { AppliedKey } from "../verdict/loop-check/loop-items.ts";
import type { LoopLimit } from "../verdict/loop-check/loop-limits.ts";

/**
 * What the readings of the last phase say of two items of a loop check: whether the value shown is that computed from
 * the raw counts, and whether what the controller shows passes.
 *
 * @param record with its phases
 * @returns a limit with a finding for "scaling" and for "end to end", as far as the readings hold counts and values
 * Source: `stage-shares.ts`; the greatest share of the tolerance at its reading decides.
 * @example [...stageFindings(record).keys()] // []
 */
export function stageFindings({ phases, instrument }: CalibrationRecord): ReadonlyMap<AppliedKey, LoopLimit> {
  const phase = phases.asLeft ?? phases.asFound;
  if (phase === undefined) return new Map();
  const title = phases.asLeft === undefined ? "as found" : "as left";
  const findings: [AppliedKey, LoopLimit][] = [];
  const scaling = scalingOf(phase, title, instrument);
  if (scaling !== undefined) findings.push(["scaling", scaling]);
  const { controller } = phase.verdicts;
  if (controller !== null) {
    const says = `${title}, what the controller shows: ${controller}`;
    findings.push(["end to end", { finding: { isPass: isInTolerance(controller), says }, basis: "the readings" }]);
  }
  return new Map(findings);
}

function scalingOf(
  { readings }: PhaseRecord,
  title: string,
  instrument: CalibrationRecord["instrument"],
): LoopLimit | undefined {
  const unit = instrument.distanceUnit;
  const shares = readings.flatMap(({ shares: { scaling } = {}, leftOut, toleranceLow, toleranceHigh, reference }) => {
    if (scaling === undefined || leftOut !== undefined) return [];
    const limit = scaling < 0 ? toleranceLow : toleranceHigh;
    return [{ scaling, limit, reference, part: scaling === 0 ? 0 : Math.abs(scaling / limit) }];
  });
  const [worst] = shares.toSorted((one, other) => other.part - one.part);
  if (worst === undefined) return undefined;
  const says =
    `${title}, computing the value from raw counts differs from the value shown by ` +
    `${numberWords(worst.scaling, unit, 3)} at ${numberWords(worst.reference, unit)}, tolerance there ` +
    numberWords(worst.limit, unit, 3);
  const limits = { low: -Math.abs(worst.limit), high: Math.abs(worst.limit) };
  const isPass = isInside(worst.scaling, limits, greatestDistanceOf(instrument));
  return { finding: { isPass, says }, basis: "the readings" };
}
