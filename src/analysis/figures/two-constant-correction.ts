import { spanOf } from "../../model/range.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { lineBetween } from "../../numeric/line-between.ts";
import { lineOfLeastShare } from "../../numeric/line-of-least-share.ts";
import { mean } from "../../numeric/mean.ts";
import type { ToleranceLimits } from "../readings/tolerance.ts";
import { type Figure, notDetermined } from "./figure.ts";

// Two constants are all that a re-teach at two distances or a new scaling changes: the distances that the two range
// ends stand for. An indicated distance d becomes `lower` + (d − L)/(U − L) · (`upper` − `lower`), exactly, so the line
// is laid through reference over indicated distance, and not through error over reference.

/** Distances nearer to each other, as a part of the span, are one: what storing a number leaves of a signal at its rail. */
const leastDifference = 1e-9;

/** What an output that stood for the lower, or the upper, range end is to stand for; distance. */
export type Correction = { lower: number; upper: number };

/** One error that is to be corrected: where the target stood, what was indicated, between which errors it should lie. */
export type ErrorToCorrect = { reference: number; indicated: number; limits: ToleranceLimits };

/** The ends of the range, distance. */
export type RangeEnds = { rangeLower: number; rangeUpper: number };

/**
 * How far an error lies from the middle between its limits, as a part of half their distance: up to 1 is inside.
 *
 * @param error distance
 * @param limits that it should lie between, distance
 * @returns part of the room on that side of the middle; 1 on a limit, infinite beyond limits that leave no room
 * Source: own choice.
 * @example shareOfRoom(-3, { low: -2, high: 2 }) // 1.5
 */
export function shareOfRoom(error: number, { low, high }: ToleranceLimits): number {
  const off = Math.abs(error - (low + high) / 2);
  return off === 0 ? 0 : off / ((high - low) / 2);
}

/**
 * The two constants that leave all errors the least part of the room between their limits.
 *
 * Where the limits are the same everywhere and symmetric, this is the correction that leaves the least worst error there
 * is (minimax). Where they differ along the range, no error comes nearer to its limit, in parts of that limit, than has to
 * be: the correction passes if any does, and a straight line is put right at both ends.
 *
 * @param errors at two or more indicated distances; distances in one unit
 * @param range its ends, in that unit
 * @returns what the range ends are to stand for; or the reason why there is none
 * Source: own choice; the line is `lineOfLeastShare`, and `lineBetween` where all limits are the same.
 * @example bestCorrection([0, 1, 2, 3].map((indicated, at) => ({ indicated, reference: [0, 1, 4, 9][at] ?? 0, limits: {
 *   low: -1, high: 1 } })), { rangeLower: 0, rangeUpper: 3 }) // { lower: -1, upper: 8 }
 */
export function bestCorrection(errors: readonly ErrorToCorrect[], range: RangeEnds): Figure<Correction> {
  const indicated = errors.map((error) => error.indicated);
  const between = greatestOf(indicated) - leastOf(indicated);
  if (!(between > leastDifference * spanOf(range))) return notDetermined("fewer than two indicated distances");
  const line = bestLine(indicated, errors);
  const at = (distance: number) => line.valueAtMean + line.slope * (distance - line.abscissaMean);
  return { lower: at(range.rangeLower), upper: at(range.rangeUpper) };
}

/** Own choice: where limits leave no room, as a part of a reading at 0 does, this part of the widest room counts. */
const leastRoom = 0.001;

function bestLine(indicated: readonly number[], errors: readonly ErrorToCorrect[]) {
  const rooms = errors.map(({ limits }) => (limits.high - limits.low) / 2);
  const least = leastRoom * greatestOf(rooms);
  const halfWidths = rooms.map((room) => Math.max(room, least));
  const [first] = halfWidths;
  if (least > 0 && halfWidths.some((width) => width !== first)) {
    const middles = errors.map(({ reference, limits }) => reference + (limits.low + limits.high) / 2);
    return lineOfLeastShare(indicated, middles, halfWidths);
  }
  return lineBetween(
    indicated,
    errors.map(({ reference, limits }) => reference + limits.low),
    errors.map(({ reference, limits }) => reference + limits.high),
  );
}

/** The readings of one test point, distances: as many references as indicated distances. */
export type TaughtPoint = { references: readonly number[]; indicated: readonly number[] };

/**
 * The two constants of a re-teach at two test points: afterwards the mean error at either is zero.
 *
 * @param first readings of one test point, at least one
 * @param last readings of another
 * @param range its ends, in the same unit
 * @returns what the range ends are to stand for; or the reason why there is none
 * Source: ANSI/ISA-51.1-1979 (R1993), "linearity, terminal-based", for the line through two end points.
 * @example endsCorrection({ references: [0], indicated: [1] }, { references: [100], indicated: [103] }, { rangeLower:
 *   0, rangeUpper: 102 }) // { lower: -0.9804, upper: 99.02 }
 */
export function endsCorrection(first: TaughtPoint, last: TaughtPoint, range: RangeEnds): Figure<Correction> {
  const [from, to] = [mean(first.indicated), mean(last.indicated)];
  if (from === to) return notDetermined("the first and the last test point indicate the same distance");
  const [start, end] = [mean(first.references), mean(last.references)];
  const at = (distance: number) => start + ((distance - from) / (to - from)) * (end - start);
  return { lower: at(range.rangeLower), upper: at(range.rangeUpper) };
}

/**
 * The distance that is indicated after a correction.
 *
 * @param indicated distance before it
 * @param correction what the range ends are to stand for
 * @param range its ends
 * @returns distance
 * Source: the line through the two ends.
 * @example correctedDistance(50, { lower: 1, upper: 99 }, { rangeLower: 0, rangeUpper: 100 }) // 50
 */
export function correctedDistance(indicated: number, { lower, upper }: Correction, range: RangeEnds): number {
  return lower + ((indicated - range.rangeLower) / spanOf(range)) * (upper - lower);
}
