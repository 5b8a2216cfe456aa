import type { Candidate } from "../../model/instrument.ts";
import { limitWords, numberWords } from "../loop-check/limit-words.ts";
import { type EffectWeight, effectWeight } from "../teaching/effect-weight.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { AirExtreme, LoopNeeds } from "./loop-needs.ts";

/** The coldest and the hottest. */
const bothExtremes = 2;

/**
 * Whether a candidate keeps its distance in cold and hot air: asked of ultrasonic ones only, and of those only where the
 * air at the loop makes a quarter of the tolerance or more.
 *
 * @param candidate principle, temperature_compensated
 * @param needs errors of the air at the far end, from the part on sound in air
 * @returns one cell
 * Source: `effect-weight.ts`, `air-error.ts`; own choice that an effect of more than the tolerance rules it out.
 * @example fitAir({ candidate: "A", principle: "ultrasonic", temperatureCompensated: false }, needs).result
 *   // "does not fit", where −5 °C makes 180 mm of ±36 mm
 */
export function fitAir({ principle, temperatureCompensated }: Candidate, needs: LoopNeeds): FitCell {
  const question = { demand: "air temperature", needs: needsWords(needs), offers: offersWords(temperatureCompensated) };
  if (principle === undefined) return { ...question, result: "cannot be told", reason: "principle is not stated" };
  if (principle !== "ultrasonic") {
    return { ...question, offers: principle, result: "fits", reason: "asked of ultrasonic sensors only" };
  }
  if (temperatureCompensated === true) {
    return { ...question, result: "fits", reason: "it corrects for the air's temperature" };
  }
  const worst = worstOf(needs.airExtremes);
  if (worst === undefined || (worst.weight === "small" && needs.airExtremes.length < bothExtremes)) {
    return { ...question, result: "cannot be told", reason: "taught_at, air_min or air_max of the loop is not stated" };
  }
  const effect = effectWords(worst, needs.instrument.distanceUnit);
  if (worst.weight === "small") return { ...question, result: "fits", reason: `no need of it: ${effect}` };
  if (temperatureCompensated === undefined) {
    return { ...question, result: "cannot be told", reason: `temperature_compensated is not stated, and ${effect}` };
  }
  if (worst.weight === "beyond") return { ...question, result: "does not fit", reason: effect };
  return { ...question, result: "fits with a change", reason: `${effect}; teach it anew with the seasons` };
}

function worstOf(extremes: readonly AirExtreme[]): (AirExtreme & { weight: EffectWeight }) | undefined {
  const [worst] = extremes.toSorted((one, other) => partOf(other) - partOf(one));
  return worst && { ...worst, weight: effectWeight(worst.errorAtUpper, worst.toleranceAtUpper) };
}

function partOf({ errorAtUpper, toleranceAtUpper }: AirExtreme): number {
  return Math.abs(errorAtUpper) / toleranceAtUpper;
}

function effectWords({ temperature, errorAtUpper, toleranceAtUpper }: AirExtreme, unit: string): string {
  const [error, tolerance] = [Math.abs(errorAtUpper), toleranceAtUpper].map((one) => numberWords(one, unit, 3));
  return `air of ${numberWords(temperature, "°C")} makes ${error} at the far end, where ±${tolerance} is allowed`;
}

function needsWords({ instrument: { airMin, airMax } }: LoopNeeds): string {
  if (airMin === undefined && airMax === undefined) return "air not stated";
  return `air of ${limitWords({ low: airMin ?? null, high: airMax ?? null }, "°C")}`;
}

function offersWords(isCompensated: boolean | undefined): string {
  if (isCompensated === undefined) return notStated;
  return isCompensated ? "corrects for it" : "does not correct for it";
}
