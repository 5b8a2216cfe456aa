import type { Candidate } from "../../model/instrument.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/**
 * Whether a candidate may stand where the loop stands; asked in a hazardous area only.
 *
 * @param candidate hazardous_area: that it is approved for that of the loop
 * @param needs of the loop
 * @returns one cell, or none
 * Source: own choice; the approval itself is for people licensed for it.
 * @example fitHazardousArea({ candidate: "A" }, { instrument: { hazardousArea: true } })[0].result // "cannot be told"
 */
export function fitHazardousArea(
  { hazardousArea }: Candidate,
  { instrument }: Pick<LoopNeeds, "instrument">,
): readonly FitCell[] {
  if (instrument.hazardousArea !== true) return [];
  const question = { demand: "hazardous area", needs: "approved for the area of the loop" };
  if (hazardousArea === undefined) {
    const reason = "its approval (hazardous_area) is not stated";
    return [{ ...question, offers: notStated, result: "cannot be told", reason }];
  }
  return hazardousArea
    ? [{ ...question, offers: "approved", result: "fits", reason: "by its data; have the papers checked" }]
    : [{ ...question, offers: "not approved", result: "does not fit", reason: "it may not stand there" }];
}
