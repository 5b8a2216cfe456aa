import { numberWords } from "../loop-check/limit-words.ts";
import { exceeds } from "./beside-threshold.ts";
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

/**
 * The worst reading of a loop that passes, for a sentence: a rule that judges means may pass one with readings outside.
 *
 * @param worst error of a single reading over its tolerance
 * @param passes what is said of it where no reading lies outside
 * @returns a sentence without its full stop
 * Source: own choice; ILAC-G8:09/2019 judges a measurement result, which here is a mean.
 * @example passingWords(2, "It passes") // "By the rule the mean errors pass, and single readings lie outside: the worst is 2 times the tolerance"
 */
export function passingWords(worst: number, passes: string): string {
  return exceeds(worst, 100)
    ? `By the rule the mean errors pass, and single readings lie outside: the worst is ${partWords(worst)}`
    : `${passes}: the worst reading is ${partWords(worst)}`;
}

/**
 * The greatest error of a single reading at the end of the loop.
 *
 * @param state of the phase
 * @returns part of the tolerance, 0 where nothing was judged
 * Source: own choice: the loop is judged where it ends.
 * @example worstOf({ sensor: { statement: "pass", worst: 0.3, forecast: null }, controller: null }) // 0.3
 */
export function worstOf({ sensor, controller }: Pick<PhaseState, "sensor" | "controller">): number {
  return (controller ?? sensor)?.worst ?? 0;
}
