import { type Figure, notDetermined } from "../../analysis/figures/figure.ts";
import type { Trip } from "../../model/calibration.ts";
import { functionAfterTrip } from "../../model/function-after-trip.ts";
import type { Output } from "../../model/instrument.ts";

const contradiction = "the states after the trips contradict each other";

/** The function that the trips show, and whether it is the one that is stated. */
export type FunctionMatch = { seen: "NO" | "NC"; statement: "pass" | "fail" | null };

/**
 * Whether an output closes or opens when the target comes near, told by its trips: on after an approach, or off after a
 * recede, is normally open.
 *
 * @param output its function as stated
 * @param trips of the output, those with a state after the change
 * @returns what they show; no statement where none is stated; or why they show nothing
 * Source: common practice of proximity switches: normally open is off without a target.
 * @example switchingFunction({ function: "NO" }, [{ direction: "approach", state: "off" }]) // { seen: "NC", statement:
 *   "fail" }
 */
export function switchingFunction(
  output: Pick<Output, "function">,
  trips: readonly Pick<Trip, "direction" | "state">[],
): Figure<FunctionMatch> {
  const [one, other] = functionsSeen(trips);
  if (one === undefined) return notDetermined("no state after a trip is stated");
  if (other !== undefined) return notDetermined(contradiction);
  const statement = output.function === undefined ? null : output.function === one ? "pass" : "fail";
  return { seen: one, statement };
}

/**
 * Whether the states after the trips contradict each other: after the same movement on in one cycle, and off in another.
 *
 * @param trips of one output and phase that count, those with a state after the change
 * @returns the contradiction in words; undefined where there is none
 * Source: `switchingFunction`.
 * @example statesContradiction([{ direction: "approach", state: "on" }, { direction: "recede", state: "off" }]) // undefined
 */
export function statesContradiction(trips: readonly Pick<Trip, "direction" | "state">[]): string | undefined {
  return functionsSeen(trips).size > 1 ? contradiction : undefined;
}

function functionsSeen(trips: readonly Pick<Trip, "direction" | "state">[]): ReadonlySet<"NO" | "NC"> {
  return new Set(trips.filter(({ state }) => state !== undefined).map(functionAfterTrip));
}
