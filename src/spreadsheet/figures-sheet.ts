import type { AddFigure } from "./add-figure.ts";
import { curveFigures } from "./curve-figures.ts";
import { type CurveTable, curveTable } from "./curve-table.ts";
import { Grid } from "./grid.ts";
import { type LineCells, lineFigures } from "./line-figures.ts";
import { loopFigures } from "./loop-figures.ts";
import type { PhaseReadings, ReadingsSheet } from "./readings-sheet.ts";

/** Where the curves of a phase stand: of the first stage that was read, and of the end of the loop where that is another. */
export type PhaseFigures = {
  readings: PhaseReadings;
  curve: CurveTable;
  endCurve: CurveTable | undefined;
  line: LineCells;
};
export type FiguresSheet = { grid: Grid; phases: readonly PhaseFigures[] };

/** The figures of each phase, from the cells of the readings. */
export function figuresSheet({ phases, loop }: ReadingsSheet): FiguresSheet {
  const grid = new Grid("Figures");
  return {
    grid,
    phases: phases.map((readings) => {
      const { phase, title } = readings;
      grid.begin(`${title}: error curve`);
      const curve = curveTable(grid, readings, phase.points, { mask: "used", error: "percent" });
      const { endPoints } = phase;
      if (endPoints) grid.begin(`${title}: error curve at the end of the loop, ${phase.endOf}`);
      const endCurve = endPoints && curveTable(grid, readings, endPoints, { mask: "atEnd", error: "endPercent" });
      grid.begin(`${title}: figures`);
      const add = adding(grid);
      const line = lineFigures(add, readings, loop);
      curveFigures(add, readings, curve);
      loopFigures(add, readings, loop);
      for (const [name, why] of Object.entries(phase.notDetermined)) add(name, `not determined: ${why}`, "");
      return { readings, curve, endCurve, line };
    }),
  };
}

function adding(grid: Grid): AddFigure {
  return (label, cell, unit, where = null, how = "") =>
    grid.at("D", grid.add([label, null, null, cell, unit, where, how]));
}
