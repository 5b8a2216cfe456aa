import type { CalibrationRecord } from "../../../src/record/record-schema.ts";

/** A cause of the record as far as it is judged: it is called by an id, a title or both, and so are its rivals. */
export type Finding = {
  id?: string;
  title?: string;
  rivals: readonly (string | { id?: string; title?: string })[];
};

/** The causes that a record names for one phase. */
export function findingsIn(record: CalibrationRecord | null, phase: "asFound" | "asLeft"): readonly Finding[] {
  return record?.causes?.[phase]?.findings ?? [];
}

export const calledOf = ({ title, id }: Finding): string => title ?? id ?? "?";

/**
 * What the record calls each kind of fault: ids and titles of its causes. The one place that knows both languages;
 * a cause of the record that no kind bears out is nowhere here.
 */
const namesByKind: Readonly<Record<string, readonly string[]>> = {
  "zero shift": ["datum, mount or zero shifted"],
  "upper end taught wrong": ["ends of the range taught wrong", "both ends of the range taught wrong"],
  "lower end taught wrong": ["ends of the range taught wrong", "both ends of the range taught wrong"],
  "both ends taught wrong": ["both ends of the range taught wrong", "ends of the range taught wrong"],
  "taught for another range": ["target beyond the range of the sensor"],
  "slope taught inverted": ["slope of the sensor taught the other way round"],
  "air temperature": ["speed of sound: the air is not as warm as the sensor takes it to be"],
  "tilted axis": ["target or sensor tilted against the axis"],
  curvature: ["curved characteristic"],
  "hysteresis of the sensor": [
    "hysteresis, or an output not settled when it was read",
    "hysteresis of the sensor or of what guides the target",
  ],
  "play of the rig": ["play in the rig that moves the target"],
  "settling lag": ["output not settled when it was read", "hysteresis, or an output not settled when it was read"],
  "blind zone": ["blind zone, or an echo counted twice"],
  "fixed obstruction": ["fixed obstruction in the beam"],
  "signal that stands still": ["signal stands still", "fixed obstruction in the beam", "open wire or no supply"],
  "missed echo, fault signal": ["target lost, fault signal given"],
  "missed echo, held": ["target lost, last value held"],
  "scatter grows with distance": ["target too soft, too small or tilted for the far part of the range"],
  "scatter everywhere": ["scatter everywhere"],
  "warm-up": ["warm-up or drift while the readings were taken"],
  leakage: ["leakage across the loop"],
  "shunted signal": ["shunt resistor or gain about the true zero of the signal"],
  "burden-limited top": ["too much burden for the top of the signal"],
  "voltage output overloaded": ["voltage output overloaded"],
  "shared 0 V": ["offset of the input card, or of a 0 V shared with the supply"],
  "open wire": ["open wire or no supply"],
  "current on a voltage input": ["current output on a voltage input, or the reverse"],
  "crossed channel": ["controller reads another channel"],
  "live zero read as dead zero": ["live-zero signal (4–20 mA, 1–5 V) scaled as one from zero"],
  "dead zero read as live zero": ["signal from zero (0–20 mA, 0–5 V) scaled as a live-zero one"],
  "offset of card or common": ["offset of the input card, or of a 0 V shared with the supply"],
  "shunt or card gain": ["shunt resistor or gain about the true zero of the signal"],
  "low constant wrong": ["scaling constant at the low end of the signal wrong"],
  "high constant wrong": ["scaling constant at the high end of the signal wrong"],
  "raw full scale wrong": ["raw full-scale count wrong"],
  "unit slip": ["units mixed up in the scaling"],
  "constants exchanged": ["scaling constants exchanged"],
  "clamp in the controller": ["controller value clamped or truncated"],
  "value that stands still": ["controller value clamped or truncated"],
  "fraction cut off": ["controller value clamped or truncated"],
  "set point taught wrong": ["switch point off"],
  "differential too wide": ["differential too wide"],
  chatter: ["chatter"],
  "PNP on a sourcing input": ["output and input do not fit (PNP, NPN), or the bit is inverted"],
  "wild reading": ["wild reading", "typing error"],
  "digits exchanged": ["typing error"],
  "decimal mark moved": ["typing error"],
  "two rows exchanged": ["rows exchanged", "typing error"],
  "references in another unit": ["references in another unit"],
};

const sameAs: Readonly<Record<string, string>> = {
  "air temperature, not stated": "air temperature",
  "leakage, one meter": "leakage",
  "both ends taught wrong, value alone": "both ends taught wrong",
  "high constant wrong, value alone": "high constant wrong",
};

export const namesOf = (kind: string): readonly string[] => namesByKind[sameAs[kind] ?? kind] ?? [];

/** Whether a finding is what a kind of fault is called. */
export function isNamed(kind: string, { id = "", title = "" }: Finding): boolean {
  const names = namesOf(kind);
  return names.includes(title) || names.includes(id);
}

/** Whether a finding leaves a kind of fault open. A rival may be a title with a number in brackets behind it. */
export function isLeftOpen(kind: string, { rivals }: Finding): boolean {
  const names = namesOf(kind);
  const words = rivals.flatMap((rival) => (typeof rival === "string" ? [rival] : [rival.id ?? "", rival.title ?? ""]));
  return words.some((word) => names.includes(word.replace(/ \(\d+\)$/u, "")));
}
