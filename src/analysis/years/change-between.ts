import { pointAt } from "../readings/place-in-range.ts";
import { differenceUncertainty, type ResultUncertainty } from "../uncertainty/difference-uncertainty.ts";
import { type DatedRecord, leftState } from "./dated-states.ts";
import { daysPerYear } from "./day-number.ts";

/** A judged test point with what is known of its uncertainty; distance. */
export type ComparedPoint = ResultUncertainty & { point: number; errorDistance: number };
type ComparedPhase = { points: readonly ComparedPoint[] };

/** What a visit found beside what the one before had left, at one test point; distance. */
export type Change = {
  errorDistance: number;
  expandedUncertainty: number;
  /** Whose certificate was the same at both visits: it drops out of U. */
  sameStandards: readonly string[];
  years: number;
  /** Null where both visits are of one day. */
  perYear: number | null;
};

/**
 * How a loop changed from one visit to the next: as found now less what the visit before left, at one test point.
 *
 * @param before record
 * @param now the next one
 * @param place distance of the test point
 * @param span of the range, distance: where test points are the same, `pointAt`
 * @returns the change and its U; undefined where either visit did not read that point, or where the one before adjusted
 *   the loop and did not read it again
 * Source: ILAC-G24:2022 / OIML D 10, 6.3; `differenceUncertainty`.
 * @example changeBetween({ day: 0, adjustment: "none", asFound: { points: [{ point: 5, errorDistance: 1,
 *   expandedUncertainty: 0.3 }] }, asLeft: null }, { day: 365, adjustment: "none", asFound: { points: [{ point: 5,
 *   errorDistance: 3, expandedUncertainty: 0.4 }] }, asLeft: null }, 5, 100) // errorDistance 2, expandedUncertainty 0.5, years 0.9993
 */
export function changeBetween(
  before: DatedRecord<ComparedPhase>,
  now: DatedRecord<ComparedPhase>,
  place: number,
  span: number,
): Change | undefined {
  const left = pointAt(leftState(before)?.points ?? [], place, span);
  const found = pointAt(now.asFound?.points ?? [], place, span);
  if (left === undefined || found === undefined) return undefined;
  const errorDistance = found.errorDistance - left.errorDistance;
  const years = (now.day - before.day) / daysPerYear;
  return {
    errorDistance,
    ...differenceUncertainty(left, found),
    years,
    perYear: years > 0 ? errorDistance / years : null,
  };
}
