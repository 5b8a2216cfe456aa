import type { CalibrationRecord } from "../record/record-schema.ts";
import type { SwitchedPhaseRecord, SwitchingRecord } from "../record/switching-schema.ts";
import { columnLetters } from "../units/column-letters.ts";
import type { AddFigure } from "./add-figure.ts";
import type { BudgetLine, LineCellsOf } from "./budget-line.ts";
import { budgetRows } from "./budget-rows.ts";
import type { Cell } from "./cell.ts";
import { type DecisionKey, normalTails, ruleCells, statement } from "./decision-cells.ts";
import type { Grid } from "./grid.ts";

/** What a block is about, and the address of the guard factor. */
export type OutputBasis = {
  record: CalibrationRecord;
  switching: SwitchingRecord;
  phase: SwitchedPhaseRecord;
  factor: string;
};

/** Columns of the trips of a phase. */
export type TripColumns = { direction: string; reference: string; counted: string; cycle: string };

/** Addresses of what the trips of one direction come to. */
export type TripMeanCells = { mean: string; count: string; deviation: string | undefined };

const keys = [
  "error",
  "low",
  "high",
  "expanded",
  "ratio",
  "guard",
  "acceptLow",
  "acceptHigh",
  "statement",
  "risk",
] as const;
const titles = [
  "error",
  "lower limit",
  "upper limit",
  "U",
  "T/U",
  "guard band",
  "acceptance",
  "acceptance",
  "statement",
  "specific risk",
];

type Trips = { columns: TripColumns; of: TripMeanCells | undefined };

/** The set-point error, its budget and its decision; the address of its word, where it has one. */
export function setPointCells(
  grid: Grid,
  add: AddFigure,
  basis: OutputBasis,
  { columns, of }: Trips,
): readonly string[] {
  const { phase, switching, record } = basis;
  const { setPoint } = phase;
  if (setPoint === null || of === undefined) return [];
  const stated = add("set point", switching.output.setPoint, record.instrument.distanceUnit);
  const error = add(
    "set-point error",
    { formula: `${of.mean}-${stated}`, is: setPoint.error },
    `on ${setPoint.direction}`,
  );
  grid.add([]);
  const budget = budgetRows(grid, setPoint, (line) => lineCells(line, basis, of));
  const { decision } = setPoint;
  const tolerance = switching.output.setPointTolerance;
  if (decision === null || tolerance === undefined) {
    return [add("set point: its word", "cannot be decided", "value: no set_point_tolerance is stated")];
  }
  grid.add(titles, "heading");
  const row = grid.next;
  const at = (key: DecisionKey) => grid.at(columnLetters(keys.indexOf(key as "error")), row);
  const own = `${columns.counted}*(${columns.direction}="${setPoint.direction}")`;
  const sizes = `SUMPRODUCT(MAX(${own}*ABS(${columns.reference})))`;
  const rounding = `(1E-12*MAX(${tolerance},ABS(${stated}),${sizes}))`;
  const rule = { rule: record.decisionRule.name, factor: basis.factor, at, budget, rounding };
  const isOneOutside = `SUMPRODUCT(${own}*(ABS(${columns.reference}-${stated})>${tolerance}+${rounding}))>0`;
  const word = statement(rule);
  const judged = record.decisionRule.name === "simple acceptance" ? `IF(${isOneOutside},"fail",${word})` : word;
  const cells: Partial<Record<DecisionKey, Cell>> = {
    error: { formula: error },
    low: decision.toleranceLow,
    high: decision.toleranceHigh,
    expanded: { formula: budget.expanded, is: setPoint.expandedUncertainty },
    ...ruleCells(rule, decision),
    statement: { formula: judged, is: decision.statement },
    risk: {
      formula: normalTails(at, at("error"), `(${budget.combined}*MAX(1,${budget.factor}/2))`),
      is: decision.specificRisk,
    },
  };
  grid.add(keys.map((key) => cells[key] ?? null));
  return [at("statement")];
}

/** A line of the budget of a switching distance: the scatter of the trips, and what grows with the distance, are live. */
function lineCells(line: BudgetLine, { record }: OutputBasis, { mean, count, deviation }: TripMeanCells): LineCellsOf {
  const { source, value, divisor, sensitivity, degreesOfFreedom: freedom, unit } = line;
  const stated: LineCellsOf = { value, divisor, sensitivity, freedom, how: "value: as stated in the tables" };
  const { alignmentAngle, airTemperature } = record.calibration;
  if (source.startsWith("repeatability") && deviation !== undefined) {
    return {
      value: { formula: deviation, is: value },
      divisor: { formula: `SQRT(${count})`, is: divisor },
      sensitivity,
      freedom: { formula: `${count}-1`, is: freedom ?? undefined },
      how: "of the trips",
    };
  }
  if (source === "reference alignment") {
    const cosine = { formula: `ABS(${mean})*2*SIN(RADIANS(${alignmentAngle})/2)^2`, is: value };
    return { ...stated, value: cosine, how: "x(1 − cos θ)" };
  }
  if (unit !== "°C" || airTemperature === undefined) return stated;
  return { ...stated, sensitivity: { formula: `ABS(${mean})/(2*(${airTemperature}+273.15))`, is: sensitivity } };
}
