import { groupedBy } from "../../model/grouped-by.ts";
import { axes } from "../../model/loop-stages.ts";
import { spanOf } from "../../model/range.ts";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import { median } from "../../numeric/median.ts";
import type { Loop } from "../readings/loop.ts";
import { partOfTolerance } from "../readings/place-in-range.ts";
import { toleranceAt } from "../readings/tolerance.ts";
import type { StagedReading } from "../stages/staged-readings.ts";

/**
 * How much of the tolerance the readings of a phase take up: the worst test point, by the median of its readings, so that
 * one slip does not decide.
 *
 * @param readings of one phase
 * @param loop for the tolerance
 * @returns part of the tolerance, 1 on its limit; undefined where nothing can be compared with the reference
 * Source: own choice.
 * @example readingsAgainst(staged.slice(3), loop) < 0.1 // true
 */
export function readingsAgainst(readings: readonly StagedReading[], loop: Loop): number | undefined {
  const { signal } = loop.characteristics;
  const output = axes.slice(1).find((axis) => readings.some(({ percent }) => percent[axis] !== undefined));
  if (output === undefined) return undefined;
  const parts = readings.flatMap(({ point, reading, percent }) => {
    const [shown, given] = [percent[output], percent.reference];
    if (shown === undefined || given === undefined) return [];
    const { low, high } = toleranceAt(loop.toleranceTerms, signal, reading.reference);
    return [{ point, part: partOfTolerance(((shown - given) * spanOf(signal)) / 100, low, high) }];
  });
  const points = [
    ...groupedBy(
      parts.filter(({ part }) => Number.isFinite(part)),
      ({ point }) => point,
    ).values(),
  ];
  if (points.length === 0) return undefined;
  return greatestOf(points.map((group) => median(group.map(({ part }) => part))));
}
