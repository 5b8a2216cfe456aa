import { cyclesOf } from "../model/scatter-source.ts";
import type { BudgetLine, LineCellsOf } from "./budget-line.ts";
import { type BudgetCells, type Budgeted, coverageCells } from "./coverage-cells.ts";
import type { Grid } from "./grid.ts";

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

/** What stands in a line; `steps` is a formula for what the display could show, root of its summed squares. */
type CellsOf = (line: BudgetLine, steps: string) => LineCellsOf;

/** A budget line by line, then what it comes to and what it could not take in. */
export function budgetRows(grid: Grid, of: Budgeted, cellsOf: CellsOf): BudgetCells {
  grid.add(headings, "heading");
  const { lines, missing } = of.budget;
  const first = grid.next;
  const last = first + lines.length - 1;
  const stepCells = lines.flatMap((line, index) => (isStep(line) ? [grid.at("G", first + index)] : []));
  const steps = stepCells.length === 0 ? "0" : `SQRT(SUMSQ(${stepCells.join(",")}))`;
  for (const line of lines) addLine(grid, line, cellsOf(line, steps), grid.range("G", first, last));
  const cells = coverageCells(grid, { first, last }, of);
  for (const gap of missing) grid.add([`not in the budget: ${gap}`]);
  const cyclesAt = lines.findIndex(({ source }) => cyclesOf(source) !== undefined);
  return { ...cells, ofCycles: cyclesAt === -1 ? "0" : grid.at("G", first + cyclesAt) };
}

function addLine(
  grid: Grid,
  line: BudgetLine,
  { value, divisor, sensitivity, freedom, how }: LineCellsOf,
  all: string,
) {
  const row = grid.next;
  const at = (letter: string) => grid.at(letter, row);
  const [own, degrees] = [at("G"), at("H")];
  grid.add([
    ...[line.source, value, line.unit, line.distribution, divisor, sensitivity],
    { formula: `ABS(${at("F")})*${at("B")}/${at("E")}`, is: line.standardUncertainty },
    freedom,
    { formula: `${own}^2/SUMSQ(${all})`, is: line.share },
    { formula: `IF(AND(${at("D")}="rectangular",${degrees}=""),${own},0)` },
    { formula: `IF(${degrees}="",0,${own}^4/N(${degrees}))` },
    how,
  ]);
}

/** A line of what the display could show, of one reading; the thermometer was read once for all of them. */
function isStep({ source, unit }: BudgetLine): boolean {
  if (unit === "°C") return false;
  return /(?:: resolution|: step of the readings)$|^resolution of the/u.test(source);
}
