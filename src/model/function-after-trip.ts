import type { Trip } from "./calibration.ts";

/**
 * What a trip shows of an output: on after an approach, or off after a recede, is normally open.
 *
 * @param trip its direction, and the state after it, which has to be noted
 * @returns the function
 * Source: common practice of proximity switches: normally open is off without a target.
 * @example functionAfterTrip({ direction: "approach", state: "off" }) // "NC"
 */
export function functionAfterTrip({ direction, state }: Partial<Pick<Trip, "direction" | "state">>): "NO" | "NC" {
  return (direction === "approach") === (state === "on") ? "NO" : "NC";
}
