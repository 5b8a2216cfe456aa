import { isDetermined } from "../../analysis/figures/figure.ts";
import { type BurdenLimit, burdenLimit, highestCurrent, loopBurden } from "../../analysis/stages/loop-burden.ts";
import type { Candidate, Instrument } from "../../model/instrument.ts";
import { isInside } from "../../units/is-inside.ts";
import { writePlain } from "../../units/write-number.ts";
import { limitWords, numberWords, outsideWords } from "../loop-check/limit-words.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/**
 * Whether a candidate can drive what hangs on its signal: for a current, card, barrier and cable in series, at the highest
 * current of the loop; for a voltage, a card that draws no more than its output bears.
 *
 * @param candidate load_max, load_min, and supply_min where it lives on the loop
 * @param needs of the loop
 * @returns one cell
 * Source: `loop-burden.ts`.
 * @example fitLoad({ candidate: "A", signalUnit: "mA", loopPowered: false, loadMax: 500 }, needs).result // "fits", for
 *   a loop of 250 Ω and 100 m of cable
 */
export function fitLoad(candidate: Candidate, { instrument }: Pick<LoopNeeds, "instrument">): FitCell {
  const cell = instrument.signalUnit === "mA" ? fitBurden(candidate, instrument) : fitCard(candidate, instrument);
  const { signalUnit } = candidate;
  if (signalUnit === undefined || signalUnit === instrument.signalUnit) return cell;
  return { ...cell, result: "cannot be told", offers: notStated, reason: "its signal is of another kind" };
}

function fitBurden(candidate: Candidate, instrument: Instrument): FitCell {
  const burden = loopBurden(instrument);
  const limit = burdenLimit({ ...instrument, ...suppliedAs(candidate) });
  const greatest = isDetermined(limit) ? limit.greatest : null;
  const question = {
    demand: `load at ${writePlain(highestCurrent(instrument))} mA`,
    needs: isDetermined(burden) ? numberWords(burden.total, "Ω") : "not known",
    offers: greatest === null ? notStated : limitWords({ low: null, high: greatest }, "Ω"),
  };
  if (!isDetermined(burden)) return { ...question, result: "cannot be told", reason: burden.notDetermined };
  const limits = { low: null, high: greatest };
  if (isDetermined(limit) && !isInside(burden.total, limits)) {
    const reason = `${outsideWords(burden.total, limits, "Ω", "")}, ${setByWords(limit, candidate, instrument)}`;
    return { ...question, result: "does not fit", reason };
  }
  const open = openOf(candidate, instrument);
  if (open !== undefined) return { ...question, result: "cannot be told", reason: open };
  const why = isDetermined(limit) ? setByWords(limit, candidate, instrument) : "";
  return { ...question, result: "fits", reason: `card, barrier and cable together; ${why}` };
}

function suppliedAs({ loopPowered, supplyMin, loadMax }: Candidate): Partial<Instrument> {
  return { loopPowered, supplyMin, loadMax };
}

function setByWords({ setBy }: BurdenLimit, { supplyMin }: Candidate, instrument: Instrument): string {
  const { supplyVoltage } = instrument;
  if (setBy === "load_max") return "by its load_max";
  return `by the supply: (${numberWords(supplyVoltage ?? 0, "V")} − ${numberWords(supplyMin ?? 0, "V")}) / ${writePlain(highestCurrent(instrument))} mA`;
}

/** What keeps a burden that no known limit forbids from being certain. */
function openOf({ loopPowered, supplyMin, loadMax }: Candidate, { supplyVoltage }: Instrument): string | undefined {
  if (loopPowered === undefined) return "whether it lives on the loop (loop_powered) is not stated";
  if (!loopPowered) return loadMax === undefined ? "load_max is not stated" : undefined;
  if (supplyMin === undefined) return "supply_min is not stated";
  return supplyVoltage === undefined ? "supply_voltage of the loop is not stated" : undefined;
}

function fitCard({ loadMin }: Candidate, { cardResistance }: Instrument): FitCell {
  const question = {
    demand: "load of the voltage output",
    needs: cardResistance === undefined ? "not known" : numberWords(cardResistance, "Ω"),
    offers: loadMin === undefined ? notStated : limitWords({ low: loadMin, high: null }, "Ω"),
  };
  if (cardResistance === undefined) {
    return { ...question, result: "cannot be told", reason: "card_resistance of the loop is not stated" };
  }
  if (loadMin === undefined) return { ...question, result: "cannot be told", reason: "load_min is not stated" };
  const limits = { low: loadMin, high: null };
  if (isInside(cardResistance, limits)) return { ...question, result: "fits", reason: "the card draws little enough" };
  return { ...question, result: "does not fit", reason: outsideWords(cardResistance, limits, "Ω", "") };
}
