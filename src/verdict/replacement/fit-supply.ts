import type { Candidate, Instrument } from "../../model/instrument.ts";
import { isInside, type NumberLimits } from "../../units/is-inside.ts";
import { limitWords, numberWords, outsideWords } from "../loop-check/limit-words.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/**
 * Whether a candidate bears the supply of the loop. Where the loop does not state its voltage, the supply is taken to
 * lie somewhere in what the present sensor bears.
 *
 * @param candidate supply_min, supply_max
 * @param needs of the loop
 * @returns one cell
 * Source: own choice.
 * @example fitSupply({ candidate: "A", supplyMin: 18, supplyMax: 30 }, needs).result // "fits", for a supply of 24 V
 */
export function fitSupply(candidate: Candidate, { instrument }: Pick<LoopNeeds, "instrument">): FitCell {
  const bears = limitsOf(candidate);
  const question = { demand: "supply", needs: needsWords(instrument), offers: offersWords(bears) };
  const { supplyVoltage } = instrument;
  if (supplyVoltage === undefined) return { ...question, ...fitUnknownVoltage(bears, limitsOf(instrument)) };
  if (!isInside(supplyVoltage, bears)) {
    return { ...question, result: "does not fit", reason: outsideWords(supplyVoltage, bears, "V", "") };
  }
  const missing = missingOf(bears);
  if (missing !== undefined) return { ...question, result: "cannot be told", reason: missing };
  return { ...question, result: "fits", reason: "the voltage of the supply lies inside" };
}

type Told = Pick<FitCell, "result" | "reason">;

function fitUnknownVoltage(bears: NumberLimits, present: NumberLimits): Told {
  if (missingOf(present) !== undefined) {
    const reason = "neither supply_voltage of the loop nor what the present sensor bears is stated";
    return { result: "cannot be told", reason };
  }
  const isApart =
    (bears.low !== null && bears.low > (present.high ?? 0)) || (bears.high !== null && bears.high < (present.low ?? 0));
  if (isApart) return { result: "does not fit", reason: "it bears nothing of what the present sensor bears" };
  const missing = missingOf(bears);
  if (missing !== undefined) return { result: "cannot be told", reason: missing };
  const isWhole = [present.low, present.high].every((end) => end !== null && isInside(end, bears));
  if (isWhole) return { result: "fits", reason: "it bears all that the present sensor bears" };
  return { result: "cannot be told", reason: "supply_voltage of the loop is not stated" };
}

function limitsOf({ supplyMin, supplyMax }: Pick<Candidate, "supplyMin" | "supplyMax">): NumberLimits {
  return { low: supplyMin ?? null, high: supplyMax ?? null };
}

function missingOf({ low, high }: NumberLimits): string | undefined {
  if (low !== null && high !== null) return undefined;
  if (low === null && high === null) return "supply_min and supply_max are not stated";
  return low === null ? "supply_min is not stated" : "supply_max is not stated";
}

function needsWords({ supplyVoltage, supplyMin, supplyMax }: Instrument): string {
  if (supplyVoltage !== undefined) return numberWords(supplyVoltage, "V");
  if (supplyMin === undefined || supplyMax === undefined) return "not known";
  return `somewhere in ${limitWords({ low: supplyMin, high: supplyMax }, "V")}`;
}

function offersWords(bears: NumberLimits): string {
  return bears.low === null && bears.high === null ? notStated : limitWords(bears, "V");
}
