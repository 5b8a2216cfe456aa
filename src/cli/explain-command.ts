import { ProblemList } from "../problems/problem-list.ts";
import { type Console, complainOf } from "./console.ts";

/** `spanwright explain`: what a figure is; without a name, which there are. */
export async function explainCommand(figure: string | undefined, console: Console): Promise<0 | 2> {
  const { explainFigure, figureKeys } = await import("../jobs/explain-figure.ts");
  const explanation = explainFigure(figure);
  if (explanation !== undefined) {
    console.print(explanation);
    return 0;
  }
  const problems = new ProblemList();
  problems.add("options/figure-unknown", { file: "command line" }, { read: figure, values: { choices: figureKeys() } });
  complainOf(problems, console);
  return 2;
}
