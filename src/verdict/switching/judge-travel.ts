import { simpleAcceptance } from "../decision/simple-acceptance.ts";

/** Greatest differential travel and repeat accuracy of a switch, percent of the operating distance. */
export const usualTravelLimits = Object.freeze({
  /** IEC 60947-5-2, quoted from memory. */
  differential: 20,
  /** IEC 60947-5-2, quoted from memory; there over eight hours at a steady temperature. */
  repeat: 10,
});

/** A limit in percent of the operating distance, where it comes from, and what is said. */
export type JudgedTravel = {
  limitPercent: number;
  limitFrom: "outputs table" | "IEC 60947-5-2, from memory";
  statement: "pass" | "fail";
};

/**
 * Judges differential travel or repeat accuracy: on the limit is a pass, and no uncertainty is counted.
 *
 * The limit is that of the outputs table or of IEC 60947-5-2, whichever is the tighter.
 *
 * @param figure which of the two it is
 * @param percent of the operating distance, >= 0
 * @param ownLimit of the outputs table, percent, above zero; undefined where the cell is empty
 * @returns limit, its origin, statement
 * Source: IEC 60947-5-2, 20 % and 10 %, both from memory; the tighter limit wins (own choice: a loop may ask for more
 * than the standard does).
 * @example judgeTravel("repeat", 1.2, 1) // { limitPercent: 1, limitFrom: "outputs table", statement: "fail" }
 */
export function judgeTravel(
  figure: keyof typeof usualTravelLimits,
  percent: number,
  ownLimit: number | undefined,
): JudgedTravel {
  const usual = usualTravelLimits[figure];
  const isOwn = ownLimit !== undefined && ownLimit <= usual;
  const limitPercent = isOwn ? ownLimit : usual;
  return {
    limitPercent,
    limitFrom: isOwn ? "outputs table" : "IEC 60947-5-2, from memory",
    statement: simpleAcceptance(percent, { low: 0, high: limitPercent }, 100),
  };
}
