import { type Axis, axes, type ShareName, stageBetween } from "../../model/loop-stages.ts";
/** Distance that each quantity of a loop stands for at one reading; one that was not read is absent. */
export type IndicatedByStage = {
  signal?: number | undefined;
  signalAtCard?: number | undefined;
  counts?: number | undefined;
  value?: number | undefined;
};

/**
 * The part of the loop error that arises in each stage, in distance. A stage whose neighbour was not read shares a name
 * with it, so that what exists always adds up to the error of the last quantity that was read. The input card's share
 * holds the wiring too, where the signal was not read at the card.
 */
export type StageShares = Partial<Record<ShareName, number>>;

/**
 * Splits the error of a loop into the parts that its stages add.
 *
 * Each share is the distance from a quantity minus that from the quantity before it: sensor d(s) − x, wiring d(signal at
 * the card) − d(s), input card d(n) − d(signal at the card), scaling d(p) − d(n). Loop error = their sum.
 *
 * @param reference x, distance
 * @param indicated distance by quantity, in the same unit
 * @returns the shares that the readings allow, in distance; empty where nothing was read
 * Source: identity, a sum that telescopes.
 * @example stageShares(100, { signal: 101, signalAtCard: 100.75, counts: 101.5, value: 99.5 })
 *   // { sensor: 1, wiring: -0.25, inputCard: 0.75, scaling: -2 }
 */
export function stageShares(reference: number, indicated: IndicatedByStage): StageShares {
  const distances = { reference, ...indicated };
  const read = axes.filter((axis) => distances[axis] !== undefined);
  const shares: StageShares = {};
  for (const [place, later] of read.slice(1).entries()) {
    const earlier = read[place] as Axis;
    shares[stageBetween(earlier, later)] = (distances[later] as number) - (distances[earlier] as number);
  }
  return shares;
}
