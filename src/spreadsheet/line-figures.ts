import type { AddFigure } from "./add-figure.ts";
import { liveWhere } from "./cell.ts";
import type { LoopCells } from "./loop-cells.ts";
import type { PhaseReadings } from "./readings-sheet.ts";

/** Addresses of what is known of a line of error on reference: how many readings, and what they scatter by about it. */
export type LineCells = { count: string; residual: string };

/** A least-squares line through the readings that are used, with centred sums; each sum a cell of its own. */
function line(add: AddFigure, readings: PhaseReadings, { mask, output, unit }: LineOf, is: Partial<Fit>) {
  const used = readings.column(mask);
  const [x, y] = [readings.column("reference"), readings.column(output)];
  const n = add("n", { formula: `SUM(${used})`, is: is.n }, "readings");
  const meanX = add("mean reference", { formula: `SUMPRODUCT(${used}*${x})/${n}` }, "");
  const meanY = add("mean output", { formula: `SUMPRODUCT(${used}*${y})/${n}` }, unit);
  const squares = add("sum of squares of the reference", { formula: `SUMPRODUCT(${used}*(${x}-${meanX})^2)` }, "");
  const products = `SUMPRODUCT(${used}*(${x}-${meanX})*(${y}-${meanY}))`;
  const slope = add("slope", { formula: `${products}/${squares}`, is: is.slope }, `${unit} per unit of distance`);
  const off = `${used}*(${y}-${meanY}-${slope}*(${x}-${meanX}))^2`;
  const residual =
    is.residualStdDev === null
      ? undefined
      : add(
          "residual standard deviation",
          { formula: `SQRT(SUMPRODUCT(${off})/(${n}-2))`, is: is.residualStdDev },
          `${unit}, n − 2 degrees of freedom`,
        );
  const valueAt = (at: string) => `${meanY}+${slope}*(${at}-${meanX})`;
  const uncertaintyAt = (at: string) => `${residual}*SQRT(1/${n}+(${at}-${meanX})^2/${squares})`;
  return { n, meanY, slope, squares, residual, off, valueAt, uncertaintyAt, y, used };
}

/** Which readings are in it, and the column that is fitted. */
type LineOf = { mask: "used" | "atEnd"; output: string; unit: string };
type Fit = NonNullable<PhaseReadings["phase"]["fit"]>;

/** The line of output on reference. */
export function outputLine(add: AddFigure, readings: PhaseReadings): void {
  const { fit, judged } = readings.phase;
  if (fit === null) return;
  add("Line of output on reference", null, "");
  const found = line(add, readings, { mask: "used", output: judged, unit: judged }, fit);
  add("intercept", { formula: found.valueAt("0"), is: fit.intercept }, judged);
  add("its standard error", liveWhere(fit.interceptStdError, found.uncertaintyAt("0")), judged);
  add("standard error of the slope", liveWhere(fit.slopeStdError, `${found.residual}/SQRT(${found.squares})`), "");
  const total = `SUMPRODUCT(${found.used}*(${found.y}-${found.meanY})^2)`;
  add("r²", liveWhere(fit.rSquared, `1-SUMPRODUCT(${found.off})/${total}`), "");
}

const percent = "% of span";

/** The line of error on reference, and zero and span error from it. */
export function errorLine(add: AddFigure, readings: PhaseReadings, loop: LoopCells): LineCells | undefined {
  const { zeroError, spanError } = readings.phase;
  if (zeroError === null || spanError === null) return undefined;
  add("Line of error on reference", null, "");
  const { standardUncertainty } = zeroError;
  const known = standardUncertainty === null ? { residualStdDev: null } : {};
  const found = line(add, readings, { mask: "used", output: "percent", unit: percent }, known);
  const zero = { formula: found.valueAt(loop.lower), is: zeroError.percentSpan };
  add("zero error", zero, percent, null, "the line at range lower");
  add("its standard uncertainty, of the fit", liveWhere(standardUncertainty, found.uncertaintyAt(loop.lower)), percent);
  const span = { formula: `${found.slope}*${loop.span}`, is: spanError.percentSpan };
  add("span error", span, percent, null, "its rise over the range");
  const ofSlope = `${found.residual}/SQRT(${found.squares})*${loop.span}`;
  add("its standard uncertainty, of the fit", liveWhere(spanError.standardUncertainty, ofSlope), percent);
  return found.residual === undefined ? undefined : { count: found.n, residual: found.residual };
}

/** The line of the error at the end of the loop, where a budget rests on the scatter about it. */
export function endLine(add: AddFigure, readings: PhaseReadings): LineCells | undefined {
  add("Line of the error at the end of the loop", null, "");
  const { n, residual } = line(add, readings, { mask: "atEnd", output: "endPercent", unit: percent }, {});
  return residual === undefined ? undefined : { count: n, residual };
}
