import type { Reading } from "../../model/calibration.ts";

/** A reading as far as it may be a copy of another. */
export type CopiedReading = Pick<
  Reading,
  "point" | "direction" | "cycle" | "reference" | "signal" | "signalAtCard" | "counts" | "value"
>;

/**
 * The numbers of a reading, as they are held against those of another: its reference and all outputs.
 *
 * @param reading of a phase
 * @returns a text that two readings share where they have every number in common
 * Source: own choice.
 * @example digitsOf({ reference: 50, signal: 12 }) // "50 12 undefined undefined undefined"
 */
export function digitsOf({ reference, signal, signalAtCard, counts, value }: DigitsRead): string {
  return `${reference} ${signal} ${signalAtCard} ${counts} ${value}`;
}

type DigitsRead = Omit<CopiedReading, "point" | "direction" | "cycle">;
