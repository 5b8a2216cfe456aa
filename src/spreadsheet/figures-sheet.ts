import type { JudgedPointRecord } from "../record/record-schema.ts";
import type { AddFigure } from "./add-figure.ts";
import { curveFigures } from "./curve-figures.ts";
import { type CurveOf, type CurveTable, curveTable } from "./curve-table.ts";
import { type CycleCells, cycleCells } from "./cycle-cells.ts";
import { Grid } from "./grid.ts";
import { endLine, errorLine, type LineCells, outputLine } from "./line-figures.ts";
import { lineValues } from "./line-values.ts";
import { loopFigures } from "./loop-figures.ts";
import type { PhaseReadings, ReadingsSheet } from "./readings-sheet.ts";

/** An error curve of a phase, and what its budgets rest on. */
export type CurveFigures = {
  /** Of which stage: the first that was read, or the end of the loop where that is another. */
  isEnd: boolean;
  points: readonly JudgedPointRecord[];
  table: CurveTable;
  line: LineCells | undefined;
  cycles: CycleCells | undefined;
};

export type PhaseFigures = { readings: PhaseReadings; curves: readonly CurveFigures[] };
export type FiguresSheet = { grid: Grid; phases: readonly PhaseFigures[] };

const ofFirst: CurveOf = { mask: "used", error: "percent" };
const ofEnd: CurveOf = { mask: "atEnd", error: "endPercent" };

/** The figures of each phase, from the cells of the readings. */
export function figuresSheet({ phases, loop }: ReadingsSheet): FiguresSheet {
  const grid = new Grid("Figures");
  const add: AddFigure = (label, cell, unit, where = null, how = "") =>
    grid.at("D", grid.add([label, null, null, cell, unit, where, how]));
  const withFigures = phases.map((readings): PhaseFigures => {
    const { phase, title } = readings;
    const { points, endPoints, endOf, notDetermined } = phase;
    grid.begin(`${title}: error curve`);
    const table = curveTable(grid, readings, points, ofFirst);
    if (endPoints) grid.begin(`${title}: error curve at the end of the loop, ${endOf}`);
    const endTable = endPoints && curveTable(grid, readings, endPoints, ofEnd);
    grid.begin(`${title}: figures`);
    outputLine(add, readings);
    const line = errorLine(add, readings, loop);
    curveFigures(add, readings, table);
    loopFigures(add, readings, loop);
    lineValues(add, phase);
    for (const [name, why] of Object.entries(notDetermined)) add(name, `not determined: ${why}`, "");
    const curves = [{ isEnd: false, points, table, line, cycles: cycleCells(add, readings, points, table, ofFirst) }];
    if (endPoints === undefined || endTable === undefined) return { readings, curves };
    const end = {
      ...{ isEnd: true, points: endPoints, table: endTable },
      line: endPoints.some(isAboutLine) ? endLine(add, readings) : undefined,
      cycles: cycleCells(add, readings, endPoints, endTable, ofEnd),
    };
    return { readings, curves: [...curves, end] };
  });
  return { grid, phases: withFigures };
}

function isAboutLine({ budget }: JudgedPointRecord): boolean {
  return budget.lines.some(({ source }) => source.startsWith("scatter about the line"));
}
