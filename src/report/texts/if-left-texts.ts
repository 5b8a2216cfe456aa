import { overallOf } from "../../record/overall-of.ts";
import { phaseTitles } from "../../record/phase-name.ts";
import { phaseStatement } from "../../record/phase-statement.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { writeSigned } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { forecastWords, leadingPlaceOf, placeWords } from "./history-texts.ts";

/**
 * What becomes of the loop if nothing more is done: how far it is off now, and where its drift leads, with the band.
 *
 * @param record with its phases, and its years where a folder of filed records was given
 * @param style decimals of distances
 * @returns sentences; none where nothing was judged
 * Source: own choice of words; drift and band as in the part over the years.
 * @example ifLeftWords(record, style)[0] // "As left the loop is in tolerance."
 */
export function ifLeftWords(record: CalibrationRecord, style: NumberStyle): readonly string[] {
  const { of, complete } = overallOf(record);
  const phase = of === null ? undefined : record.phases[of];
  if (of === null || phase === undefined) return [];
  const { distanceUnit: unit } = record.instrument;
  const worst =
    phase.worst === null
      ? ""
      : `, by ${writeSigned(phase.worst.errorDistance, style.distance)} ${unit} at the worst reading`;
  if (isPassed(phase.verdict) && !isPassed(phaseStatement(record, of))) {
    return [
      `${phaseTitles[of]} the readings are in tolerance${worst}, and a switched output is not, and stays so until something is done.`,
      driftSentence(record, style),
    ];
  }
  const now = isPassed(phaseStatement(record, of))
    ? `${phaseTitles[of]} the loop is in tolerance${complete ? "" : " where it was read"}${worst}.`
    : `${phaseTitles[of]} the loop does not pass${worst}, and stays so until something is done.`;
  return [now, driftSentence(record, style)];
}

function isPassed(word: string | null): boolean {
  return word === "pass" || word === "conditional pass";
}

function driftSentence({ overTheYears, instrument }: CalibrationRecord, style: NumberStyle): string {
  if (overTheYears === undefined) return "Where it drifts is not determined: no filed records of the loop were given.";
  const place = leadingPlaceOf(overTheYears);
  const last = overTheYears.band.at(-1);
  if (place === undefined || place.drift === null || last === undefined) {
    const why =
      overTheYears.notDetermined.leading ?? place?.notDetermined.drift ?? "too few records since the last adjustment";
    return `Where it drifts is not determined: ${why}.`;
  }
  const { distanceUnit: unit } = instrument;
  const number = (value: number) => `${writeSigned(value, style.distance)} ${unit}`;
  return (
    `By its drift a result at ${placeWords(place, unit)} is to be expected at ${number(last.value)} on ${last.on}, ` +
    `between ${number(last.low)} and ${number(last.high)} (95 %); ${forecastWords(place)}.`
  );
}

/**
 * What is to be seen to meanwhile where a safety function does not pass.
 *
 * @param record with its overall word
 * @returns the caution; nothing for a loop that passes or is no safety function
 * Source: common practice of functional safety, no source; the site's own procedure decides.
 * @example interimWords({ ...record, instrument: { ...record.instrument, criticality: "general" } }) // undefined
 */
export function interimWords(record: CalibrationRecord): string | undefined {
  if (record.instrument.criticality !== "safety" || isPassed(overallOf(record).word)) return undefined;
  return (
    "Until it passes, this safety function is impaired and must not be relied on. Which interim measure takes its place " +
    "(another protection, a person who watches, standstill), for how long, and who answers for it, is decided by the " +
    "site's procedure for impaired safety functions, under its permit, by people authorised for it."
  );
}
