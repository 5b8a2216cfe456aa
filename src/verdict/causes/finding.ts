/** Where in the loop a cause sits; "readings" is the sheet itself. */
export const causePlaces = ["sensor", "wiring", "input card", "scaling", "switched output", "rig", "readings"] as const;
export type CausePlace = (typeof causePlaces)[number];

/** A number that a finding rests on. */
export type Evidence = { name: string; value: number; unit: string; standardUncertainty?: number };

/** One thing that the numbers are consistent with: an opinion, with what it rests on and what would overturn it. */
export type Finding = {
  /** Row of `causeTitles`, 1 to 34. */
  row: number;
  title: string;
  stage: CausePlace;
  says: string;
  evidence: Evidence[];
  /** What the numbers do not exclude yet. */
  rivals: string[];
  /** The one measurement that would tell them apart. */
  separatedBy: string;
};

/** What the readings cannot tell, and what would. */
export type CauseNote = {
  title: string;
  says: string;
  evidence: Evidence[];
  candidates: string[];
  separatedBy: string;
};

/** The causes that are looked for, by row. Own choice of words for what the trade knows. */
export const causeTitles: Readonly<Record<number, string>> = Object.freeze({
  1: "live-zero signal (4–20 mA, 1–5 V) scaled as one from zero",
  2: "signal from zero (0–20 mA, 0–5 V) scaled as a live-zero one",
  3: "scaling constant at the low end of the signal wrong",
  4: "scaling constant at the high end of the signal wrong",
  5: "raw full-scale count wrong",
  6: "units mixed up in the scaling",
  7: "scaling constants exchanged",
  8: "slope of the sensor taught the other way round",
  9: "offset of the input card, or of a 0 V shared with the supply",
  10: "datum, mount or zero shifted",
  11: "shunt resistor or gain about the true zero of the signal",
  12: "leakage across the two-wire loop",
  13: "signal limited by supply and burden",
  14: "voltage output overloaded",
  15: "blind zone, or an echo counted twice",
  16: "fixed obstruction in the beam",
  17: "target beyond the range of the sensor",
  18: "target lost, fault signal given",
  19: "target lost, last value held",
  20: "speed of sound: the air is not as warm as the sensor takes it to be",
  21: "ends of the range taught wrong",
  22: "output not settled when it was read",
  23: "play in the rig that moves the target",
  24: "target or sensor tilted against the axis",
  25: "target too soft, too small or tilted for the far part of the range",
  26: "curved characteristic",
  27: "switch point off",
  28: "controller value clamped or truncated",
  29: "open wire or no supply",
  30: "current and voltage mixed up between sensor and input",
  31: "controller reads another channel",
  32: "output and input do not fit (PNP, NPN), or the bit is inverted",
  33: "typing error",
  34: "warm-up or drift while the readings were taken",
});

/**
 * The title of a row as another finding names it among its rivals.
 *
 * @param row 1 to 34
 * @returns title and row
 * @throws RangeError for a row that does not exist
 * Source: own choice.
 * @example rivalName(26) // "curved characteristic (26)"
 */
export function rivalName(row: number): string {
  const title = causeTitles[row];
  if (title === undefined) throw new RangeError(`rivalName: there is no row ${row}`);
  return `${title} (${row})`;
}
