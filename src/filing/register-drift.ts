import { isDetermined } from "../analysis/figures/figure.ts";
import { loopDrift } from "../analysis/years/loop-drift.ts";
import { recordsOfOneLoop } from "../analysis/years/records-of-one-loop.ts";
import { spanOf } from "../record/range.ts";
import type { RegisterRow } from "../record/register-form.ts";
import type { PhaseInShort, RecordInShort } from "./index-entry.ts";

/** The drift of a loop, the one that its history tells, in percent of span a year; or why there is none. */
export function registerDrift(all: readonly RecordInShort[]): RegisterRow["drift"] {
  const { records } = recordsOfOneLoop(all.map(withPoints));
  const last = records.at(-1);
  if (last === undefined) return { notDetermined: "no day is stated" };
  const { points, leading } = loopDrift(records, last);
  if (!isDetermined(leading)) return leading;
  const line = points[leading.index]?.line ?? { notDetermined: "no test point was judged" };
  if (!isDetermined(line)) return line;
  return { percentSpanPerYear: (100 * line.perYear.value) / spanOf(last), ...(line.isEarly && { isEarly: true }) };
}

function withPoints({ asFound, asLeft, ...record }: RecordInShort) {
  return { ...record, asFound: pointsOf(asFound), asLeft: pointsOf(asLeft) };
}

function pointsOf(phase: PhaseInShort | null) {
  if (phase === null) return null;
  return {
    points: phase.places.map(([point, errorDistance, toleranceLow, toleranceHigh]) => ({
      ...{ point, errorDistance, toleranceLow, toleranceHigh },
    })),
  };
}
