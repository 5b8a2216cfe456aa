import type { PhaseName } from "../record/phase-name.ts";
import { phasesOf } from "../record/phases-of.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import type { SwitchedPhaseRecord, SwitchingRecord } from "../record/switching-schema.ts";
import type { AddFigure } from "./add-figure.ts";
import { type Cell, liveWhere } from "./cell.ts";
import { Grid } from "./grid.ts";
import { type OutputBasis, setPointCells, type TripColumns, type TripMeanCells } from "./set-point-cells.ts";
import { worstWordOf } from "./worst-word.ts";

type Means = Record<"operating" | "release", TripMeanCells | undefined>;

/** The outputs, and the address of the word of all of them. */
export type OutputsSheet = { grid: Grid; word: string };

/** Each switched output: its trips, and what follows from them by formulas. */
export function outputsSheet(record: CalibrationRecord, factor: string): OutputsSheet {
  const grid = new Grid("Outputs");
  const { switching = [] } = record;
  if (switching.length === 0) grid.add(["The tag has no switched output."]);
  const words = switching.flatMap((one) => {
    const blocks = phasesOf(one).map(({ name, title, phase }) => {
      grid.begin(`Switched output ${one.output.output}: ${title.toLowerCase()}`);
      return [name, outputBlock(grid, { record, switching: one, phase, factor })] as const;
    });
    grid.add([]);
    const wiring = grid.add(["wiring", null, null, one.wiring.statement ?? "not determined", "value"]);
    const counted = grid.add([
      "counts for the loop",
      null,
      null,
      { formula: countedWord(record, one, new Map(blocks)) },
    ]);
    const wired = grid.add(["of its wiring", null, null, { formula: `IF(${grid.at("D", wiring)}="fail","fail","–")` }]);
    return [grid.at("D", counted), grid.at("D", wired)];
  });
  grid.add([]);
  const is = record.overall?.outputs ?? "not determined";
  return {
    grid,
    word: grid.at("D", grid.add(["word of all outputs", null, null, { formula: worstWordOf(words), is }])),
  };
}

/** As left, an output that was not tried again counts as found where it was in tolerance. */
function countedWord(record: CalibrationRecord, one: SwitchingRecord, words: ReadonlyMap<PhaseName, string>): string {
  const [found, left] = [words.get("asFound"), words.get("asLeft")];
  if (record.overall?.of !== "asLeft") return found ?? `"–"`;
  if (left !== undefined && one.phases.asLeft?.statement !== null) return left;
  return found === undefined ? `"–"` : `IF(OR(${found}="pass",${found}="conditional pass"),${found},"–")`;
}

/** The address of its word. */
function outputBlock(grid: Grid, basis: OutputBasis): string {
  const { phase, switching, record } = basis;
  const columns = tripRows(grid, phase);
  const unit = record.instrument.distanceUnit;
  const add: AddFigure = (label, cell, of, where = null, how = "") =>
    grid.at("D", grid.add([label, null, null, cell, of, where, how]));
  const means = {
    operating: meanCells(add, "operating distance", phase.operating, tripsOf(columns, "approach"), unit),
    release: meanCells(add, "release distance", phase.release, tripsOf(columns, "recede"), unit),
  };
  const statements = [
    ...differentialCells(add, basis, means, columns),
    ...repeatCells(add, basis, means, columns),
    ...(phase.chatter === null ? [] : [add("chatter", phase.chatter.statement, "value: one change of state a run")]),
    ...contradictionCells(add, phase),
    ...setPointCells(grid, add, basis, { columns, of: means[sideOf(switching)] }),
  ];
  const word = worstWordOf(statements);
  const stated = statements.length === 0 ? "not determined" : liveWhere(phase.statement, word);
  const cell = add("word of the output", stated, "the worst of these");
  for (const [name, why] of Object.entries(phase.notDetermined)) add(name, `not determined: ${why}`, "");
  return cell;
}

function contradictionCells(add: AddFigure, { notDetermined }: SwitchedPhaseRecord): readonly string[] {
  if (notDetermined.function === undefined) return [];
  return [add("states after its trips", "cannot be decided", `value: ${notDetermined.function}`)];
}

function sideOf({ output }: SwitchingRecord): "operating" | "release" {
  return output.criticalDirection === "recede" ? "release" : "operating";
}

function tripRows(grid: Grid, { trips }: SwitchedPhaseRecord): TripColumns {
  grid.add(["cycle", "direction", "reference", "counted", "line"], "heading");
  grid.add([null, null, null, "1 yes, 0 no: value", "of the table: value"]);
  const first = grid.next;
  for (const { cycle = null, direction, reference, isCounted, row } of trips) {
    grid.add([cycle, direction, reference, Number(isCounted), row]);
  }
  const column = (letter: string) => grid.range(letter, first, grid.next - 1);
  return { cycle: column("A"), direction: column("B"), reference: column("C"), counted: column("D") };
}

/** A formula that is 1 for each counted trip of a direction, and the references. */
function tripsOf({ counted, direction, reference }: TripColumns, of: string) {
  return { mask: `${counted}*(${direction}="${of}")`, reference };
}

function meanCells(
  add: AddFigure,
  label: string,
  is: SwitchedPhaseRecord["operating"],
  { mask, reference }: { mask: string; reference: string },
  unit: string,
): TripMeanCells | undefined {
  if (is === null) return undefined;
  const count = add(`${label}: trips`, { formula: `SUMPRODUCT(${mask})`, is: is.count }, "");
  const mean = add(label, { formula: `SUMPRODUCT(${mask}*${reference})/${count}`, is: is.mean }, unit);
  const off = `${mask}*(${reference}-${mean})`;
  add(`${label}: least`, { formula: `${mean}+SUMPRODUCT(MIN(${off}))`, is: is.least }, unit);
  add(`${label}: greatest`, { formula: `${mean}+SUMPRODUCT(MAX(${off}))`, is: is.greatest }, unit);
  if (is.standardDeviation === null) return { mean, count, deviation: undefined };
  const spread = { formula: `SQRT(SUMPRODUCT(${off}^2)/(${count}-1))`, is: is.standardDeviation };
  return { mean, count, deviation: add(`${label}: standard deviation`, spread, unit) };
}

/** A travel with its part of the operating distance, its limit and its word. */
function travelCells(add: AddFigure, label: string, travel: Travel, distance: string, operating: string): string {
  const cell = add(label, { formula: distance, is: travel.distance }, "");
  const percent = add(
    "the same",
    { formula: `100*${cell}/ABS(${operating})`, is: travel.percent },
    "% of the operating distance",
  );
  const limit = add("its limit", travel.limitPercent, `%, value: ${travel.limitFrom}`);
  const word = `IF(${percent}<=${limit}+1E-10,"pass","fail")`;
  return add("its word", { formula: word, is: travel.statement }, "");
}
type Travel = NonNullable<SwitchedPhaseRecord["repeat"]>;

function differentialCells(
  add: AddFigure,
  { phase }: OutputBasis,
  means: Means,
  columns: TripColumns,
): readonly string[] {
  const { differential } = phase;
  const { operating, release } = means;
  if (differential === null || operating === undefined || release === undefined) return [];
  const distance = `ABS(${release.mean}-${operating.mean})`;
  const word = travelCells(add, "differential travel", differential, distance, operating.mean);
  const { greatestOfOneCycle } = differential;
  if (greatestOfOneCycle !== null) {
    const of = (direction: string) => {
      const { mask, reference } = tripsOf(columns, direction);
      return `SUMPRODUCT(${mask}*(${columns.cycle}=${greatestOfOneCycle.cycle})*${reference})`;
    };
    const cell: Cell = { formula: `ABS(${of("recede")}-${of("approach")})`, is: greatestOfOneCycle.distance };
    add(`differential travel of cycle ${greatestOfOneCycle.cycle}`, cell, "the greatest of one cycle, in the record");
  }
  return [word];
}

function repeatCells(
  add: AddFigure,
  { phase }: OutputBasis,
  { operating }: Means,
  columns: TripColumns,
): readonly string[] {
  if (phase.repeat === null || operating === undefined) return [];
  const { mask, reference } = tripsOf(columns, "approach");
  const off = `${mask}*(${reference}-${operating.mean})`;
  const spread = `SUMPRODUCT(MAX(${off}))-SUMPRODUCT(MIN(${off}))`;
  return [travelCells(add, "repeat accuracy", phase.repeat, spread, operating.mean)];
}
