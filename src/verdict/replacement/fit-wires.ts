import type { Candidate } from "../../model/instrument.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

const change = {
  apart: "it needs a supply of its own: one more core or two, and a card that does not feed the loop",
  loop: "it lives on the loop: the card, or a supply in series, has to feed it",
} as const;

/**
 * Whether a candidate is fed over the same cores as the present sensor: over its two signal wires, or apart from them.
 *
 * @param candidate loop_powered
 * @param needs of the loop
 * @returns one cell; none where the loop does not state it
 * Source: common practice of the trade: two wires are fed by the loop, three or more apart.
 * @example fitWires({ candidate: "A", loopPowered: false }, { instrument: { loopPowered: true } })[0].result //
 *   "fits with a change"
 */
export function fitWires(candidate: Candidate, { instrument }: Pick<LoopNeeds, "instrument">): readonly FitCell[] {
  if (instrument.loopPowered === undefined) return [];
  const { loopPowered } = candidate;
  const question = { demand: "wires", needs: wiresWords(instrument.loopPowered), offers: wiresWords(loopPowered) };
  if (loopPowered === undefined) {
    return [{ ...question, result: "cannot be told", reason: "loop_powered is not stated" }];
  }
  if (loopPowered === instrument.loopPowered) return [{ ...question, result: "fits", reason: "fed as now" }];
  return [{ ...question, result: "fits with a change", reason: loopPowered ? change.loop : change.apart }];
}

function wiresWords(loopPowered: boolean | undefined): string {
  if (loopPowered === undefined) return notStated;
  return loopPowered ? "two, fed by the loop" : "three or more, fed apart";
}
