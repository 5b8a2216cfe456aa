import type { Finding } from "../causes/finding.ts";

/** What may be recommended; every other thought is a reason or a check beforehand. */
export const recommendedActions = [
  "leave",
  "re-teach",
  "re-scale",
  "repair wiring or set-up",
  "replace",
  "cannot be decided",
] as const;
export type RecommendedAction = (typeof recommendedActions)[number];

/** What is to be worked on; "readings" and "standard" are to be had anew or better. */
export const stepPlaces = [
  "loop",
  "set-up",
  "wiring",
  "sensor",
  "controller",
  "switched output",
  "readings",
  "standard",
] as const;
export type StepPlace = (typeof stepPlaces)[number];

/** Why, in a sentence; where a finding says so, with its cause and place. */
export type Reason = { says: string; cause?: Pick<Finding, "id" | "stage"> };

/** One thing to do, why, and by which rule; an opinion. */
export type RecommendedStep = {
  action: RecommendedAction;
  of: StepPlace;
  /** A sentence for whoever does it. */
  does: string;
  /** The rule that led here, in words. */
  rule: string;
  /** The weightiest first. */
  reasons: Reason[];
  /** What to make sure of before; null where nothing is open. */
  before: string | null;
  /** Which constants to type in for a re-scale. */
  constants: "of the forecast" | "of the instrument's row" | null;
};

type StepFacts = Pick<RecommendedStep, "action" | "of" | "does" | "rule"> &
  Partial<Pick<RecommendedStep, "before" | "constants">> & { reasons: readonly (string | Reason)[] };

/**
 * A step with nothing to make sure of and no constants, where nothing else is said.
 *
 * @param facts of the step; a reason that no finding gives may be a sentence alone
 * @returns the whole step
 * Source: own choice.
 * @example stepOf({ action: "leave", of: "loop", does: "Leave it.", rule: "it passes", reasons: [] }).before // null
 */
export function stepOf(facts: StepFacts): RecommendedStep {
  const reasons = facts.reasons.map((reason) => (typeof reason === "string" ? { says: reason } : reason));
  return { ...facts, reasons, before: facts.before ?? null, constants: facts.constants ?? null };
}

/**
 * A finding as a reason.
 *
 * @param finding that a step rests on
 * @param words in front of what it says, and after it
 * @returns the reason, by which a page knows that it has said the finding
 * Source: own choice.
 * @example reasonOf({ id: "blind-zone", stage: "sensor", says: "It stands still." }).cause?.id // "blind-zone"
 */
export function reasonOf(
  { id, stage, says }: Pick<Finding, "id" | "stage" | "says">,
  { before = "", after = "" }: { before?: string; after?: string } = {},
): Reason {
  return { says: `${before}${says}${after}`, cause: { id, stage } };
}
