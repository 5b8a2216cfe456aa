import { ProblemList } from "../../problems/problem-list.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";

/** `spanwright explain`: what a figure is; without a name, which there are. */
export async function explainCommand(figure: string | undefined, console: Console): Promise<0 | 2> {
  const { explainFigure, figuresNear } = await import("../../jobs/workbook/explain-figure.ts");
  const explanation = explainFigure(figure);
  if (explanation !== undefined) {
    console.print(explanation);
    return 0;
  }
  const near = figuresNear(figure ?? "");
  const nearest = near.length === 0 ? "" : `; did you mean ${near.join(", or ")}?`;
  const problems = new ProblemList();
  problems.add("options/figure-unknown", { file: "command line" }, { read: figure, values: { nearest } });
  complainOf(problems, console);
  return 2;
}

export const addExplainCommand: AddCommand = (program, console, settle) => {
  program
    .command("explain")
    .description("say what a figure of a record is: meaning, formula, unit, source")
    .argument("[figure]", "its name, such as 'zero error'; without it, all names")
    .action(async (figure: string | undefined) => {
      settle(await explainCommand(figure, console));
    });
};
