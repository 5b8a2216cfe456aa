import { indicatedDistance } from "../../../analysis/readings/ideal-characteristic.ts";
import type { Loop } from "../../../analysis/readings/loop.ts";
import { type StageLine, stageErrorAt } from "../../../analysis/stages/stage-lines.ts";
import { axisCharacteristic, type StagedReading } from "../../../analysis/stages/staged-readings.ts";
import { type Axis, axes } from "../../../model/loop-stages.ts";
import { spanOf } from "../../../model/range.ts";
import { thresholds } from "./thresholds.ts";

/** A number that fits its neighbours as soon as two digits change places or the decimal mark moves. */
export type TypingSlip = {
  index: number;
  axis: Axis;
  typed: number;
  meant: number;
  kind: "two digits exchanged" | "decimal mark moved";
  /** Error of the reading before and after, percent of span. */
  before: number;
  after: number;
};

/** Most decimals that were typed in a column. */
export type TypedDecimals = Partial<Record<Axis, number>>;

/** More than this part of the readings would be another fault. */
const mostSlips = 0.1;

/**
 * Looks for readings that lie far out and that one slip of the typing hand explains.
 *
 * @param readings of one phase
 * @param lines of the stages, robust, so that the wild reading did not move them
 * @param loop for the ideal lines
 * @param decimals as typed in each column
 * @param leastDeviation percent of span: what lies less far out is left alone
 * @returns at most one slip a reading, the one that fits best; none where more than a tenth of the readings would be slips
 * Source: own choice: adjacent digits exchanged (the difference is divisible by 9 in the last digits), or a factor of 10,
 *   100 or 1000.
 * @example typingSlips(evidence.readings, [stage.line], evidence.loop, { signal: 3 }, 0.25) // []
 */
export function typingSlips(
  readings: readonly StagedReading[],
  lines: readonly StageLine[],
  loop: Loop,
  decimals: TypedDecimals,
  leastDeviation: number,
): readonly TypingSlip[] {
  const slips = readings.flatMap((reading) => bestSlip(reading, lines, loop, decimals, leastDeviation) ?? []);
  return slips.length > Math.max(1, mostSlips * readings.length) ? [] : slips;
}

function bestSlip(
  reading: StagedReading,
  lines: readonly StageLine[],
  loop: Loop,
  decimals: TypedDecimals,
  leastDeviation: number,
): TypingSlip | undefined {
  const before = worstOf(reading.percent, lines);
  if (before.scatters <= thresholds.slipBeyondScatters || before.percent <= leastDeviation) return undefined;
  const found = axes.flatMap((axis) => {
    const typed = reading.reading[axis];
    if (typed === undefined) return [];
    return alternatives(typed, decimals[axis] ?? 0).flatMap(({ meant, kind }) => {
      const changed = { ...reading.percent, [axis]: percentOf(loop, axis, meant) };
      const after = worstOf(changed, lines);
      const fits = after.scatters <= thresholds.slipWithinScatters || after.percent <= leastDeviation / 2;
      return fits && after.percent < before.percent / 3
        ? [{ index: reading.index, axis, typed, meant, kind, before: before.percent, after: after.percent }]
        : [];
    });
  });
  return found.sort((left, right) => left.after - right.after)[0];
}

/** How far the worst stage of a reading is from that stage's line. */
function worstOf(
  percent: StagedReading["percent"],
  lines: readonly StageLine[],
): { percent: number; scatters: number } {
  let worst = { percent: 0, scatters: 0 };
  for (const { input, output, fit, scatter } of lines) {
    const given = percent[input];
    const made = percent[output];
    if (given === undefined || made === undefined) continue;
    const residual = Math.abs(made - given - stageErrorAt(fit, given).percentSpan);
    const scatters = residual === 0 ? 0 : residual / scatter;
    worst = { percent: Math.max(worst.percent, residual), scatters: Math.max(worst.scatters, scatters) };
  }
  return worst;
}

function percentOf(loop: Loop, axis: Axis, output: number): number | undefined {
  const characteristic = axisCharacteristic(loop, axis);
  if (characteristic === undefined) return undefined;
  return (100 * (indicatedDistance(characteristic, output) - characteristic.rangeLower)) / spanOf(characteristic);
}

function alternatives(typed: number, decimals: number): readonly { meant: number; kind: TypingSlip["kind"] }[] {
  const sign = typed < 0 ? -1 : 1;
  // A zero in front may be one that changed places: 401 typed as 041.
  const digits = [..."0", ...Math.abs(typed).toFixed(Math.min(decimals, 12)).replace(".", "")];
  const exchanged = digits.slice(1).flatMap((digit, place) => {
    const before = digits[place] as string;
    if (digit === before) return [];
    const changed = digits
      .with(place, digit)
      .with(place + 1, before)
      .join("");
    return [{ meant: (sign * Number(changed)) / 10 ** decimals, kind: "two digits exchanged" as const }];
  });
  const moved = [10, 100, 1000].flatMap((factor) => [
    { meant: typed * factor, kind: "decimal mark moved" as const },
    { meant: typed / factor, kind: "decimal mark moved" as const },
  ]);
  return [...exchanged, ...(typed === 0 ? [] : moved)];
}
