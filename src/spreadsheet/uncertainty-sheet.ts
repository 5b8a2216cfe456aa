import type { CalibrationRecord, JudgedPointRecord } from "../record/record-schema.ts";
import { type BudgetLine, budgetLineCells } from "./budget-line.ts";
import { type BudgetCells, coverageCells } from "./coverage-cells.ts";
import type { CurveFigures, FiguresSheet, PhaseFigures } from "./figures-sheet.ts";
import { Grid } from "./grid.ts";
import type { LoopCells } from "./loop-cells.ts";
import { stageOfPart } from "./stage-of-part.ts";

/** The budgets of one curve, in the order of its points. */
export type CurveBudgets = CurveFigures & { budgets: readonly BudgetCells[] };
export type PhaseBudgets = Omit<PhaseFigures, "curves"> & { curves: readonly CurveBudgets[] };
export type UncertaintySheet = { grid: Grid; phases: readonly PhaseBudgets[] };

const headings = [
  "contribution",
  "value",
  "unit",
  "distribution",
  "divisor",
  "sensitivity",
  "standard uncertainty",
  "degrees of freedom",
  "share of the variance",
  "if rectangular",
  "u⁴/ν",
  "from",
];

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
  grid.add(headings, "heading");
  const { lines } = point.budget;
  const first = grid.next;
  const last = first + lines.length - 1;
  const at = (letter: string, row: number) => grid.at(letter, row);
  const stepCells = lines.flatMap((line, index) => (isStep(line) ? [at("G", first + index)] : []));
  const steps = stepCells.length === 0 ? "0" : `SQRT(SUMSQ(${stepCells.join(",")}))`;
  const reference = of.curve.table.at("reference", of.row);
  for (const line of lines) {
    const row = grid.next;
    const { value, divisor, sensitivity, freedom, how } = budgetLineCells(line, { ...of, point, reference, steps });
    const [own, degrees] = [at("G", row), at("H", row)];
    grid.add([
      ...[line.source, value, line.unit, line.distribution, divisor, sensitivity],
      { formula: `ABS(${at("F", row)})*${at("B", row)}/${at("E", row)}`, is: line.standardUncertainty },
      freedom,
      { formula: `${own}^2/SUMSQ(${grid.range("G", first, last)})`, is: line.share },
      { formula: `IF(AND(${at("D", row)}="rectangular",${degrees}=""),${own},0)` },
      { formula: `IF(${degrees}="",0,${own}^4/N(${degrees}))` },
      how,
    ]);
  }
  const cells = coverageCells(grid, { first, last }, point);
  for (const gap of point.budget.missing) grid.add([`not in the budget: ${gap}`]);
  const cyclesAt = lines.findIndex(({ source }) => source.startsWith("differences between cycles"));
  return { ...cells, ofCycles: cyclesAt === -1 ? "0" : at("G", first + cyclesAt) };
}

/** A line of what the display could show, of one reading; the thermometer was read once for all of them. */
function isStep({ source, unit }: BudgetLine): boolean {
  if (unit === "°C") return false;
  return /(?:: resolution|: step of the readings)$|^resolution of the/u.test(source);
}
