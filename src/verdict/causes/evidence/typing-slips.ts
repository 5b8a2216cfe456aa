import { indicatedDistance } from "../../../analysis/readings/ideal-characteristic.ts";
import type { Loop } from "../../../analysis/readings/loop.ts";
import { errorOffLine, type StageLine } from "../../../analysis/stages/stage-lines.ts";
import { axisCharacteristic, inUnitOf, type StagedReading } from "../../../analysis/stages/staged-readings.ts";
import { type Axis, axes } from "../../../model/loop-stages.ts";
import { spanOf } from "../../../model/range.ts";
import { gapShare } from "../../../model/test-points.ts";
import { thresholds } from "./thresholds.ts";

/** A number that fits its neighbours as soon as two digits change places or the decimal mark moves. */
export type TypingSlip = {
  index: number;
  axis: Axis;
  typed: number;
  meant: number;
  kind: "two digits exchanged" | "decimal mark moved" | typeof typedTwice | "the reference is not that of its point";
  /** Error of the reading before and after, percent of span. */
  before: number;
  after: number;
};

const typedTwice = "one digit typed twice";

/** Most decimals that were typed in a column. */
export type TypedDecimals = Partial<Record<Axis, number>>;

/** More than this part of the readings would be another fault. */
const mostSlips = 0.1;
/** References that contradict the points of their own rows may be more, as in a column filled down: own choice. */
const mostOfPoints = 0.3;

/**
 * Looks for readings that lie far out and that one slip of the typing hand explains.
 *
 * @param readings of one phase
 * @param lines of the stages, robust, so that the wild reading did not move them
 * @param loop for the ideal lines
 * @param decimals as typed in each column
 * @param leastDeviation percent of span: what lies less far out is left alone
 * @returns at most one slip a reading, the one that fits best; none where more than a tenth of the readings would be
 *   slips, or more than three tenths references that contradict their points
 * Source: own choice: adjacent digits exchanged (the difference is divisible by 9 in the last digits), a factor of 10,
 *   100 or 1000, a digit typed twice, or a reference farther from the point of its row than a test point is wide.
 * @example typingSlips(evidence.readings, [stage.line], evidence.loop, { signal: 3 }, 0.25) // []
 */
export function typingSlips(
  readings: readonly StagedReading[],
  lines: readonly StageLine[],
  loop: Loop,
  decimals: TypedDecimals,
  leastDeviation: number,
): readonly TypingSlip[] {
  const slips = readings.flatMap((reading) => {
    const slip = bestSlip(reading, lines, loop, decimals, leastDeviation);
    return slip === undefined || fellowsAgree(readings, reading, slip, lines) ? [] : [slip];
  });
  const ofPoints = slips.filter(({ kind }) => kind === ofPoint);
  const isOften = slips.length - ofPoints.length > Math.max(1, mostSlips * readings.length);
  return isOften || ofPoints.length > Math.max(1, mostOfPoints * readings.length) ? [] : slips;
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
    return [...alternatives(typed, decimals[axis] ?? 0), ...pointInstead(reading, axis, loop)].flatMap(
      ({ meant, kind }) => {
        const changed = { ...reading.percent, [axis]: percentOf(loop, axis, meant) };
        const after = worstOf(changed, lines);
        const fits = after.scatters <= thresholds.slipWithinScatters || after.percent <= leastDeviation / 2;
        return fits && after.percent < before.percent / 3
          ? [{ index: reading.index, axis, typed, meant, kind, before: before.percent, after: after.percent }]
          : [];
      },
    );
  });
  return found.sort((left, right) => left.after - right.after)[0];
}

const ofPoint = "the reference is not that of its point";

/** The row says itself where the target was meant to be. */
function pointInstead({ point, percent }: StagedReading, axis: Axis, loop: Loop): readonly Alternative[] {
  if (axis !== "reference" || Math.abs((percent.reference as number) - point) <= 100 * gapShare) return [];
  return [{ meant: inUnitOf(loop, "reference", point), kind: ofPoint }];
}

/** Own choice: of the readings of one test point so many as far off, by this part of it, were not all mistyped. */
const fellowsFrom = 0.5;

/** The other readings of the point are off as well: whatever it is, it is no slip of the hand. */
function fellowsAgree(
  readings: readonly StagedReading[],
  reading: StagedReading,
  { before, kind }: TypingSlip,
  lines: readonly StageLine[],
): boolean {
  if (kind === ofPoint) return false;
  const fellows = readings.filter(({ index, point }) => index !== reading.index && point === reading.point);
  const off = fellows.filter(({ percent }) => worstOf(percent, lines).percent > fellowsFrom * before);
  return fellows.length > 0 && off.length >= fellowsFrom * fellows.length;
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
    const residual = Math.abs(errorOffLine(made - given, fit, given));
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

type Alternative = Pick<TypingSlip, "meant" | "kind">;

function alternatives(typed: number, decimals: number): readonly Alternative[] {
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
  const once = digits.slice(1).flatMap((digit, place): readonly Alternative[] => {
    if (digit !== digits[place + 2]) return [];
    const behind = place + 2 < digits.length - decimals ? decimals : decimals - 1;
    return [{ meant: (sign * Number(digits.toSpliced(place + 2, 1).join(""))) / 10 ** behind, kind: typedTwice }];
  });
  return [...exchanged, ...(typed === 0 ? [] : moved), ...once];
}
