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
 * What the record calls each kind of fault: ids of its causes, and the titles that they had before there were ids; a
 * word that has to be in either where the record has no such cause yet. The one place that knows both languages; a
 * cause of the record that no kind bears out is nowhere here.
 */
const namesByKind: Readonly<Record<string, readonly (string | RegExp)[]>> = {
  "zero shift": ["datum-shifted", "datum, mount or zero shifted"],
  "upper end taught wrong": [
    "ends-taught-wrong",
    "ends of the range taught wrong",
    "both-ends-taught-wrong",
    "both ends of the range taught wrong",
  ],
  "lower end taught wrong": [
    "ends-taught-wrong",
    "ends of the range taught wrong",
    "both-ends-taught-wrong",
    "both ends of the range taught wrong",
  ],
  "both ends taught wrong": [
    "both-ends-taught-wrong",
    "both ends of the range taught wrong",
    "ends-taught-wrong",
    "ends of the range taught wrong",
  ],
  "taught for another range": ["target-beyond-range", "target beyond the range of the sensor"],
  "slope taught inverted": ["slope-turned-round", "slope of the sensor taught the other way round"],
  "air temperature": ["air-temperature", "speed of sound: the air is not as warm as the sensor takes it to be"],
  "tilted axis": ["axis-tilted", "axis of the sensor tilted against the references"],
  curvature: ["curved-characteristic", "curved characteristic"],
  "hysteresis of the sensor": [
    "hysteresis, or an output not settled when it was read",
    "hysteresis-of-sensor",
    "hysteresis of the sensor or of what guides the target",
  ],
  "play of the rig": ["play-in-rig", "play in the rig that moves the target"],
  "settling lag": [
    "output-not-settled",
    "output not settled when it was read",
    "hysteresis, or an output not settled when it was read",
  ],
  "blind zone": ["blind-zone", "blind zone, or an echo counted twice"],
  "fixed obstruction": ["obstruction-in-beam", "fixed obstruction in the beam"],
  "signal that stands still": [
    /stands.still/u,
    "obstruction-in-beam",
    "fixed obstruction in the beam",
    "open-wire",
    "open wire or no supply",
  ],
  "missed echo, fault signal": ["target-lost-fault", "target lost, fault signal given"],
  "missed echo, held": ["target-lost-held", "target lost, last value held"],
  "scatter grows with distance": ["weak-target", "target too soft, too small or tilted for the far part of the range"],
  "scatter everywhere": [/scatter/u],
  "warm-up": ["warm-up-or-drift", "warm-up or drift while the readings were taken"],
  leakage: [/leak/u],
  "shunted signal": ["shunt-or-gain-off", "shunt resistor or gain about the true zero of the signal"],
  "burden-limited top": ["current-limited", "signal limited by supply and burden"],
  "voltage output overloaded": ["voltage-output-overloaded", "voltage output overloaded"],
  "shared 0 V": ["offset-of-card", "offset of the input card, or of a 0 V shared with the supply"],
  "open wire": ["open-wire", "open wire or no supply"],
  "current on a voltage input": [
    "current-and-voltage-mixed-up",
    "current and voltage mixed up between sensor and input",
  ],
  "crossed channel": ["other-channel", "controller reads another channel"],
  "live zero read as dead zero": [
    "live-zero-scaled-from-zero",
    "live-zero signal (4–20 mA, 1–5 V) scaled as one from zero",
  ],
  "dead zero read as live zero": [
    "from-zero-scaled-as-live-zero",
    "signal from zero (0–20 mA, 0–5 V) scaled as a live-zero one",
  ],
  "offset of card or common": ["offset-of-card", "offset of the input card, or of a 0 V shared with the supply"],
  "shunt or card gain": [
    "shunt-or-gain-off",
    "shunt resistor or gain about the true zero of the signal",
    "range-of-card-wrong",
    "voltage-divided",
  ],
  "low constant wrong": ["low-constant-wrong", "scaling constant at the low end of the signal wrong"],
  "high constant wrong": ["high-constant-wrong", "scaling constant at the high end of the signal wrong"],
  "raw full scale wrong": ["full-scale-count-wrong", "raw full-scale count wrong"],
  "unit slip": ["units-mixed-up", "units mixed up in the scaling"],
  "constants exchanged": ["constants-exchanged", "scaling constants exchanged"],
  "clamp in the controller": ["value-clamped-or-cut", "controller value clamped or truncated"],
  "value that stands still": ["value-clamped-or-cut", "controller value clamped or truncated"],
  "fraction cut off": ["value-clamped-or-cut", "controller value clamped or truncated"],
  "set point taught wrong": ["switch-point-off", "switch point off"],
  "differential too wide": [/differential/u],
  chatter: [/chatter/u],
  "PNP on a sourcing input": [
    "output-and-input-unfit",
    "output and input do not fit (PNP, NPN), or the bit is inverted",
  ],
  "wild reading": [/wild/u, "typing-error", "typing error"],
  "digits exchanged": ["typing-error", "typing error"],
  "decimal mark moved": ["typing-error", "typing error"],
  "two rows exchanged": [/rows.exchanged/u, "typing-error", "typing error"],
  "references in another unit": [/reference.*unit/u],
};

const sameAs: Readonly<Record<string, string>> = {
  "air temperature, not stated": "air temperature",
  "leakage, one meter": "leakage",
  "both ends taught wrong, value alone": "both ends taught wrong",
  "high constant wrong, value alone": "high constant wrong",
};

export const namesOf = (kind: string): readonly (string | RegExp)[] => namesByKind[sameAs[kind] ?? kind] ?? [];

/** Whether a finding is what a kind of fault is called. */
export function isNamed(kind: string, { id, title }: Finding): boolean {
  return [id, title].some((word) => isNameOf(kind, word));
}

/** Whether a finding leaves a kind of fault open. A rival may be a title with a number in brackets behind it. */
export function isLeftOpen(kind: string, { rivals }: Finding): boolean {
  const words = rivals.flatMap((rival) => (typeof rival === "string" ? [rival] : [rival.id, rival.title]));
  return words.some((word) => isNameOf(kind, word?.replace(/ \(\d+\)$/u, "")));
}

function isNameOf(kind: string, word: string | undefined): boolean {
  if (word === undefined) return false;
  return namesOf(kind).some((name) => (typeof name === "string" ? name === word : name.test(word)));
}
