import { isInTolerance } from "../../model/statement.ts";
import { numberWords } from "../loop-check/limit-words.ts";
import { exceeds } from "./beside-threshold.ts";
import type { PhaseState } from "./phase-state.ts";
import { partWords, passingWords, worstOf } from "./state-words.ts";
import { type RecommendedStep, reasonOf, stepOf } from "./step.ts";

/**
 * Leaving a loop as it is.
 *
 * @param state of a phase that passes and asks for nothing
 * @returns the step
 * Source: own choice; adjusting what passes spoils the history of its drift.
 * @example leaveStep(state).rule // "it passes, and nothing is adjusted that passes"
 */
export function leaveStep(state: PhaseState): RecommendedStep {
  const { thresholds, statement, findings, switching } = state;
  const limit = thresholds.adjustAt;
  const worst = worstOf(state);
  const named = findings.filter(({ stage }) => stage !== "switched output");
  const tripped = switching.filter(({ found }) => found?.statement === "pass").map(({ output }) => output.output);
  return stepOf({
    action: "leave",
    of: "loop",
    does: "Leave it as it is.",
    rule:
      limit < 100
        ? `it passes, and its worst error is below ${numberWords(limit, "%")} of the tolerance`
        : "it passes, and nothing is adjusted that passes",
    reasons: [
      `${passingWords(worst, "It passes")}${limit < 100 ? `, adjusting is asked for from ${numberWords(limit, "%")}` : ""}.`,
      ...(exceeds(worst, 100) ? ["Read those points again before anything rests on a single reading there."] : []),
      ...madeUpFor(state),
      ...(tripped.length > 0 ? [`${tripped.join(", ")} ${tripped.length === 1 ? "passes" : "pass"} too.`] : []),
      ...(statement === "conditional pass" ? ["It is only just accepted: shorten the interval."] : []),
      ...named.map((finding) => reasonOf(finding, { before: `${whyLeft(finding, state)}: ` })),
    ],
  });
}

/** A stage that is beyond the tolerance by itself, of a loop that passes, is made up for by another. */
function whyLeft({ stage }: PhaseState["findings"][number], { stageParts }: PhaseState): string {
  if (stage === "readings") return "To be looked at before the numbers are used for anything else";
  const own = stageParts.find(
    (one) => one.stage === stage || (stage === "scaling" && one.stage === "input card and scaling"),
  );
  return exceeds(own?.part ?? 0, 100)
    ? "Beyond the tolerance by itself, and made up for at the end of the loop"
    : "Too small to be worked on, but to be watched";
}

/** The loop is judged where it ends; what the sensor does alone is said all the same. */
function madeUpFor({ sensor, controller }: PhaseState): readonly string[] {
  if (controller === null || sensor === null || isInTolerance(sensor.statement)) return [];
  return [
    `The sensor alone does not pass: its worst reading is ${partWords(sensor.worst)}. What follows makes up for it; nothing else may rely on its signal.`,
  ];
}
