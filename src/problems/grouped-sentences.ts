import type { Problem } from "./problem.ts";
import { furtherPlaceText, quoted, sentence } from "./sentence.ts";

/** As many further places a line names before it only counts. */
const mostPlaces = 6;

/**
 * Problems in words, grouped by cause: those of one code in one column of one file are one line, with their count and
 * their first places, in the order in which the first of each was found. What has no line, such as an option, is grouped
 * only with what says the same.
 */
export function groupedSentences(problems: readonly Problem[]): readonly string[] {
  const groups = new Map<string, Problem[]>();
  for (const problem of problems) {
    const { file, sheet, line, column } = problem.place;
    const key = JSON.stringify([problem.code, file, sheet, column, line === undefined && sentence(problem)]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [problem]);
    else group.push(problem);
  }
  return [...groups.values()].map(inOneLine);
}

function inOneLine([first, ...others]: readonly Problem[]): string {
  if (first === undefined) return "";
  if (others.length === 0) return sentence(first);
  const places = others.slice(0, mostPlaces).map((other) => furtherPlace(other, first));
  const rest = others.length > mostPlaces ? ", …" : "";
  return `${sentence(first)}; and ${others.length} more like it: ${places.join(", ")}${rest}`;
}

/** The line or the cell, and what was read there where that is something else. */
function furtherPlace({ place, read }: Problem, first: Problem): string {
  const where = furtherPlaceText(place);
  return read === undefined || read === first.read ? where : `${where} ${quoted(read)}`;
}
