import type { Candidate, Instrument } from "../../model/instrument.ts";
import { leastOf } from "../../numeric/least-and-greatest.ts";
import { numberWords } from "../loop-check/limit-words.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/**
 * Whether the signal of a candidate suits the card: the same ends fit; reversed ends, or other ends of the same kind,
 * fit once something is set anew; a signal of the other kind does not.
 *
 * @param candidate signal ends and unit
 * @param needs of the loop
 * @returns one cell
 * Source: own choice; IEC 60381-1 and IEC 60381-2 for the kinds of signal.
 * @example fitSignal({ candidate: "A", signalLower: 0, signalUpper: 20, signalUnit: "mA" }, needs).result
 *   // "fits with a change", for a loop of 4 to 20 mA
 */
export function fitSignal(candidate: Candidate, { instrument }: Pick<LoopNeeds, "instrument">): FitCell {
  const question = { demand: "signal", needs: endsWords(instrument), offers: endsWords(candidate) };
  const { signalLower, signalUpper, signalUnit } = candidate;
  if (signalUnit !== undefined && signalUnit !== instrument.signalUnit) {
    const reason = `the card takes ${instrument.signalUnit}, and this gives ${signalUnit}`;
    return { ...question, result: "does not fit", reason };
  }
  if (signalLower === undefined || signalUpper === undefined || signalUnit === undefined) {
    return {
      ...question,
      result: "cannot be told",
      reason: "signal_lower, signal_upper and signal_unit are not stated",
    };
  }
  if (signalLower === instrument.signalLower && signalUpper === instrument.signalUpper) {
    return { ...question, result: "fits", reason: `the same ends; teach them to ${rangeWords(instrument)}` };
  }
  return { ...question, result: "fits with a change", reason: changeWords(candidate, instrument) };
}

function changeWords({ signalLower, signalUpper }: Candidate, instrument: Instrument): string {
  if (signalLower === instrument.signalUpper && signalUpper === instrument.signalLower) {
    return "it goes the other way over the range: set its slope, or exchange the constants in the controller";
  }
  const ends = [signalLower, signalUpper].filter((end) => end !== undefined);
  const losesLiveZero = leastOf(ends) === 0 && Math.min(instrument.signalLower, instrument.signalUpper) > 0;
  const scaling = `new scaling in the controller, and the card set to these ends`;
  return losesLiveZero ? `${scaling}; a broken wire then looks like the low end` : scaling;
}

function endsWords({
  signalLower,
  signalUpper,
  signalUnit,
}: Pick<Candidate, "signalLower" | "signalUpper" | "signalUnit">): string {
  if (signalUnit === undefined) return notStated;
  if (signalLower === undefined || signalUpper === undefined) return `${signalUnit}, its ends ${notStated}`;
  return `${numberWords(signalLower, null)} to ${numberWords(signalUpper, signalUnit)}`;
}

function rangeWords({ rangeLower, rangeUpper, distanceUnit }: Instrument): string {
  return `${numberWords(rangeLower, null)} and ${numberWords(rangeUpper, distanceUnit)}`;
}
