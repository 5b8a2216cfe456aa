import { isDetermined } from "../analysis/figures/figure.ts";
import { dateOf } from "../analysis/years/day-number.ts";
import { loopDrift } from "../analysis/years/loop-drift.ts";
import { recordsOfOneLoop } from "../analysis/years/records-of-one-loop.ts";
import { spanOf } from "../record/range.ts";
import type { RegisterRow } from "../record/register-form.ts";
import type { PhaseInShort, RecordInShort } from "./record-in-short.ts";

type DriftAndForecast = Pick<RegisterRow, "drift" | "forecast">;

/** Drift and forecast of a loop, those that its history tells: in percent of span a year; or why there is none. */
export function registerDrift(all: readonly RecordInShort[]): DriftAndForecast {
  const { records } = recordsOfOneLoop(all.map(withPoints));
  const last = records.at(-1);
  if (last === undefined) return neither({ notDetermined: "no day is stated" });
  const { points, leading } = loopDrift(records, last);
  if (!isDetermined(leading)) return neither(leading);
  const { line, meets } = points[leading.index] ?? { line: notJudged, meets: notJudged };
  if (!isDetermined(line)) return neither(line);
  const early = line.isEarly && { isEarly: true };
  return {
    drift: { percentSpanPerYear: (100 * line.perYear.value) / spanOf(last), ...early },
    forecast: isDetermined(meets)
      ? { on: dateOf(meets.day), limit: meets.limit, isAlready: meets.isAlready, ...early }
      : meets,
  };
}

const notJudged = { notDetermined: "no test point was judged" };

function neither(why: { notDetermined: string }): DriftAndForecast {
  return { drift: why, forecast: why };
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
