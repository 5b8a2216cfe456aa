import { isInside } from "../../../units/is-inside.ts";
import type { CauseEvidence } from "./cause-evidence.ts";

/**
 * Whether the row of an instrument says that its card loads a voltage output more than it can bear.
 *
 * @param instrument its row
 * @returns false where one of the two is not stated, and for a current
 * Source: the instrument's row: `load_min`, `card_resistance`.
 * @example isOverloadStated({ signalUnit: "V", loadMin: 2000, cardResistance: 500 }) // true
 */
export function isOverloadStated({
  signalUnit,
  loadMin,
  cardResistance,
}: Pick<CauseEvidence["instrument"], "signalUnit" | "loadMin" | "cardResistance">): boolean {
  if (signalUnit !== "V" || loadMin === undefined || cardResistance === undefined) return false;
  return !isInside(cardResistance, { low: loadMin, high: null });
}
