import { phaseTitles } from "../../record/phase-name.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import type { SoundRecord } from "../../record/sound-schema.ts";
import { writeFixed, writePlain, writeSigned } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";

/** The air of the day, the speed of sound in it, and the cross-check by the short form. */
export function airWords(air: NonNullable<SoundRecord["air"]>): string {
  const assumed = air.assumed.length === 0 ? "" : ` (${air.assumed.join(" and ")} not stated: assumed)`;
  const difference = writeSigned(100 * (air.speed / air.shortSpeed - 1), 2);
  const range = air.isInStatedRange ? "" : " This air lies outside the range that the long form is stated for.";
  const check = air.agrees
    ? `by ${difference} %, within the 1 % that humidity and pressure make`
    : `by ${difference} %, more than the 1 % that humidity and pressure make: the stated air is doubtful`;
  return (
    `In air of ${writePlain(air.temperature)} °C, ${writePlain(air.relativeHumidity)} % and ` +
    `${writePlain(air.pressure)} hPa${assumed} sound travels at ${writeFixed(air.speed, 2)} m/s. The short form of ISO ` +
    `9613-1, which knows the temperature alone, gives ${writeFixed(air.shortSpeed, 2)} m/s: they differ ${check}.${range}`
  );
}

/** Whether the sensor corrects for the air, and what the day's air would do if it did not. */
export function taughtWords({ instrument }: CalibrationRecord, sound: SoundRecord, style: NumberStyle): string {
  const { taught, isCompensated, errorAtUpperEnd } = sound;
  const at = `${writePlain(instrument.rangeUpper)} ${instrument.distanceUnit}`;
  const error =
    errorAtUpperEnd === null
      ? ""
      : `${writeSigned(errorAtUpperEnd, style.distance)} ${instrument.distanceUnit} at ${at}`;
  const teaching =
    taught === null
      ? ""
      : ` It was taught at ${writePlain(taught.temperature)} °C, where sound travels at ${writeFixed(taught.speed, 2)} m/s.`;
  if (isCompensated) {
    const otherwise = error === "" ? "" : ` If it did not, the air alone would make ${error}.`;
    return `The sensor corrects for the air temperature itself.${teaching}${otherwise}`;
  }
  const how =
    instrument.temperatureCompensated === undefined
      ? "Whether the sensor corrects for the air temperature is not stated; it is taken as not."
      : "The sensor does not correct for the air temperature.";
  return `${how}${teaching}${error === "" ? "" : ` So the day's air alone makes ${error}.`}`;
}

/** "As found, the air alone explains +105.4 mm of the +112.5 mm of the worst reading…" */
export function explainedWords(
  { instrument }: CalibrationRecord,
  { phase, points, worstNow, worstLeft }: SoundRecord["explained"][number],
  style: NumberStyle,
): string {
  const unit = instrument.distanceUnit;
  const greatest = points.reduce((left, right) => (Math.abs(right.airError) > Math.abs(left.airError) ? right : left));
  const text = (distance: number) => `${writeSigned(distance, style.distance)} ${unit}`;
  return (
    `${phaseTitles[phase]}, the day's air alone makes an error of ${text(greatest.airError)} at ` +
    `${writeFixed(greatest.reference, 0)} ${unit}. The worst reading is off by ${text(worstNow)}; without what the air ` +
    `makes, by ${text(worstLeft)}.`
  );
}

const weightWords = {
  small: "under a quarter of the tolerance",
  counts: "a quarter of the tolerance or more",
  beyond: "more than the whole tolerance",
} as const;

/** Whether a kelvin, or the humidity, matters at this tolerance. */
export function effectsWords(
  { instrument }: CalibrationRecord,
  { reference, tolerance, perKelvin, humidity }: NonNullable<SoundRecord["effects"]>,
  style: NumberStyle,
): string {
  const unit = instrument.distanceUnit;
  const size = (distance: number) => `${writeFixed(Math.abs(distance), style.distance)} ${unit}`;
  return (
    `At ${writePlain(reference)} ${unit}, with a tolerance of ±${size(tolerance)}: one kelvin makes ` +
    `${size(perKelvin.distance)}, ${weightWords[perKelvin.weight]}; the whole way from dry to saturated air makes ` +
    `${size(humidity.distance)}, ${weightWords[humidity.weight]}.`
  );
}
