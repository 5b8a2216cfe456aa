import { hysteresisTitle } from "../causes/direction-causes.ts";
import type { CausePlace } from "../causes/finding.ts";

/** What cures a cause: at which place, and in words for whoever does it. */
export type Remedy =
  | { cures: "set-up" | "wiring" | "scaling" | "readings"; does: string }
  /** Whether a sensor is taught anew or replaced is for the forecast to say. */
  | { cures: "sensor"; does: null }
  /** A switched output is judged by itself. */
  | { cures: "switched output"; does: null };

const setUp = (does: string): Remedy => ({ cures: "set-up", does });
const wiring = (does: string): Remedy => ({ cures: "wiring", does });
const scaling = (does: string): Remedy => ({ cures: "scaling", does });
const readings = (does: string): Remedy => ({ cures: "readings", does });
const sensor: Remedy = { cures: "sensor", does: null };
const switched: Remedy = { cures: "switched output", does: null };

const constants = "put the scaling constants in the controller right";
const keepTarget =
  "see to it that the sensor does not lose its target: clean face, square mount, a target that returns enough";

const remedies: Readonly<Record<number, Remedy>> = Object.freeze({
  1: scaling("scale the signal in the controller for its live zero"),
  2: scaling("scale the signal in the controller from zero"),
  3: scaling(constants),
  4: scaling(constants),
  5: scaling("put the raw full-scale count in the controller right"),
  6: scaling("put the units in the scaling right"),
  7: scaling("exchange the two scaling constants in the controller"),
  8: sensor,
  9: wiring("find the offset of the input card, or of the 0 V that it shares with the supply, and remove it there"),
  10: sensor,
  11: wiring("measure the shunt resistor and whatever lies parallel to the input, and mend what is wrong"),
  12: wiring("dry and seal cable, glands and junction boxes, and measure the insulation"),
  13: wiring("give the loop more supply voltage or less burden"),
  14: wiring("give the voltage output a higher load resistance"),
  15: setUp("keep the target out of the blind zone: move the sensor back, or begin the range farther out"),
  16: setUp("take the obstruction out of the beam, or aim beside it"),
  17: setUp("keep the target inside the range of the sensor, or teach a range that fits"),
  18: setUp(keepTarget),
  19: setUp(keepTarget),
  20: setUp(
    "let the sensor correct for the air temperature, or use one that does; a re-teach would hold for the day's air only",
  ),
  21: sensor,
  22: readings("read again and wait longer at each point; if it must be as fast as this, shorten the filter"),
  23: readings("read again with the play of the rig taken up: come to each point from the same side"),
  24: setUp("set sensor and target square to each other"),
  25: setUp("use a larger, harder or better aligned target for the far part of the range"),
  26: sensor,
  27: switched,
  28: scaling("let the controller carry the value unclamped and in full: real numbers, not whole ones"),
  29: wiring("find the open wire or the missing supply"),
  30: wiring(
    "connect a current output to a current input, or a voltage output to a voltage input, the right way round",
  ),
  31: wiring("find the channel that the controller really reads, and put address or terminals right"),
  32: switched,
  33: readings("compare the number with the sheet and read that point again; correct nothing by guess"),
  34: readings("read again when the sensor has warmed up and the air is steady"),
});

/**
 * What cures a cause.
 *
 * @param finding row 1 to 34, its title, and where in the loop it was found
 * @returns place and words; for the rows that only new zero and span, or another sensor, can cure: "sensor"
 * @throws RangeError for a row that does not exist
 * Source: own choice; the trade's order: measure, mend what is around the sensor, teach, and replace last.
 * @example remedyOf({ row: 13, title: "signal limited by supply and burden", stage: "sensor" }).cures // "wiring"
 */
export function remedyOf({ row, title, stage }: { row: number; title: string; stage: CausePlace }): Remedy {
  const isAtSensor = stage === "sensor";
  if (isAtSensor && (row === 1 || row === 2)) {
    return setUp("set the sensor's output to the signal that the drawing asks for");
  }
  if (isAtSensor && title === hysteresisTitle) return sensor;
  const remedy = remedies[row];
  if (remedy === undefined) throw new RangeError(`remedyOf: there is no row ${row}`);
  return remedy;
}
