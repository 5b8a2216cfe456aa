import type { CauseEvidence } from "./cause-evidence.ts";

/**
 * A choice between causes that is made once for the evidence of a phase, however many causes ask for it.
 *
 * @param choose of the evidence of a phase, which is not changed afterwards
 * @returns the same choice, remembered as long as the evidence is
 * Source: own choice.
 * @example onceFor(({ stages }) => stages.length)(evidence) // 2
 */
export function onceFor<Choice>(choose: (evidence: CauseEvidence) => Choice): (evidence: CauseEvidence) => Choice {
  const made = new WeakMap<CauseEvidence, { choice: Choice }>();
  return (evidence) => {
    const known = made.get(evidence) ?? { choice: choose(evidence) };
    made.set(evidence, known);
    return known.choice;
  };
}
