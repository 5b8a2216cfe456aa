import { gaussPanels, type WeightedPlace } from "../../numeric/gauss-panels.ts";

/** Shares of all loops that come to be judged: passed though out of tolerance, failed though in tolerance. */
export type GlobalRisk = { falseAccept: number; falseReject: number };

/** How loops of a true error are judged; errors as parts of the tolerance, 1 on its limit, the middle at 0. */
export type JudgedLoops = {
  /** Chance that a loop of this true error, or of the same one on the other side, does not pass. */
  rejectedAt: (trueError: number) => number;
  /** Standard deviation of what the measurement adds, the least and the greatest of the results. */
  noise: { least: number; greatest: number };
  /** The least acceptance limit, >= 0. */
  acceptance: number;
};

/** The same at places that integrals over true errors take. */
export type TabulatedLoops = readonly (WeightedPlace & { rejected: number })[];

/** Standard deviations of the measurement beyond which a loop is passed or rejected but for 1e-10. */
export const reach = 6.5;
/** Width of a panel where the answer changes, standard deviations of the measurement; growth of panels where it does not. */
const [widthOfPanel, growth] = [1.5, 3];
/** A spread under this part of the tolerance counts as none; places begin to be dense there. */
export const leastSpread = 1e-3;

/**
 * How loops are judged, at the places of true errors from 0 up that an integral over them takes.
 *
 * @param loops how they are judged
 * @returns places dense where the answer changes, and for narrow spreads near 0; one of the panels ends at 1
 * Source: own choice of panels; Gauss-Legendre rule.
 * @example tabulated({ rejectedAt: () => 0.5, noise: { least: 1, greatest: 1 }, acceptance: 1 })[0].rejected // 0.5
 */
export function tabulated({ rejectedAt, noise, acceptance }: JudgedLoops): TabulatedLoops {
  const zone = [acceptance - reach * noise.greatest, acceptance + reach * noise.greatest] as const;
  const next = (from: number) => {
    const narrow = widthOfPanel * noise.least;
    const width = from < zone[0] ? Math.max(narrow, zone[0] - from) : narrow;
    return from + Math.min(Math.max(growth * from, leastSpread), from > zone[1] ? Number.POSITIVE_INFINITY : width);
  };
  const bounds = [...panelsTo(1, 0, next), ...panelsTo(Math.max(1, zone[1]), 1, next).slice(1)];
  return gaussPanels(bounds).map((one) => ({ ...one, rejected: rejectedAt(one.place) }));
}

function panelsTo(end: number, start: number, next: (from: number) => number): readonly number[] {
  const bounds = [start];
  for (let at = start; at < end; bounds.push(at)) at = Math.min(end, next(at));
  return bounds;
}

/**
 * Gives the shares of false passes and false fails over all loops, before any of them is measured.
 *
 * True errors are normal about the middle of the tolerance. With T = 1: false accept = 2 ∫ φ(x) · P(passed | x) dx over
 * x > 1; false reject = 2 ∫ φ(x) · P(not passed | x) dx over 0 <= x <= 1.
 *
 * @param loops of `tabulated`, by the rule as it is applied
 * @param spread standard deviation of the true errors, part of the tolerance; under 0.001 all of them are 0
 * @returns two probabilities of the whole, not of the passed or failed ones; about 9 decimals
 * Faults: `RangeError` for a spread that is negative or not finite.
 * Source: JCGM 106:2012, 9.5.2 (global consumer's and producer's risk).
 * @example globalFalseAccept(tabulated({ rejectedAt: () => 0.5, noise: { least: 1, greatest: 1 }, acceptance: 1 }), 1)
 *   // { falseAccept: 0.1587, falseReject: 0.3413 }: half of 31.7 % outside, half of 68.3 % inside
 */
export function globalFalseAccept(loops: TabulatedLoops, spread: number): GlobalRisk {
  if (!(spread >= 0 && Number.isFinite(spread))) throw new RangeError(`a spread of ${spread} is not a number >= 0`);
  if (spread < leastSpread) return { falseAccept: 0, falseReject: loops[0]?.rejected ?? 0 };
  return {
    falseAccept: overTrueErrors(loops, spread, ({ place, rejected }) => (place > 1 ? 1 - rejected : 0)),
    falseReject: overTrueErrors(loops, spread, ({ place, rejected }) => (place < 1 ? rejected : 0)),
  };
}

/**
 * The spread of true errors that makes a share of the loops be found in tolerance: what the measurement adds to the
 * errors that are found is thereby taken out.
 *
 * For one result judged by the tolerance itself it is σ² = σ(found)² − u².
 *
 * @param loops of `tabulated`, rejected: not found in tolerance
 * @param foundRate part of the loops that is found in tolerance, 0 to 1, both excluded
 * @returns standard deviation, part of the tolerance; 0 where the measurement alone makes no more be found in tolerance
 * Faults: `RangeError` for a rate that is not between 0 and 1.
 * Source: JCGM 106:2012, 6.3 and 9.5 (prior of the item, its spread from what was found less what measuring adds).
 * @example spreadOf(tabulated({ rejectedAt: (x) => (x > 1 ? 1 : 0), noise: { least: 1, greatest: 1 }, acceptance: 1 }),
 *   0.95) // 0.5102 = 1/1.96: nothing is added
 */
export function spreadOf(loops: TabulatedLoops, foundRate: number): number {
  if (!(foundRate > 0 && foundRate < 1)) throw new RangeError(`a rate of ${foundRate} is not between 0 and 1`);
  const found = (spread: number) => overTrueErrors(loops, spread, ({ rejected }) => 1 - rejected);
  let [narrow, wide] = [leastSpread, 1];
  if (found(narrow) <= foundRate) return 0;
  while (found(wide) > foundRate) wide *= 2;
  while (wide / narrow - 1 > 1e-13) {
    const middle = Math.sqrt(narrow * wide);
    if (middle <= narrow || middle >= wide) break;
    if (found(middle) > foundRate) narrow = middle;
    else wide = middle;
  }
  return wide;
}

/** Both sides; nothing passes beyond the last place. */
function overTrueErrors(
  loops: TabulatedLoops,
  spread: number,
  heightOf: (loop: TabulatedLoops[number]) => number,
): number {
  const scale = 2 / (spread * Math.sqrt(2 * Math.PI));
  return loops.reduce(
    (sum, loop) => sum + loop.weight * scale * Math.exp(-0.5 * (loop.place / spread) ** 2) * heightOf(loop),
    0,
  );
}
