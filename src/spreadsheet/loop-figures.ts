import type { AddFigure } from "./add-figure.ts";
import { liveWhere } from "./cell.ts";
import type { LoopCells } from "./loop-cells.ts";
import type { PhaseReadings } from "./readings-sheet.ts";

/** What the loop as a whole is off by, and what part of the tolerance the worst reading takes. */
export function loopFigures(add: AddFigure, { phase, column }: PhaseReadings, loop: LoopCells): void {
  const { loopError, worst } = phase;
  if (loopError !== null) {
    const own = column(phase.judged === "value" ? "error" : "loop");
    const errors = `${column("atEnd")}*${own}`;
    const [most, least] = [`SUMPRODUCT(MAX(${errors}))`, `SUMPRODUCT(MIN(${errors}))`];
    const greatest = add(
      "greatest loop error",
      { formula: `IF(${most}>=-${least},${most},${least})`, is: loopError.distance },
      "distance",
      { formula: `INDEX(${column("line")},MATCH(IF(${most}>=-${least},${most},${least}),${own},0))` },
      "line of the table",
    );
    add("the same", { formula: `100*${greatest}/${loop.span}`, is: loopError.percentSpan }, "% of span");
  }
  const part = column("part");
  add("greatest part of the tolerance", liveWhere(worst?.partOfTolerance, `MAX(${part})`), "of any reading");
}
