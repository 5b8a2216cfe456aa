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

/** One thing to do, why, and by which rule; an opinion. */
export type RecommendedStep = {
  action: RecommendedAction;
  of: StepPlace;
  /** A sentence for whoever does it. */
  does: string;
  /** The rule that led here, in words. */
  rule: string;
  /** Sentences, the weightiest first. */
  reasons: string[];
  /** What to make sure of before; null where nothing is open. */
  before: string | null;
  /** Which constants to type in for a re-scale. */
  constants: "of the forecast" | "of the instrument's row" | null;
};

type StepFacts = Pick<RecommendedStep, "action" | "of" | "does" | "rule" | "reasons"> &
  Partial<Pick<RecommendedStep, "before" | "constants">>;

/**
 * A step with nothing to make sure of and no constants, where nothing else is said.
 *
 * @param facts of the step
 * @returns the whole step
 * Source: own choice.
 * @example stepOf({ action: "leave", of: "loop", does: "Leave it.", rule: "it passes", reasons: [] }).before // null
 */
export function stepOf(facts: StepFacts): RecommendedStep {
  return { ...facts, before: facts.before ?? null, constants: facts.constants ?? null };
}
