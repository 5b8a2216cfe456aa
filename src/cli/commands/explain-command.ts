import { ProblemList } from "../../problems/problem-list.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { jsonOption, printJson } from "../print-json.ts";

/** `spanwright explain`: what a figure is; without a name, which there are. */
export async function explainCommand(figure: string | undefined, console: Console, json = false): Promise<0 | 2> {
  const { explainFigure, figuresMeant, figuresNear } = await import("../../jobs/workbook/explain-figure.ts");
  const explanation = explainFigure(figure);
  if (explanation !== undefined && json) {
    printJson(console, "explain", { figures: figuresMeant(figure) }, []);
    return 0;
  }
  if (explanation !== undefined) {
    console.print(explanation);
    return 0;
  }
  const near = figuresNear(figure ?? "");
  const nearest = near.length === 0 ? "" : `; did you mean ${near.join(", or ")}?`;
  const problems = new ProblemList();
  problems.add("options/figure-unknown", { file: "command line" }, { read: figure, values: { nearest } });
  if (json) printJson(console, "explain", { figures: [] }, [problems]);
  else complainOf(problems, console);
  return 2;
}

export const addExplainCommand: AddCommand = (program, console, settle) => {
  program
    .command("explain")
    .description("say what a figure of a record is: meaning, formula, unit, source")
    .argument("[figure]", "its name, such as 'zero error'; without it, all names")
    .option(...jsonOption)
    .action(async (figure: string | undefined, { json }: { json?: boolean }) => {
      settle(await explainCommand(figure, console, json));
    });
};
