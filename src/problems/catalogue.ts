import { collectProblems } from "./collect-problems.ts";
import type { Entry } from "./entry.ts";
import { filingProblems } from "./filing-problems.ts";
import { lookProblems } from "./look-problems.ts";
import { modelProblems } from "./model-problems.ts";
import { optionProblems } from "./option-problems.ts";
import { plausibilityProblems } from "./plausibility-problems.ts";
import { signingProblems } from "./signing-problems.ts";
import { tableProblems } from "./table-problems.ts";

/**
 * Everything that can be wrong with what a user gives. A published code never changes its meaning.
 * `{name}` is filled in from the problem's values.
 */
export const catalogue = Object.freeze({
  ...tableProblems,
  ...modelProblems,
  ...plausibilityProblems,
  ...optionProblems,
  ...lookProblems,
  ...signingProblems,
  ...filingProblems,
  ...collectProblems,
} satisfies Record<string, Entry>);

export type ProblemCode = keyof typeof catalogue;
