import { type Figure, notDetermined } from "../../analysis/figures/figure.ts";
import type { Trip } from "../../model/calibration.ts";
import type { Output } from "../../model/instrument.ts";

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
  const seen = new Set(
    trips.flatMap(({ direction, state }) =>
      state === undefined ? [] : [(direction === "approach") === (state === "on") ? ("NO" as const) : ("NC" as const)],
    ),
  );
  const [one, other] = seen;
  if (one === undefined) return notDetermined("no state after a trip is stated");
  if (other !== undefined) return notDetermined("the states after the trips contradict each other");
  const statement = output.function === undefined ? null : output.function === one ? "pass" : "fail";
  return { seen: one, statement };
}
