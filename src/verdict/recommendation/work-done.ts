import type { RecommendedAction, RecommendedStep } from "./step.ts";

/** How what was done compares with what the loop as found asked for. */
export const agreements = ["as asked", "a part of it", "something else", "nothing was done", "not stated"] as const;

/** What was asked for, what was done, and how they agree. */
export type WorkDone = { asked: RecommendedAction[]; done: string | null; agreement: (typeof agreements)[number] };

const kindOf: Readonly<Record<RecommendedAction, string>> = {
  leave: "none",
  "re-teach": "re-teach",
  "re-scale": "re-scale",
  "repair wiring or set-up": "repair",
  replace: "replace",
  "cannot be decided": "none",
};

/**
 * Compares the work that was done with what the loop as found asked for.
 *
 * @param steps that were asked for, in their order
 * @param adjustment of the table calibrations, the kind of work that weighs most; undefined where it is empty
 * @param also what was adjusted besides
 * @returns the kinds asked for, each once; "a part of it" where more kinds were asked for than the table names
 * Source: own choice.
 * @example workDone([{ action: "re-teach" }], "re-teach") // { asked: ["re-teach"], done: "re-teach",
 *   agreement: "as asked" }
 */
export function workDone(
  steps: readonly Pick<RecommendedStep, "action">[],
  adjustment: string | undefined,
  also: readonly string[] = [],
): WorkDone {
  const asked = [...new Set(steps.map(({ action }) => action))];
  const kinds = new Set(asked.map((action) => kindOf[action]));
  return { asked, done: adjustment ?? null, agreement: agreementOf(kinds, adjustment, also) };
}

function agreementOf(
  kinds: ReadonlySet<string>,
  adjustment: string | undefined,
  also: readonly string[],
): WorkDone["agreement"] {
  if (adjustment === undefined) return "not stated";
  const toDo = [...kinds].filter((kind) => kind !== "none");
  if (toDo.length === 0) return adjustment === "none" ? "as asked" : "something else";
  if (adjustment === "none") return "nothing was done";
  const done = [adjustment, ...also];
  if (!done.some((kind) => kinds.has(kind))) return "something else";
  return toDo.every((kind) => done.includes(kind)) ? "as asked" : "a part of it";
}
