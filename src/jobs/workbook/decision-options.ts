import { decisionRules } from "../../model/instrument-words.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { mostDraws } from "../../record/record-format.ts";
import type { RuleOverride } from "../../verdict/decision/rule-of.ts";

/** The options that decide how a run judges, as they were typed. */
export type DecisionOptions = {
  rule?: string | undefined;
  guardFactor?: string | undefined;
  monteCarlo?: string | undefined;
};

/** The same, understood. */
export type DecisionSettings = { ruleOverride: RuleOverride; monteCarloDraws: number | undefined };

/** Fewer draws cannot tell a second digit. */
const draws = { least: 250_000, most: mostDraws } as const;

/** Understands the options; what cannot be read is a problem, and nothing comes back. */
export function readDecision(options: DecisionOptions, problems: ProblemList): DecisionSettings | undefined {
  const { rule, guardFactor, monteCarlo } = options;
  const name = decisionRules.find((known) => folded(known) === folded(newName(rule ?? "")));
  const factor = numberWithin(guardFactor, 0, 1);
  const count = numberWithin(monteCarlo, draws.least, draws.most);
  const wrong = [
    { is: rule !== undefined && name === undefined, option: "--rule", read: rule, accepted: decisionRules.join(", ") },
    {
      is: guardFactor !== undefined && factor === undefined,
      option: "--guard-factor",
      read: guardFactor,
      accepted: "a number from 0 to 1",
    },
    {
      is: monteCarlo !== undefined && (count === undefined || !Number.isInteger(count)),
      option: "--monte-carlo",
      read: monteCarlo,
      accepted: `a whole number of draws from ${draws.least} to ${draws.most}`,
    },
  ].filter(({ is }) => is);
  for (const { option, read, accepted } of wrong) {
    problems.add("options/not-understood", { file: "command line" }, { read, values: { option, accepted } });
  }
  return wrong.length > 0 ? undefined : { ruleOverride: { name, guardFactor: factor }, monteCarloDraws: count };
}

function numberWithin(text: string | undefined, least: number, most: number): number | undefined {
  const value = Number(text?.trim() || Number.NaN);
  return value >= least && value <= most ? value : undefined;
}

/** What version 0.2.0 called the rule. */
function newName(rule: string): string {
  return folded(rule) === "fourwords" ? "non-binary guard band" : rule;
}

function folded(text: string): string {
  return text.toLowerCase().replace(/[^a-z]/gu, "");
}
