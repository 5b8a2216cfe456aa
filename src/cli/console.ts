import { groupedSentences } from "../problems/grouped-sentences.ts";
import type { ProblemList } from "../problems/problem-list.ts";

/** Where a command speaks to: its output, its complaints, today's date and the time, and who is asked for secrets. */
export type Console = {
  print: (text: string) => void;
  complain: (text: string) => void;
  isTerminal: boolean;
  today: () => string;
  /** Date and time with offset, to the second. */
  now: () => string;
  /** Asks for a passphrase, unseen; nothing where none is given. */
  askSecret: (question: string) => Promise<string | undefined>;
};

/** Prints every problem, those that stop first, each at its place and those of one cause together. */
export function complainOf(problems: ProblemList, console: Console): void {
  for (const severity of ["stop", "warn"] as const) {
    const ofSeverity = problems.located.filter((problem) => problem.severity === severity);
    for (const line of groupedSentences(ofSeverity)) {
      console.complain(`${severity === "stop" ? "wrong" : "note"}  ${line}`);
    }
  }
}
