/** What can be read along a loop, from the target to the controller; each step between two of them is a stage. */
export const axes = ["reference", "signal", "signalAtCard", "counts", "value"] as const;
export type Axis = (typeof axes)[number];

/** The parts of a loop of which something is said, in its order; each ends with a stage that was read. */
export const judgedParts = ["sensor", "wiring", "input card", "controller"] as const;

/** The stages of a loop, and neighbours that share a name where the quantity between them was not read; in words. */
export const stageWords = Object.freeze({
  sensor: "sensor",
  wiring: "wiring",
  inputCard: "input card",
  scaling: "scaling",
  sensorAndWiring: "sensor and wiring",
  sensorAndInputCard: "sensor and input card",
  inputCardAndScaling: "input card and scaling",
  sensorToController: "whole loop",
} as const);

/** A stage as its share of the error is named in data. */
export type ShareName = keyof typeof stageWords;
/** The same in words. */
export type StageName = (typeof stageWords)[ShareName];

const between: Readonly<Record<string, ShareName>> = Object.freeze({
  "reference signal": "sensor",
  "reference signalAtCard": "sensorAndWiring",
  "reference counts": "sensorAndInputCard",
  "reference value": "sensorToController",
  "signal signalAtCard": "wiring",
  "signal counts": "inputCard",
  "signalAtCard counts": "inputCard",
  "signal value": "inputCardAndScaling",
  "signalAtCard value": "inputCardAndScaling",
  "counts value": "scaling",
});

/**
 * The stage between two quantities of a loop that were read. The input card holds the wiring too, where the signal was
 * not read at the card.
 *
 * @param from the earlier quantity
 * @param to the later one, in the order of `axes`
 * @returns its name
 * @throws RangeError where the second does not come after the first
 * Source: the usual parts of a loop; own choice of names.
 * @example stageBetween("signal", "value") // "inputCardAndScaling"
 */
export function stageBetween(from: Axis, to: Axis): ShareName {
  const name = between[`${from} ${to}`];
  if (name === undefined) throw new RangeError(`stageBetween: ${to} does not come after ${from}`);
  return name;
}
