import type { ProblemList } from "../problems/problem-list.ts";
import { sentence } from "../problems/sentence.ts";

/** Where a command speaks to: its output, its complaints, and today's date. */
export type Console = {
  print: (text: string) => void;
  complain: (text: string) => void;
  isTerminal: boolean;
  today: () => string;
};

/** Prints every problem, those that stop first, each at its place. */
export function complainOf(problems: ProblemList, console: Console): void {
  for (const severity of ["stop", "warn"] as const) {
    for (const problem of problems.all) {
      if (problem.severity === severity)
        console.complain(`${severity === "stop" ? "wrong" : "note"}  ${sentence(problem)}`);
    }
  }
}
