import type { ReadingRecord } from "../record/record-schema.ts";
import type { AddFigure } from "./add-figure.ts";
import { liveWhere } from "./cell.ts";
import { type CurveTable, firstPoint, meanAt } from "./curve-table.ts";
import { isUsed } from "./readings-columns.ts";
import type { PhaseReadings } from "./readings-sheet.ts";

const percent = "% of span";

/** The figures of the error curve, of its readings and of their repeats. */
export function curveFigures(add: AddFigure, readings: PhaseReadings, curve: CurveTable): void {
  if (readings.phase.points.length === 0) return;
  readingFigures(add, readings);
  greatestError(add, readings, curve);
  linearities(add, readings, curve);
  hystereses(add, readings, curve);
  repeatabilities(add, readings, curve);
}

function readingFigures(add: AddFigure, { phase, column }: PhaseReadings): void {
  const [errors, used] = [column("percent"), column("used")];
  const { inaccuracy, meanAbsoluteError } = phase;
  add("inaccuracy, upwards", liveWhere(inaccuracy?.positive, `SUMPRODUCT(MAX(0,${used}*${errors}))`), percent);
  add("inaccuracy, downwards", liveWhere(inaccuracy?.negative, `SUMPRODUCT(MIN(0,${used}*${errors}))`), percent);
  const sizes = `SUMPRODUCT(${used}*ABS(${errors}))/SUM(${used})`;
  add("mean absolute error", liveWhere(meanAbsoluteError?.percentSpan, sizes), percent);
}

function greatestError(add: AddFigure, { phase }: PhaseReadings, { column }: CurveTable): void {
  const greatest = `MAX(${column("size")})`;
  const place = `MATCH(${greatest},${column("size")},0)`;
  const where = { formula: `INDEX(${column("point")},${place})`, is: phase.maximumMeasuredError?.point };
  const is = phase.maximumMeasuredError?.percentSpan;
  add("maximum measured error", liveWhere(is, `INDEX(${column("greatest")},${place})`), percent, where, "test point");
}

function linearities(add: AddFigure, { phase }: PhaseReadings, { column, chords }: CurveTable): void {
  const { independent, terminal, zeroBased, leastSquares } = phase.linearity;
  const [x, y] = [column("reference"), column("mean")];
  const { referenceAtFirst, errorAtFirst } = firstPoint(column);
  const last = `MAX(${x})`;
  const terminalSlope = `(${meanAt(column, last)}-${errorAtFirst})/(${last}-${referenceAtFirst})`;
  const off = (line: string) => `SUMPRODUCT(MAX(ABS(${y}-(${line}))))`;
  if (chords === undefined) {
    add("linearity, independent", independent, percent, null, "value: too many test points to show every chord");
  } else {
    add(
      "linearity, independent",
      liveWhere(independent, chords),
      percent,
      null,
      "greatest of the chords beside the curve",
    );
  }
  const terminalLine = `${errorAtFirst}+${terminalSlope}*(${x}-${referenceAtFirst})`;
  add("linearity, terminal-based", liveWhere(terminal, off(terminalLine)), percent);
  add("linearity, zero-based", liveWhere(zeroBased, `MAX(${column("pairs")})`), percent);
  if (leastSquares === null) return;
  const [meanX, meanY] = [`AVERAGE(${x})`, `AVERAGE(${y})`];
  const slope = add(
    "slope of the curve",
    { formula: `SUMPRODUCT((${x}-${meanX})*(${y}-${meanY}))/SUMPRODUCT((${x}-${meanX})^2)` },
    `${percent} per unit of distance`,
  );
  add("linearity, least-squares", { formula: off(`${meanY}+${slope}*(${x}-${meanX})`), is: leastSquares }, percent);
}

function hystereses(add: AddFigure, readings: PhaseReadings, { column }: CurveTable): void {
  const { hysteresis } = readings.phase;
  if (hysteresis === null) return;
  const gaps = column("gap");
  const where = { formula: `INDEX(${column("point")},MATCH(MAX(${gaps}),${gaps},0))`, is: hysteresis.point };
  add("hysteresis", { formula: `MAX(${gaps})`, is: hysteresis.percentSpan }, percent, where, "test point");
  const { withinOneCycle } = hysteresis;
  if (withinOneCycle === null) return;
  const cells = cyclesAndPoints(readings).map(({ cycle, number }) =>
    add(`cycle ${cycle}, test point ${number}`, { formula: gapOf(readings, cycle, number) }, percent),
  );
  const [, lastCell] = cells.at(-1)?.split("!") ?? [];
  const all = `${cells[0]}:${lastCell}`;
  add("hysteresis within one cycle", { formula: `MAX(${all})`, is: withinOneCycle.percentSpan }, percent);
}

/** Rising less falling mean of one cycle at one test point, its size. */
function gapOf({ column }: PhaseReadings, cycle: number, number: number): string {
  const meanOf = (direction: string) => {
    const mask = `${column("used")}*(${column("number")}=${number})*(${column("cycle")}=${cycle})*(${column("direction")}="${direction}")`;
    return `SUMPRODUCT(${mask}*${column("percent")})/SUMPRODUCT(${mask})`;
  };
  return `ABS(${meanOf("rising")}-${meanOf("falling")})`;
}

/** Each cycle and test point that was read in both directions. */
function cyclesAndPoints({ phase }: PhaseReadings): readonly { cycle: number; number: number }[] {
  const used = phase.readings.filter(isUsed);
  const found = new Map<string, ReadingRecord>();
  for (const reading of used) {
    const isBoth = used.some(
      (other) =>
        other.cycle === reading.cycle && other.point === reading.point && other.direction !== reading.direction,
    );
    if (isBoth) found.set(`${reading.cycle} ${reading.point}`, reading);
  }
  const numbers = new Map(phase.points.map(({ point }, index) => [point, index + 1]));
  return [...found.values()].map(({ cycle = 1, point }) => ({ cycle, number: numbers.get(point) ?? 0 }));
}

function repeatabilities(add: AddFigure, { phase }: PhaseReadings, { column, squares, freedom }: CurveTable): void {
  const { repeatability } = phase;
  if (repeatability === null) return;
  const spreads = [column("spreadUp"), column("spreadDown")];
  add("repeatability", { formula: `MAX(${spreads.join(",")})`, is: repeatability.percentSpan }, percent);
  const degrees = { formula: freedom, is: repeatability.degreesOfFreedom };
  const pooled = {
    formula: `SQRT(${squares}/${add("its degrees of freedom", degrees, "")})`,
    is: repeatability.pooledStdDev,
  };
  add("pooled standard deviation", pooled, percent);
}
