import type { ProblemList } from "../problems/problem-list.ts";
import { acceptedIn, whatIsWrong } from "../problems/sentence.ts";
import type { Console } from "./console.ts";

/** The option of every command that answers a program as well as a person. */
export const jsonOption = ["--json", "print one JSON document instead, problems included (docs/formats)"] as const;

/**
 * Prints the answer of a command as one JSON document: its form, what it found, and every problem. Characters that are
 * not plain letters, digits and signs stand as escapes, so that nothing of them reaches a terminal.
 */
export function printJson(console: Console, form: string, answer: object, problems: readonly ProblemList[]): void {
  const told = problems.flatMap(({ located }) =>
    located.map((problem) => {
      const { severity, code, place, read } = problem;
      return { severity, code, place, ...(read !== undefined && { read }), ...wordsOf(problem) };
    }),
  );
  const text = JSON.stringify({ schema: `spanwright-${form}/1`, ...answer, problems: told }, null, 2);
  console.print(text.replace(/[^\n -~]/gu, escaped));
}

function wordsOf(problem: ProblemList["all"][number]) {
  return { says: whatIsWrong(problem), accepted: acceptedIn(problem) };
}

/** A character outside the basic plane is two of JSON's escapes. */
function escaped(character: string): string {
  return Array.from({ length: character.length }, (_, index) => {
    return `\\u${character.charCodeAt(index).toString(16).padStart(4, "0")}`;
  }).join("");
}
