import { catalogue } from "./catalogue.ts";
import type { Place, Problem } from "./problem.ts";
import { visibleText } from "./visible-text.ts";

const longestQuotation = 60;

/**
 * The place of a problem as a terminal or an editor can follow it.
 *
 * @returns "file:line:column-name", without the parts that are not known
 */
export function placeText({ file, line, column }: Place): string {
  return oneLine([file, line, column].filter((part) => part !== undefined).join(":"));
}

/**
 * A problem in words: where, what is wrong, what was read, what is accepted.
 *
 * @returns one line of text, without control characters
 */
export function sentence(problem: Problem): string {
  const { wrong, accepted } = catalogue[problem.code];
  const read = problem.read === undefined ? "" : `; read ${quoted(problem.read)}`;
  return `${placeText(problem.place)}: ${filled(wrong, problem)}${read}; accepted: ${filled(accepted, problem)}`;
}

/**
 * A problem in words for a record's page, where the place is shown apart.
 *
 * @returns what is wrong, as a sentence
 */
export function whatIsWrong(problem: Problem): string {
  return filled(catalogue[problem.code].wrong, problem);
}

/**
 * What would be accepted in its place.
 *
 * @returns words for "accepted: …"
 */
export function acceptedIn(problem: Problem): string {
  return filled(catalogue[problem.code].accepted, problem);
}

function filled(template: string, { values }: Problem): string {
  return oneLine(template.replace(/\{(\w+)\}/gu, (_, name: string) => String(values[name] ?? "")));
}

/** A text as a sentence quotes it: in one line, cut where it is long. */
export function quoted(text: string): string {
  const characters = [...oneLine(text)];
  const shown = characters.length > longestQuotation ? [...characters.slice(0, longestQuotation), "…"] : characters;
  return `"${shown.join("")}"`;
}

/** Names and cells come from the user's files: whatever would move a terminal's cursor is shown instead. */
function oneLine(text: string): string {
  return visibleText(text.replace(/\s+/gu, " "));
}
