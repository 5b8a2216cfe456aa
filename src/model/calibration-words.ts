export const adjustments = ["none", "re-teach", "re-scale", "repair", "replace"] as const;

export const phases = ["as_found", "as_left"] as const;

/** A phase in words, inside a sentence. */
export const phaseInWords = Object.freeze({ as_found: "as found", as_left: "as left" } as const);
export const directions = ["rising", "falling"] as const;
export const tripDirections = ["approach", "recede"] as const;

export type Phase = (typeof phases)[number];
export type Direction = (typeof directions)[number];
export type TripDirection = (typeof tripDirections)[number];
