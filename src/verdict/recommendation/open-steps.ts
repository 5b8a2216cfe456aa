import { counted } from "../../units/counted.ts";
import { mostWords, numberWords } from "../loop-check/limit-words.ts";
import { acceptedBelow } from "./accepted-below.ts";
import { isOfReadings } from "./asked.ts";
import { remedyOf } from "./cause-remedy.ts";
import type { PhaseState, WorstPoint } from "./phase-state.ts";
import { passingWords, sentence, worstOf } from "./state-words.ts";
import { type RecommendedStep, reasonOf, stepOf } from "./step.ts";

// What cannot be decided from these readings, and what would decide it.

/**
 * Another standard, where the uncertainty of this one leaves nothing to decide.
 *
 * @param state of the phase
 * @returns one step, or none where the statement was made
 * Source: ILAC-G8:09/2019 for the guard band; the usual ratio of tolerance to U is the record's own.
 * @example standardSteps({ ...state, statement: "cannot be decided" })[0].does //
 *   "Measure with a standard that brings U to 2.5 mm or less."
 */
export function standardSteps(state: PhaseState): RecommendedStep[] {
  const { statement, worstPoint } = state;
  if (statement !== "cannot be decided" || worstPoint === null) return [];
  const needed = worstPoint.tolerance / state.minimumTestUncertaintyRatio;
  const { unit } = state;
  return [
    stepOf({
      action: "cannot be decided",
      of: "standard",
      does: `Measure with a standard that brings U to ${mostWords(needed, unit, 2)} or less.`,
      rule: "U is so large that the decision rule could not accept any error",
      reasons: [
        `At ${numberWords(worstPoint.point, unit)} U is ${numberWords(worstPoint.expandedUncertainty, unit, 2)}, and the tolerance ${numberWords(worstPoint.tolerance, unit, 3)}.`,
        `A ratio of tolerance to U of ${numberWords(state.minimumTestUncertaintyRatio, null)} needs ${mostWords(needed, unit, 2)}.`,
        ...acceptedWords(worstPoint, state),
        ...(worstPoint.greatestSource === null
          ? []
          : [`The greatest part of U comes from: ${worstPoint.greatestSource}.`]),
      ],
    }),
  ];
}

/** What would just do for the error that was measured. */
function acceptedWords(point: WorstPoint, { rule, unit }: PhaseState): string[] {
  const most = acceptedBelow(point, rule);
  if (most === undefined) return [];
  return [`The error that was measured would be accepted with a U of ${mostWords(most, unit, 2)} or less.`];
}

/**
 * Readings to be taken or compared again: slips, a sensor that was not warm, play, a check that contradicts itself.
 *
 * @param state of the phase
 * @param findings that count in it
 * @param others what the readings say without those that stand apart, in sentences
 * @returns one step at most
 * Source: own choice.
 * @example readingSteps(state, []) // []
 */
export function readingSteps(
  { failedChecks }: PhaseState,
  findings: PhaseState["findings"],
  others: readonly string[] = [],
): RecommendedStep[] {
  const again = findings.filter(isOfReadings);
  const doubtful = failedChecks.filter(({ key, isContradiction }) => isContradiction || key === "identity");
  if (again.length === 0 && doubtful.length === 0) return [];
  const doings = [
    ...again.flatMap((finding) => remedyOf(finding).does ?? []),
    ...doubtful.map(({ item }) => `look once more at what the loop check says of “${item}”`),
  ];
  return [
    stepOf({
      action: "cannot be decided",
      of: "readings",
      does: [...new Set(doings)].map(sentence).join(" "),
      rule: "what was written down is in doubt, or the loop was not steady while it was read",
      reasons: [
        ...again.map((finding) => reasonOf(finding)),
        ...others,
        ...doubtful.map(({ item, says }) => `“${item}”${says === "" ? " is not in order" : `: ${says}`}.`),
      ],
    }),
  ];
}

/**
 * Where the loop does not pass and nothing tells why.
 *
 * @param state of the phase
 * @returns the step
 * Source: own choice.
 * @example openStep(state).action // "cannot be decided"
 */
export function openStep({ statement, judged, faultReadings }: PhaseState): RecommendedStep {
  const isJudged = statement !== null;
  return stepOf({
    action: "cannot be decided",
    of: "readings",
    does:
      judged === "signal"
        ? "Read the loop again, at five points or more, out and back, three times."
        : "Read the loop again with the sensor's signal, at five points or more.",
    rule: isJudged ? "it does not pass, and the readings do not tell why" : "nothing could be judged",
    reasons: [
      isJudged
        ? "No stage of the loop and no cause stands out in these readings."
        : "No reading could be compared with the tolerance.",
      ...(faultReadings > 0 ? [`${counted(faultReadings, "reading")} reported a fault instead of a distance.`] : []),
    ],
  });
}

/**
 * What to do with a loop that is in tolerance as far as it was read, and was not read far enough.
 *
 * @param state of a phase that passes and is not complete
 * @returns the step: complete it; and leave it until then where nothing but test points is missing
 * Source: own choice: what was not read is not proved.
 * @example completeStep({ ...state, missing: ["1 test point was read, 5 are asked for"] }).action // "cannot be decided"
 */
export function completeStep(state: PhaseState): RecommendedStep {
  const { missing, isThinlyRead = false } = state;
  return stepOf({
    ...(isThinlyRead
      ? { action: "leave", of: "loop", does: "Leave it as it is, and complete the calibration." }
      : { action: "cannot be decided", of: "readings", does: "Complete the calibration before anything is decided." }),
    rule: "what was not read, tried or answered is not proved",
    reasons: [
      ...missing.map((says) => `${sentence(says)}`),
      `${passingWords(worstOf(state), "It is in tolerance where it was read")}.`,
    ],
  });
}

/**
 * What to do with a loop that was adjusted and not read since.
 *
 * @param state with what is missing
 * @returns the step: read it as left
 * Source: own choice: readings from before an adjustment prove nothing of what is after it.
 * @example unreadStep({ missing: ["no readings were taken as left"] }).reasons // [{ says: "No readings were taken as left." }]
 */
export function unreadStep({ missing }: Pick<PhaseState, "missing">): RecommendedStep {
  return stepOf({
    action: "cannot be decided",
    of: "readings",
    does: "Read the loop as left before anything else is decided.",
    rule: "what was adjusted is not proved until it is read again",
    reasons: missing.map((says) => sentence(says)),
  });
}
