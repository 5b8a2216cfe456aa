import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { axes } from "../../model/loop-stages.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Finding, rivalName } from "./finding.ts";
import { placeNumber, unitOf } from "./line-words.ts";
import type { TypingSlip } from "./typing-slips.ts";

/**
 * Row 33: one reading far out that a slip of the typing hand explains.
 *
 * @param evidence of a phase
 * @returns a finding for each such reading
 * Source: `typingSlips`.
 * @example typingCauses(evidence)[0].row // 33
 */
export function typingCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.slips.map((slip) => findingOf(evidence, slip));
}

function findingOf(evidence: CauseEvidence, slip: TypingSlip): Finding {
  const unit = unitOf(evidence, slip.axis);
  const staged = evidence.readings.find(({ index }) => index === slip.index);
  const reference = inUnitOf(evidence.loop, "reference", staged?.percent.reference ?? 0);
  const column = {
    reference: "reference",
    signal: "signal",
    signalAtCard: "signal_at_card",
    counts: "counts",
    value: "value",
  }[slip.axis];
  const digits = evidence.decimals[slip.axis] ?? 0;
  const others = axes.some((axis) => axis !== slip.axis && axis !== "reference" && staged?.percent[axis] !== undefined);
  return {
    row: 33,
    title: causeTitles[33] as string,
    stage: "readings",
    says: `One reading at ${placeNumber(reference)} ${evidence.instrument.distanceUnit} (${staged?.direction}, cycle ${staged?.cycle}) lies far out; ${column} ${placeNumber(slip.meant)} in place of ${placeNumber(slip.typed)} would fit. This is consistent with a typing error: ${slip.kind}.`,
    evidence: [
      { name: `${column} as typed`, value: slip.typed, unit },
      { name: `${column} that would fit`, value: Number(slip.meant.toFixed(Math.min(20, digits + 3))), unit },
      { name: "error as typed", value: slip.before, unit: "% of span" },
      { name: "error with the other number", value: slip.after, unit: "% of span" },
    ],
    rivals: others ? [rivalName(18)] : [rivalName(18), "a slip in another column of the row"],
    separatedBy: "look at the sheet or the meter's memory, or read the point again; correct nothing by guess",
  };
}
