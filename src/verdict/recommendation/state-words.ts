import { numberWords } from "../loop-check/limit-words.ts";
import type { ForecastLeft, PhaseState } from "./phase-state.ts";

/** From here on a multiple reads better than a percentage. */
const multipleFrom = 2;

/**
 * A part of the tolerance, for a sentence.
 *
 * @param part 1 for the whole tolerance; its sign plays no part
 * @returns two digits: "32 % of the tolerance", "6.7 times the tolerance"
 * Source: own choice.
 * @example partWords(0.3237) // "32 % of the tolerance"
 */
export function partWords(part: number): string {
  const size = Math.abs(part);
  return size < multipleFrom
    ? `${numberWords(100 * size, "%", size < 1 ? 2 : 3)} of the tolerance`
    : `${numberWords(size, null, 2)} times the tolerance`;
}

/**
 * What a correction leaves, for a sentence.
 *
 * @param left worst error and its part of the tolerance
 * @param state of the phase, for its unit
 * @returns size without sign: "2.4 mm (18 % of the tolerance)"
 * Source: own choice.
 * @example leftWords({ statement: "pass", errorDistance: -2.41, part: 0.18 }, { unit: "mm" })
 *   // "2.41 mm (18 % of the tolerance)"
 */
export function leftWords({ errorDistance, part }: ForecastLeft, { unit }: Pick<PhaseState, "unit">): string {
  return `${numberWords(Math.abs(errorDistance), unit, 3)} (${partWords(part)})`;
}

/**
 * A clause as the beginning of a sentence, with its full stop.
 *
 * @param clause without full stop
 * @returns the same with a capital and a full stop
 * Source: own choice.
 * @example sentence("mend the mount") // "Mend the mount."
 */
export function sentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}

/**
 * What a teach that was just tried says: of a sensor that was off before it, and of one that was not.
 *
 * @param state of the phase
 * @param stillOff the sentence for a sensor that was off before
 * @returns one sentence; none where it was not just taught
 * Source: own choice.
 * @example justTaughtWords({ isJustTaught: true }, "It is off all the same.") // ["It is off all the same."]
 */
export function justTaughtWords(
  { isJustTaught, isPassingBefore = false }: Pick<PhaseState, "isJustTaught" | "isPassingBefore">,
  stillOff: string,
): readonly string[] {
  if (!isJustTaught) return [];
  return [isPassingBefore ? passedBefore : stillOff];
}

const passedBefore =
  "It passed before it was taught: the teach put it off, or the phases as found and as left are exchanged; look first which.";
