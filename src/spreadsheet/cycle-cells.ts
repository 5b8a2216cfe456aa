import { cyclesOf } from "../model/scatter-source.ts";
import type { JudgedPointRecord, ReadingRecord } from "../record/record-schema.ts";
import type { AddFigure } from "./add-figure.ts";
import type { CurveOf, CurveTable } from "./curve-table.ts";
import { isOfCurve } from "./readings-columns.ts";
import type { PhaseReadings } from "./readings-sheet.ts";

/** Addresses of what the readings scatter by within the cycles and what the cycles differ by, percent of span. */
export type CycleCells = { within: string; withinFreedom: string; between: string; betweenFreedom: string };

/**
 * What the cycles differ by, where a budget of the curve has it and each cycle has one reading of every repeated point and
 * direction: else the program fits it step by step, which no formula does, and the budget has the record's values.
 */
export function cycleCells(
  add: AddFigure,
  readings: PhaseReadings,
  points: readonly JudgedPointRecord[],
  table: CurveTable,
  of: CurveOf,
): CycleCells | undefined {
  const isShown = points.some(({ budget }) => budget.lines.some(({ source }) => cyclesOf(source) === "measured"));
  const used = readings.phase.readings.filter((reading) => isOfCurve(reading, readings.phase, of.mask === "atEnd"));
  const cycles = [...new Set(used.map(({ cycle = 1 }) => cycle))];
  if (!isShown || !isBalanced(used, cycles.length)) return undefined;
  const percent = "% of span";
  const [mask, errors, cycle] = [of.mask, of.error, "cycle"].map(readings.column) as [string, string, string];
  add("Differences between cycles", null, "");
  const count = add("readings", { formula: `SUM(${mask})` }, "");
  const mean = add("mean error", { formula: `SUMPRODUCT(${mask}*${errors})/${count}` }, percent);
  const means = cycles.map((one) => {
    const own = `${mask}*(${cycle}=${one})`;
    return add(`cycle ${one}`, { formula: `SUMPRODUCT(${own}*${errors})/SUMPRODUCT(${own})-${mean}` }, percent);
  });
  const [, last] = means.at(-1)?.split("!") ?? [];
  const perCycle = `${count}/${cycles.length}`;
  const squares = add("squares between the cycles", { formula: `${perCycle}*SUMSQ(${means[0]}:${last})` }, "");
  const betweenFreedom = add("their degrees of freedom", { formula: `${cycles.length}-1` }, "");
  const withinFreedom = add("degrees of freedom within", { formula: `${table.freedom}-${betweenFreedom}` }, "");
  const within = `SQRT((${table.squares}-${squares})/${withinFreedom})`;
  const withinCell = add("standard deviation within", { formula: within }, percent);
  const between = `SQRT(MAX(0,${squares}/${betweenFreedom}-${withinCell}^2)/(${perCycle}))`;
  const betweenCell = add("standard deviation between", { formula: between }, percent);
  return { within: withinCell, withinFreedom, between: betweenCell, betweenFreedom };
}

/** Whether each point and direction has one reading of every cycle. */
function isBalanced(used: readonly ReadingRecord[], cycles: number): boolean {
  const groups = new Map<string, number[]>();
  for (const { point, direction, cycle = 1 } of used) {
    const key = `${point} ${direction}`;
    groups.set(key, [...(groups.get(key) ?? []), cycle]);
  }
  return [...groups.values()].every((own) => own.length === cycles && new Set(own).size === cycles);
}
