import type { SheetProblem } from "../state/judge-sheet.ts";

/** What is wrong with a row, and what is doubted in it. */
export function RowProblems({ problems }: { problems: readonly SheetProblem[] }) {
  return problems.map(({ says, column, isStop }) => (
    <p key={`${column} ${says}`} class={isStop ? "problem" : "problem is-doubt"}>
      {isStop ? "" : "In doubt: "}
      {column === undefined ? "" : `${column}: `}
      {says}
    </p>
  ));
}
