import type { ControllerLimitRecord } from "../../record/controller-limit-schema.ts";
import { phaseWords } from "../../record/phase-name.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeFixed, writePlain } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";

/**
 * What the error did to a limit of the controller: "high alarm, as found: acts at
 * 1480 mm instead of 1500 mm, ± 4 mm."
 *
 * @param record with the limit
 * @param limit one of them
 * @param style decimals of distances
 * @returns a sentence for each phase
 * Source: own choice of words.
 * @example limitSentences(record, { ...limit, found: [] }, style) // []
 */
export function limitSentences(
  { instrument: { distanceUnit } }: Pick<CalibrationRecord, "instrument">,
  { limit, meant, found }: ControllerLimitRecord,
  style: NumberStyle,
): readonly string[] {
  const distance = (value: number) => `${writeFixed(value, style.distance)} ${distanceUnit}`;
  return found.map(({ phase, actedAt, expandedUncertainty, notDetermined }) => {
    const head = `${limit}, ${phaseWords[phase]}: `;
    if (actedAt === null || expandedUncertainty === null) return `${head}not determined: ${notDetermined ?? ""}.`;
    return `${head}acts at ${distance(actedAt)} instead of ${distance(meant)}, ± ${distance(expandedUncertainty)}.`;
  });
}

/** "above 1500 mm, after 2 s, back by 20 mm" */
export function limitWords(
  { instrument }: Pick<CalibrationRecord, "instrument">,
  { value, acts, delay, deadBand }: ControllerLimitRecord,
): string {
  const unit = instrument.valueLower === undefined ? instrument.distanceUnit : (instrument.valueUnit ?? "");
  const amount = (number: number) => `${writePlain(number)} ${unit}`.trimEnd();
  return [
    `${acts} ${amount(value)}`,
    ...(delay === undefined ? [] : [`after ${writePlain(delay)} s`]),
    ...(deadBand === undefined ? [] : [`back by ${amount(deadBand)}`]),
  ].join(", ");
}
