import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import { spanOf } from "../../model/range.ts";
import { gapShare, placesOf, testPointsOf } from "../../model/test-points.ts";
import { isInside } from "../../units/is-inside.ts";

/** Why a phase is no whole proof: what it is about, and a sentence for whoever asks. */
export type Missing = { about: MissingSubject; says: string };
export type MissingSubject =
  | "points"
  | "ends"
  | "stage"
  | "as-found points"
  | "adjustment"
  | "copies"
  | "uncertainty"
  | "output"
  | "restored"
  | "loop check";

/** How much has to be read; both are common practice of the trade and columns of the table instruments. */
export const usualPointsNeeded = 5;
export const usualEndsWithin = 10;

/** A test point that was judged where the loop ends. */
export type ReadPoint = {
  point: number;
  errorDistance: number;
  expandedUncertainty: number;
  tolerance: ToleranceLimits;
};

/** A phase as far as its completeness rests on it; distances in one unit. */
export type PhaseToComplete = {
  /** Test points that were judged at the end of the loop, by rising distance. */
  points: readonly ReadPoint[];
  /** Reference distances at which they were read, whatever their names. */
  read: readonly number[];
  /** Nominal positions of all test points that were tried, those of a fault signal too. */
  tried: readonly number[];
  /** Those of them at which the signal stood at its own end, at or beyond: reached, and no error measured. */
  railed: readonly number[];
  /** Nominal positions inside the range at which every reading was rejected. */
  rejected?: readonly number[];
  /** How far into the loop was read: 0 for its first stage. */
  depth: number;
  /** What was read there, after "of": "what the controller showed". */
  endName: string;
};

export type Asked = { rangeLower: number; rangeUpper: number; unit: string; pointsNeeded: number; endsWithin: number };

/**
 * What the test points of one phase lack to stand for the whole range.
 *
 * @param phase its judged points and what was tried
 * @param asked range, points that are needed, how near the ends they have to come in percent of span
 * @param write a distance in words
 * @returns reasons; empty where enough was read
 * Source: common practice of the trade: five points over the range (0, 25, 50, 75, 100 % or 10, 25, 50, 75, 90 %).
 * @example missingPoints({ points: [], read: [], tried: [], railed: [], depth: 0, endName: "" }, { rangeLower: 0, rangeUpper: 100, unit: "mm",
 *   pointsNeeded: 5, endsWithin: 10 }, String)[0].about // "points"
 */
export function missingPoints(
  phase: PhaseToComplete,
  asked: Asked,
  write: (distance: number) => string,
): readonly Missing[] {
  return [...missingPlaces(phase, asked), ...missingEnds(phase, asked, write), ...rejectedPoints(phase, asked, write)];
}

/**
 * Whatever the reason was, what such a point would have shown is not known. Readings that name no point have their own
 * distances: what lies together is one.
 */
function rejectedPoints(
  { points, rejected = [] }: PhaseToComplete,
  asked: Asked,
  write: (distance: number) => string,
): readonly Missing[] {
  const slack = gapShare * spanOf(asked);
  const apart = rejected.filter((at) => points.every(({ point }) => Math.abs(point - at) > slack));
  if (apart.length === 0) return [];
  const open = testPointsOf(
    apart.map((reference) => ({ reference })),
    spanOf(asked),
  ).map(({ nominal }) => nominal);
  const [where, were] = open.length === 1 ? ["test point", "it was"] : ["test points", "they were"];
  const says = `every reading at the ${where} ${open.map(write).join(", ")} was rejected, and ${were} not read again`;
  return [{ about: "points", says }];
}

function missingPlaces({ points, read: references, endName }: PhaseToComplete, asked: Asked): readonly Missing[] {
  const { pointsNeeded } = asked;
  const named = points.map(({ point }) => point);
  const places = placesOf(named, references, spanOf(asked));
  if (places >= pointsNeeded) return [];
  const read = points.length === 1 ? "1 test point was read" : `${points.length} test points were read`;
  const of = endName === "" ? "" : ` of ${endName}`;
  const near = `, at ${places === 1 ? "1 place" : `${places} places`} more than ${100 * gapShare} % of span apart`;
  return [
    {
      about: "points",
      says: `${read}${of}${places < points.length ? near : ""}, ${pointsNeeded} are asked for`,
    },
  ];
}

function missingEnds(
  { points, railed }: PhaseToComplete,
  asked: Asked,
  write: (distance: number) => string,
): readonly Missing[] {
  const { endsWithin, rangeLower, rangeUpper } = asked;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const ends = [
    { end: "lower", at: first.point, gapOf: (at: number) => (100 * (at - rangeLower)) / spanOf(asked) },
    { end: "upper", at: last.point, gapOf: (at: number) => (100 * (rangeUpper - at)) / spanOf(asked) },
  ];
  return ends.flatMap(({ end, at, gapOf }): readonly Missing[] => {
    const isNear = (one: number) => isInside(gapOf(one), { low: null, high: endsWithin });
    if (isNear(at)) return [];
    const reached = railed.find(isNear);
    const nearest = `the test point nearest the ${end} end of the range, ${write(at)}, is ${Math.round(gapOf(at))} % of span from it; at most ${endsWithin} % is asked for`;
    const says =
      reached === undefined
        ? nearest
        : `the ${end} end of the range was reached, at ${write(reached)}, and the signal stood at its own end there, at or beyond: no error was measured`;
    return [{ about: "ends", says }];
  });
}

/**
 * What an as-left phase lacks beside the as-found one: test points, a later stage of the loop, the name of what was
 * adjusted.
 *
 * @param left as-left phase
 * @param found as-found phase
 * @param context range, whether an adjustment is named, a distance in words
 * @returns reasons; empty where as left proves as much as as found
 * Source: own choice; ISO/IEC 17025:2017, 7.8.4.1 d, asks for results before and after an adjustment.
 * @example missingBeside({ points: [], read: [], tried: [], railed: [], depth: 0, endName: "" }, { points: [], read: [], tried: [50], railed: [], depth: 0, endName:
 *   "" }, { asked: { rangeLower: 0, rangeUpper: 100, unit: "mm", pointsNeeded: 5, endsWithin: 10 }, isAdjustmentNamed:
 *   true, write: String }).map(({ about }) => about) // ["as-found points"]
 */
export function missingBeside(
  left: PhaseToComplete,
  found: PhaseToComplete,
  context: { asked: Asked; isAdjustmentNamed: boolean; write: (distance: number) => string },
): readonly Missing[] {
  const { asked, isAdjustmentNamed, write } = context;
  const missing: Missing[] = [];
  if (left.depth < found.depth) {
    missing.push({ about: "stage", says: `${found.endName} was read as found and not as left` });
  }
  const slack = gapShare * spanOf(asked);
  const near = (at: number) => (other: number) => Math.abs(other - at) <= slack;
  const lost = found.tried.filter((at) => !left.points.map(({ point }) => point).some(near(at)));
  if (lost.length > 0) {
    const [points, were] = lost.length === 1 ? ["test point", "was"] : ["test points", "were"];
    missing.push({
      about: "as-found points",
      says: `${lost.length} ${points} that ${were} read as found ${were} not read as left: ${lost.map(write).join(", ")}`,
    });
  }
  const changed = isAdjustmentNamed ? undefined : greatestChange(left, found, near);
  if (changed !== undefined) {
    const says = `as left differs from as found by ${write(changed.by)} at ${write(changed.at)}, more than the uncertainty, and no adjustment is named`;
    missing.push({ about: "adjustment", says });
  }
  return missing;
}

/** The greatest change of a test point's mean error, where it is beyond what both uncertainties explain. */
function greatestChange(
  left: PhaseToComplete,
  found: PhaseToComplete,
  near: (at: number) => (other: number) => boolean,
): { at: number; by: number } | undefined {
  let greatest: { at: number; by: number } | undefined;
  if (left.depth !== found.depth) return undefined;
  for (const after of left.points) {
    const before = found.points.find(({ point }) => near(after.point)(point));
    if (before === undefined) continue;
    const by = Math.abs(after.errorDistance - before.errorDistance);
    const explained = Math.hypot(after.expandedUncertainty, before.expandedUncertainty);
    if (by > explained && by > (greatest?.by ?? 0)) greatest = { at: after.point, by };
  }
  return greatest;
}
