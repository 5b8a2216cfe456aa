import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { axes } from "../../model/loop-stages.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { placeNumber, unitOf } from "./evidence/line-words.ts";
import type { TypingSlip } from "./evidence/typing-slips.ts";

/** One reading far out that a slip of the typing hand explains, as `typingSlips` found it. */
export const typingError: Cause = {
  id: "typing-error",
  title: "typing error",
  place: "readings",
  separatedBy: "look at the sheet or the meter's memory, or read the point again; correct nothing by guess",
  remedy: {
    cures: "readings",
    does: "compare the number with the sheet and read that point again; correct nothing by guess",
  },
  detect: (evidence) => evidence.slips.map((slip) => sightingOf(evidence, slip)),
};

const columns = {
  reference: "reference",
  signal: "signal",
  signalAtCard: "signal_at_card",
  counts: "counts",
  value: "value",
} as const;

function sightingOf(evidence: CauseEvidence, slip: TypingSlip): Sighting {
  const unit = unitOf(evidence, slip.axis);
  const staged = evidence.readings.find(({ index }) => index === slip.index);
  const reference = inUnitOf(evidence.loop, "reference", staged?.percent.reference ?? 0);
  const column = columns[slip.axis];
  const digits = evidence.decimals[slip.axis] ?? 0;
  const others = axes.some((axis) => axis !== slip.axis && axis !== "reference" && staged?.percent[axis] !== undefined);
  return {
    says: `One reading at ${placeNumber(reference)} ${evidence.instrument.distanceUnit} (${staged?.direction}, cycle ${staged?.cycle}) lies far out; ${column} ${placeNumber(slip.meant)} in place of ${placeNumber(slip.typed)} would fit. This is consistent with a typing error: ${slip.kind}.`,
    evidence: [
      { name: `${column} as typed`, value: slip.typed, unit },
      { name: `${column} that would fit`, value: Number(slip.meant.toFixed(Math.min(20, digits + 3))), unit },
      { name: "error as typed", value: slip.before, unit: "% of span" },
      { name: "error with the other number", value: slip.after, unit: "% of span" },
    ],
    rivals: others ? ["target-lost-fault"] : ["target-lost-fault", "other-column-slip"],
  };
}
