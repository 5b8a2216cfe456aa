import { greatestOf } from "../../numeric/least-and-greatest.ts";
/** How a candidate answers one demand of a loop, from the best to the worst. */
export const fitResults = ["fits", "fits with a change", "cannot be told", "does not fit"] as const;
export type FitResult = (typeof fitResults)[number];

/** One cell of the comparison: what the loop needs, what the candidate offers, what follows and why. */
export type FitCell = {
  demand: string;
  result: FitResult;
  /** The same for every candidate. */
  needs: string;
  offers: string;
  reason: string;
};

/** What stands in the place of what a table leaves empty. */
export const notStated = "not stated";

/**
 * The worst of several results: a part is as fit as its least fit side.
 *
 * @param results in any order
 * @returns the worst; "fits" where there are none
 * Source: own choice: what is known not to fit outweighs what is not known, and that outweighs what can be changed.
 * @example worstFit(["fits", "does not fit", "cannot be told"]) // "does not fit"
 */
export function worstFit(results: readonly FitResult[]): FitResult {
  return fitResults[Math.max(0, greatestOf(results.map((result) => fitResults.indexOf(result))))] ?? "fits";
}
