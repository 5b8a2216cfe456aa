import type { Candidate, Instrument } from "../../model/instrument.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/** What each principle asks of target and air: common practice of the trade. */
const asksFor: Readonly<Record<NonNullable<Instrument["principle"]>, string>> = {
  ultrasonic: "a target that sends sound back: hard, flat, square to the axis; still air without foam or dust in gusts",
  photoelectric: "a target of one colour and gloss; a clean window, no dust or steam between",
  laser: "a target that is neither a mirror nor black; a clean window; the rules of its laser class",
  radar: "a surface that sends microwaves back: dry plastics and granulate do so poorly; nothing of metal in the beam",
  inductive: "a target of metal; another metal gives another distance",
  capacitive: "a target of one material; moisture and build-up count",
  other: "what it asks of target and air, which is not stated",
};

/**
 * Whether a candidate senses as the present sensor does. Another principle may well do, and asks other things of target
 * and air.
 *
 * @param candidate principle
 * @param needs of the loop
 * @returns one cell; none where the loop does not state its principle
 * Source: common practice of the trade.
 * @example fitPrinciple({ candidate: "A", principle: "radar" }, needs)[0].result // "fits with a change", for an
 *   ultrasonic loop
 */
export function fitPrinciple(
  { principle }: Candidate,
  { instrument }: Pick<LoopNeeds, "instrument">,
): readonly FitCell[] {
  if (instrument.principle === undefined) return [];
  const question = { demand: "principle", needs: instrument.principle, offers: principle ?? notStated };
  if (principle === undefined) return [{ ...question, result: "cannot be told", reason: "principle is not stated" }];
  if (principle === instrument.principle && principle === "other") {
    return [{ ...question, result: "cannot be told", reason: "neither of the two principles is named" }];
  }
  if (principle === instrument.principle) return [{ ...question, result: "fits", reason: "as now" }];
  return [{ ...question, result: "fits with a change", reason: `look at the place anew: ${asksFor[principle]}` }];
}
