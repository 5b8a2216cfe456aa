import { numberWords } from "../loop-check/limit-words.ts";
import { isOfApart } from "./asked.ts";
import type { PhaseState } from "./phase-state.ts";
import { leftWords } from "./state-words.ts";
import type { RecommendedStep } from "./step.ts";

/**
 * What the readings say without those that stand apart from them: their worst error, whether they pass, what they ask for.
 *
 * @param state of the phase
 * @param findings that count in it
 * @param adviceOn what to do with a state; asked with that of the others alone
 * @returns one sentence or two; none where no reading stands apart, or none is left
 * Source: own choice; the errors are those of the forecast, which leaves such readings out.
 * @example othersWords(state, [], recommend) // []
 */
export function othersWords(
  state: PhaseState,
  findings: PhaseState["findings"],
  adviceOn: (others: PhaseState) => Pick<RecommendedStep, "does">,
): readonly string[] {
  const { others, unit } = state;
  const end = others?.controller ?? others?.sensor;
  if (others === undefined || end === undefined || end === null || !findings.some(isOfApart)) return [];
  const worst = `Without ${others.apart === 1 ? "it" : "them"} the worst of the others is ${leftWords(end, state)}, at ${numberWords(others.point, unit)}`;
  const alone = adviceOn(withoutApart(state, others));
  return [`${worst}: ${wordsOf[end.statement]}. By them alone: ${alone.does}`];
}

const wordsOf: Readonly<Record<NonNullable<PhaseState["statement"]>, string>> = {
  pass: "they pass",
  "conditional pass": "they pass, conditionally",
  "conditional fail": "they fail, conditionally",
  fail: "they fail",
  "cannot be decided": "whether they pass cannot be decided",
};

function withoutApart(state: PhaseState, { sensor, controller }: NonNullable<PhaseState["others"]>): PhaseState {
  const { others: _, ...rest } = state;
  const partOf = (part: PhaseState["sensor"], left: typeof sensor) =>
    part === null || left === null ? part : { ...part, statement: left.statement, worst: left.part };
  return {
    ...rest,
    statement: (controller ?? sensor)?.statement ?? state.statement,
    sensor: partOf(state.sensor, sensor),
    controller: partOf(state.controller, controller),
    findings: state.findings.filter((finding) => !isOfApart(finding)),
    // What is said of the readings alone: outputs, checks and what is missing have their own words.
    missing: [],
    switching: [],
    failedChecks: [],
  };
}
