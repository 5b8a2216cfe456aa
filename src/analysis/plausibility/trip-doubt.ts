import type { TripDirection } from "../../model/calibration-words.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { type TripContext, tripsApart } from "./trips-apart.ts";

type Trip = { direction: TripDirection; reference: number; cycle?: number | undefined };

/** What makes the trips of an output doubtful as numbers: approach and recede noted for each other, or one far from its fellows. */
export type TripDoubt = "exchanged" | "apart";

/** A pair of a cycle is turned round by more than this many steps of what was typed. */
const beyondSteps = 3;

/**
 * Whether the trips of one output in one phase are in doubt as they are noted.
 *
 * Whatever delays an output makes it release farther away than it operates: where every cycle has it the other way round,
 * or the two trips of one such cycle lie far from their fellows, approach and recede are exchanged.
 *
 * @param trips of one output and phase that count, distances in one unit
 * @param context set point, span of the range and smallest step, in that unit
 * @returns the doubt; undefined where there is none
 * Source: `tripsApart`; own choice.
 * @example tripDoubt([{ direction: "approach", cycle: 1, reference: 91.2 }, { direction: "recede", cycle: 1,
 *   reference: 90.1 }], { setPoint: 90, span: 150, step: 0.01 }) // "exchanged"
 */
export function tripDoubt(trips: readonly Trip[], context: TripContext): TripDoubt | undefined {
  const apart = new Set(tripsApart(trips, context).map(({ index }) => trips[index]));
  const pairs = [...groupedBy(trips, ({ cycle }) => cycle).values()].flatMap(pairOf);
  const turned = pairs.filter(
    ({ approach, recede }) => approach.reference - recede.reference > beyondSteps * context.step,
  );
  const isAllTurned = turned.length > 0 && turned.length === pairs.length;
  if (isAllTurned || turned.some(({ approach, recede }) => apart.has(approach) && apart.has(recede))) {
    return "exchanged";
  }
  return apart.size > 0 ? "apart" : undefined;
}

function pairOf(trips: readonly Trip[]): { approach: Trip; recede: Trip }[] {
  const [approach, ...approaches] = trips.filter(({ direction }) => direction === "approach");
  const [recede, ...recedes] = trips.filter(({ direction }) => direction === "recede");
  const isPair = approach !== undefined && recede !== undefined && approaches.length + recedes.length === 0;
  return isPair ? [{ approach, recede }] : [];
}
