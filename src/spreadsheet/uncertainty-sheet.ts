import type { CalibrationRecord, JudgedPointRecord } from "../record/record-schema.ts";
import { budgetLineCells } from "./budget-line.ts";
import { budgetRows } from "./budget-rows.ts";
import type { BudgetCells } from "./coverage-cells.ts";
import type { CurveFigures, FiguresSheet, PhaseFigures } from "./figures-sheet.ts";
import { Grid } from "./grid.ts";
import type { LoopCells } from "./loop-cells.ts";
import { stageOfPart } from "./stage-of-part.ts";

/** The budgets of one curve, in the order of its points. */
export type CurveBudgets = CurveFigures & { budgets: readonly BudgetCells[] };
export type PhaseBudgets = Omit<PhaseFigures, "curves"> & { curves: readonly CurveBudgets[] };
export type UncertaintySheet = { grid: Grid; phases: readonly PhaseBudgets[] };

/** The budget of every test point: a block each, line by line, then k and U. */
export function uncertaintySheet(
  record: CalibrationRecord,
  { phases }: FiguresSheet,
  loop: LoopCells,
): UncertaintySheet {
  const grid = new Grid("Uncertainty");
  grid.add(["Budgets: uncertainty of the mean error at each test point"], "title");
  grid.add([
    "Standard uncertainties in distance. Degrees of freedom that are empty are unlimited. Which scatter of the readings a budget takes, the program's tests decided.",
  ]);
  return {
    grid,
    phases: phases.map(({ readings, curves }) => ({
      readings,
      curves: curves.map((curve) => {
        const stage = curve.isEnd ? stageOfPart(readings.phase.endOf) : readings.phase.judged;
        const of = curve.isEnd ? `${readings.title}, end of the loop` : readings.title;
        return {
          ...curve,
          budgets: curve.points.map((point, index) => {
            const row = curve.table.first + index;
            grid.begin(`${of}: test point ${index + 1}, ${point.direction}`);
            return budgetBlock(grid, point, { record, loop, curve, stage, row });
          }),
        };
      }),
    })),
  };
}

type BlockBasis = Pick<Parameters<typeof budgetLineCells>[1], "record" | "loop" | "curve" | "stage" | "row">;

function budgetBlock(grid: Grid, point: JudgedPointRecord, of: BlockBasis): BudgetCells {
  const reference = of.curve.table.at("reference", of.row);
  return budgetRows(grid, point, (line, steps) => budgetLineCells(line, { ...of, point, reference, steps }));
}
