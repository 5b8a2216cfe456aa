import { certificateSource } from "../model/certificate-source.ts";
import { cyclesOf } from "../model/scatter-source.ts";
import type { CalibrationRecord, JudgedPointRecord, PhaseRecord } from "../record/record-schema.ts";
import { convertDifference } from "../units/convert.ts";
import { unitOf } from "../units/unit-table.ts";
import type { Cell } from "./cell.ts";
import type { CurveFigures } from "./figures-sheet.ts";
import type { LoopCells } from "./loop-cells.ts";

export type BudgetLine = JudgedPointRecord["budget"]["lines"][number];

/** What the lines of one budget rest on. */
export type LineBasis = {
  record: CalibrationRecord;
  loop: LoopCells;
  curve: CurveFigures;
  stage: PhaseRecord["judged"];
  point: JudgedPointRecord;
  /** Address of the mean reference of the test point, and the row of the curve. */
  reference: string;
  row: number;
  /** Root of the summed squares of the steps of the display, distance. */
  steps: string;
};

/** What stands in a line: its value, divisor, sensitivity and degrees of freedom; live where they follow from readings. */
export type LineCellsOf = { value: Cell; divisor: Cell; sensitivity: Cell; freedom: Cell; how: string };

/** The cells of one contribution; whatever does not follow from the readings is the record's value. */
export function budgetLineCells(line: BudgetLine, basis: LineBasis): LineCellsOf {
  const stated: LineCellsOf = {
    value: line.value,
    divisor: line.divisor,
    sensitivity: sensitivityOf(line, basis),
    freedom: line.degreesOfFreedom,
    how: "value: as stated in the tables",
  };
  return { ...stated, ...scatterOf(line, basis), ...growingOf(line, basis) };
}

function sensitivityOf({ sensitivity, unit }: BudgetLine, { loop, stage, record, reference }: LineBasis): Cell {
  if (sensitivity === 1) return 1;
  const { airTemperature } = record.calibration;
  if (unit === "°C" && airTemperature !== undefined) {
    return { formula: `ABS(${reference})/(2*(${airTemperature}+273.15))`, is: sensitivity };
  }
  const { lower, upper } = loop.ends(stage);
  return { formula: `ABS(${loop.span}/(${upper}-${lower}))`, is: sensitivity };
}

/** What the readings scatter by: pooled, of the point, about the line, and what the cycles differ by. */
function scatterOf(line: BudgetLine, basis: LineBasis): Partial<LineCellsOf> {
  const { source, value, divisor, degreesOfFreedom } = line;
  const { curve, loop, point, row } = basis;
  const { table, cycles } = curve;
  const count = table.at(point.direction === "rising" ? "countUp" : "countDown", row);
  const ofReadings = { divisor: { formula: `SQRT(${count})`, is: divisor } };
  const inDistance = (formula: string) => ({ formula: `${formula}*${loop.span}/100`, is: value });
  const free = (formula: string) => ({ formula, is: degreesOfFreedom ?? undefined });
  const hasCycles = point.budget.lines.some((one) => cyclesOf(one.source) === "measured");
  const asFitted = { how: "value: fitted by the program, cycle by cycle" };
  if (cyclesOf(source) === "assumed") return { ...scatterAsIs(line, basis), how: "assumed: the scatter of a reading" };
  if (cyclesOf(source) === "measured") {
    if (cycles === undefined) return asFitted;
    return { value: inDistance(cycles.between), freedom: free(cycles.betweenFreedom), how: "Figures" };
  }
  if (source.startsWith("repeatability at this point")) {
    if (hasCycles) return { ...ofReadings, ...asFitted };
    const [up, down] = [table.at("countUp", row), table.at("countDown", row)];
    const freedom = `(MAX(0,${up}-1)+MAX(0,${down}-1))`;
    const squares = `SUM(${table.at("squaresUp", row)},${table.at("squaresDown", row)})`;
    return { ...ofReadings, value: inDistance(`SQRT(${squares}/${freedom})`), freedom: free(freedom), how: "Figures" };
  }
  if (source.startsWith("repeatability")) {
    if (hasCycles && cycles === undefined) return { ...ofReadings, ...asFitted };
    const deviation = cycles?.within ?? `SQRT(${table.squares}/${table.freedom})`;
    const freedom = free(cycles?.withinFreedom ?? table.freedom);
    return { ...ofReadings, value: inDistance(deviation), freedom, how: "Figures: pooled" };
  }
  if (source.startsWith("scatter about the line at this point"))
    return { ...ofReadings, how: "value: the sizes of the residuals, fitted on the distance by the program" };
  if (source.startsWith("scatter about the line")) return { ...ofReadings, ...aboutLine(line, basis) };
  return {};
}

/** What one reading scatters by, for the line of what was not measured; its name says which. */
function scatterAsIs(line: BudgetLine, basis: LineBasis): Partial<LineCellsOf> {
  if (line.source.includes("scatter about the line")) return aboutLine(line, basis);
  const { squares, freedom } = basis.curve.table;
  return {
    value: { formula: `SQRT(${squares}/${freedom})*${basis.loop.span}/100`, is: line.value },
    freedom: { formula: freedom, is: line.degreesOfFreedom ?? undefined },
  };
}

/** The scatter about the line less what the steps of the display make of it, which have lines of their own. */
function aboutLine({ value, degreesOfFreedom }: BudgetLine, { curve, loop, steps }: LineBasis): Partial<LineCellsOf> {
  if (curve.line === undefined) return { how: "value: scatter about the line" };
  const { residual, count } = curve.line;
  const deviation = `(${residual}*${loop.span}/100)`;
  const part = `(1-(${steps}/${deviation})^2)`;
  const isCoarse = `${steps}>=${deviation}`;
  return {
    value: { formula: `IF(${isCoarse},0,${deviation}*SQRT(${part}))`, is: value },
    freedom: {
      formula: `IF(${isCoarse},${count}-2,MAX(1,(${count}-2)*${part}^2))`,
      is: degreesOfFreedom ?? undefined,
    },
    how: "Figures: about the line, less the steps",
  };
}

/** What grows with the distance: a certificate of the form a + b·L, the alignment; and half of the hysteresis. */
function growingOf({ source, value, unit }: BudgetLine, basis: LineBasis): Partial<LineCellsOf> {
  const { record, loop, curve, reference, stage } = basis;
  if (source === "reference alignment") {
    const angle = record.calibration.alignmentAngle;
    return { value: { formula: `ABS(${reference})*2*SIN(RADIANS(${angle})/2)^2`, is: value }, how: "x(1 − cos θ)" };
  }
  if (source === "hysteresis, one direction read") {
    return { value: { formula: `MAX(${curve.table.column("gap")})*${loop.span}/200`, is: value }, how: "half of it" };
  }
  const standard = record.standards.find(({ standard }) => certificateSource(standard) === source);
  const { expandedUncertainty, relativeUncertainty, uncertaintyUnit = "" } = standard ?? {};
  const [from, to] = [unitOf(uncertaintyUnit), unitOf(unit)];
  if (expandedUncertainty === undefined || relativeUncertainty === undefined || !from || !to || unit === "°C")
    return {};
  const { lower, upper } = loop.ends(stage);
  const ideal = `(${lower}+(${reference}-${loop.lower})*(${upper}-${lower})/${loop.span})`;
  const measured = unit === record.instrument.distanceUnit ? reference : ideal;
  const constant = convertDifference(expandedUncertainty, from, to);
  return { value: { formula: `${constant}+${relativeUncertainty}/100*ABS(${measured})`, is: value }, how: "a + b·L" };
}
