import type { AddFigure } from "./add-figure.ts";
import { liveWhere } from "./cell.ts";
import type { LoopCells } from "./loop-cells.ts";
import type { PhaseReadings } from "./readings-sheet.ts";

/** Addresses of what is known of the line of error on reference. */
export type LineCells = { count: string; residual: string | undefined };

/** A least-squares line through the readings that are used, with centred sums; each sum a cell of its own. */
function line(add: AddFigure, readings: PhaseReadings, output: string, unit: string, is: Partial<Fit>) {
  const used = readings.column("used");
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

type Fit = NonNullable<PhaseReadings["phase"]["fit"]>;

/** The line of output on reference, and zero and span error from that of error on reference. */
export function lineFigures(add: AddFigure, readings: PhaseReadings, loop: LoopCells): LineCells {
  const { fit, judged, zeroError, spanError } = readings.phase;
  if (fit !== null) {
    add("Line of output on reference", null, "");
    const found = line(add, readings, judged, judged, fit);
    add("intercept", { formula: found.valueAt("0"), is: fit.intercept }, judged);
    add("its standard error", liveWhere(fit.interceptStdError, found.uncertaintyAt("0")), judged);
    add("standard error of the slope", liveWhere(fit.slopeStdError, `${found.residual}/SQRT(${found.squares})`), "");
    const total = `SUMPRODUCT(${found.used}*(${found.y}-${found.meanY})^2)`;
    add("r²", liveWhere(fit.rSquared, `1-SUMPRODUCT(${found.off})/${total}`), "");
  }
  if (zeroError === null || spanError === null) return { count: "0", residual: undefined };
  add("Line of error on reference", null, "");
  const { standardUncertainty } = zeroError;
  const found = line(
    add,
    readings,
    "percent",
    "% of span",
    standardUncertainty === null ? { residualStdDev: null } : {},
  );
  const percent = "% of span";
  add(
    "zero error",
    { formula: found.valueAt(loop.lower), is: zeroError.percentSpan },
    percent,
    null,
    "the line at range lower",
  );
  add("its standard uncertainty, of the fit", liveWhere(standardUncertainty, found.uncertaintyAt(loop.lower)), percent);
  add(
    "span error",
    { formula: `${found.slope}*${loop.span}`, is: spanError.percentSpan },
    percent,
    null,
    "its rise over the range",
  );
  add(
    "its standard uncertainty, of the fit",
    liveWhere(spanError.standardUncertainty, `${found.residual}/SQRT(${found.squares})*${loop.span}`),
    percent,
  );
  return { count: found.n, residual: found.residual };
}
