import { catalogue } from "./catalogue.ts";
import type { Place, Problem } from "./problem.ts";
import { visibleText } from "./visible-text.ts";

const longestQuotation = 60;

/**
 * The place of a problem as a terminal or an editor can follow it, or as somebody finds it in a spreadsheet.
 *
 * @returns "file:line:column-name", or "file, sheet name, cell C14 (column-name)", without the parts that are not known
 */
export function placeText({ file, sheet, ...within }: Place): string {
  const parts = [within.line, within.column].filter((part) => part !== undefined);
  if (sheet === undefined) return oneLine([file, ...parts].join(":"));
  return oneLine([file, `sheet ${sheet}`, ...placeInSheet(within)].join(", "));
}

function placeInSheet({ line, column, cell }: Omit<Place, "file" | "sheet">): readonly string[] {
  const row = line === undefined ? undefined : `row ${line}`;
  const where = cell === undefined ? row : `cell ${cell}`;
  if (where === undefined) return column === undefined ? [] : [`column ${column}`];
  return [column === undefined ? where : `${where} (${column})`];
}

/**
 * A further place in the same file, after one that was named in full.
 *
 * @returns "line 14", "row 14" or "cell C14"; the whole place where it has no line
 */
export function furtherPlaceText(place: Place): string {
  const { sheet, line, cell } = place;
  if (line === undefined) return placeText(place);
  return cell === undefined ? `${sheet === undefined ? "line" : "row"} ${line}` : `cell ${cell}`;
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

/** What is a line of a text file is a row of a sheet. */
function filled(template: string, { values, place }: Problem): string {
  const fitting = place.sheet === undefined ? template : template.replace(/\bline(s?) \{/gu, "row$1 {");
  return oneLine(fitting.replace(/\{(\w+)\}/gu, (_, name: string) => String(values[name] ?? "")));
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
