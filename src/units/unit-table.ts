/** What a unit measures; units of one kind convert into each other, units of two kinds never do. */
export type UnitKind =
  | "distance"
  | "area"
  | "current"
  | "voltage"
  | "temperature"
  | "pressure"
  | "resistance"
  | "angle"
  | "ratio"
  | "time"
  | "duration";

/** value in the kind's base unit = value · factor + offset */
export type Unit = { kind: UnitKind; factor: number; offset: number; spellings: readonly string[] };

const unit = (kind: UnitKind, factor: number, spellings: readonly string[], offset = 0): Unit =>
  Object.freeze({ kind, factor, offset, spellings });

/**
 * Every unit that a table may use, by the symbol that is printed.
 *
 * Base units: mm, mm², mA, V, °C, hPa, Ω, °, %, month, s.
 * Source: SI Brochure, 9th edition (2019); inch and foot: exactly 25.4 mm and 304.8 mm
 * (international yard and pound agreement, 1959). All factors are exact, but π/180 and 1/1.8.
 */
export const unitTable = Object.freeze({
  mm: unit("distance", 1, ["mm", "millimetre", "millimetres", "millimeter", "millimeters"]),
  cm: unit("distance", 10, ["cm", "centimetre", "centimetres", "centimeter", "centimeters"]),
  m: unit("distance", 1000, ["m", "metre", "metres", "meter", "meters"]),
  in: unit("distance", 25.4, ["in", "in.", "inch", "inches", '"', "″"]),
  ft: unit("distance", 304.8, ["ft", "foot", "feet", "'", "′"]),
  "mm²": unit("area", 1, ["mm²", "mm2"]),
  mA: unit("current", 1, [
    "mA",
    "ma",
    "mA DC",
    "mADC",
    "mA dc",
    "milliamp",
    "milliamps",
    "milliampere",
    "milliamperes",
  ]),
  A: unit("current", 1000, ["A"]),
  µA: unit("current", 1e-3, ["µA", "μA", "uA"]),
  V: unit("voltage", 1, ["V", "v", "V DC", "VDC", "Vdc", "V dc", "V d.c.", "volt", "volts"]),
  mV: unit("voltage", 1e-3, ["mV", "mv", "mV DC", "mVDC"]),
  "°C": unit("temperature", 1, ["°C", "ºC", "degC", "C"]),
  K: unit("temperature", 1, ["K"], -273.15),
  "°F": unit("temperature", 1 / 1.8, ["°F", "ºF", "degF", "F"], -32 / 1.8),
  hPa: unit("pressure", 1, ["hPa", "mbar"]),
  kPa: unit("pressure", 10, ["kPa"]),
  Pa: unit("pressure", 0.01, ["Pa"]),
  bar: unit("pressure", 1000, ["bar"]),
  Ω: unit("resistance", 1, ["Ω", "\u2126", "ohm", "ohms", "Ohm"]),
  kΩ: unit("resistance", 1000, ["kΩ", "k\u2126", "kohm"]),
  "°": unit("angle", 1, ["°", "º", "deg"]),
  rad: unit("angle", 180 / Math.PI, ["rad"]),
  "%": unit("ratio", 1, ["%", "percent", "%RH", "%rh", "% RH", "% rh"]),
  months: unit("time", 1, ["months", "month"]),
  years: unit("time", 12, ["years", "year"]),
  s: unit("duration", 1, ["s", "sec", "second", "seconds"]),
  ms: unit("duration", 1e-3, ["ms", "millisecond", "milliseconds"]),
  min: unit("duration", 60, ["min", "minute", "minutes"]),
  days: unit("duration", 86_400, ["days", "day"]),
});

export type UnitSymbol = keyof typeof unitTable;

const symbolBySpelling: ReadonlyMap<string, UnitSymbol> = new Map(
  (Object.keys(unitTable) as UnitSymbol[]).flatMap((symbol) =>
    unitTable[symbol].spellings.map((spelling) => [spelling, symbol] as const),
  ),
);

/**
 * The unit that a written word names, or nothing where the table does not know it.
 *
 * @param written as typed: "mm", "inches", "ohm"; upper and lower case differ (mm is not Mm, mA not MA)
 * @returns the symbol that the unit is printed with, or `undefined`
 * Source: own choice of spellings: symbols of the SI Brochure and the full English words.
 * @example unitOf("inches") // "in"
 */
export function unitOf(written: string): UnitSymbol | undefined {
  return symbolBySpelling.get(written);
}
