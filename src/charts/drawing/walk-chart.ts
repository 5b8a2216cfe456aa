import { chartFunctions } from "./chart-functions.ts";
import type { ChartProgram, DataStep, Datum, Input, Inputs, Known, SizedStep } from "./chart-program.ts";
import type { DrawingData } from "./drawing-data.ts";
import { type Fit, fitted } from "./fit-layout.ts";
import { bindItems, boundMark, encodeMark, hideOverlap, isUnchanged, sortItems } from "./mark-steps.ts";
import { configuredScale, ticksOf } from "./scale-steps.ts";
import { type Mark, newItem, newMark, type Scope } from "./scene.ts";
import type { Scene } from "./scene-svg.ts";

/**
 * Draws a chart without vega's dataflow: rows once, then scales, axes and marks in the size that was asked for, and again
 * in the size that the axes leave, for that is how vega fits a plot, ticks of the first round kept.
 */
export function walkChart(program: ChartProgram, { size, signals, data }: Wanted): Scene {
  const scope = newScope(program);
  requireKnown(program.data, signals, data);
  for (const step of program.data) dataStep(scope, step, { ...signals, ...size }, data);
  const fit = round(program, scope);
  if (fit.width !== size.width || fit.height !== size.height) {
    for (const step of program.data) {
      if (step.kind === "signal" && step.name === "width") scope.values[step.slot] = fit.width;
      if (step.kind === "signal" && step.name === "height") scope.values[step.slot] = fit.height;
    }
    scope.isAgain = true;
    round(program, scope);
  }
  return { root: scope.values[program.root] as Mark, size, origin: fit.origin };
}

type Wanted = Pick<DrawingData, "size" | "signals" | "data">;

function newScope({ root }: ChartProgram): Scope {
  const mark = newMark({ marktype: "group", name: "root", role: "frame", clip: false, interactive: true }, undefined);
  const group = newItem(mark, {}, 0);
  mark.items = [group];
  mark.came = mark.items;
  const values: unknown[] = [];
  values[root] = mark;
  return { values, functions: chartFunctions(), group, facets: [], isAgain: false };
}

function requireKnown(steps: readonly DataStep[], signals: Wanted["signals"], data: Wanted["data"]): void {
  const isKnown = { signal: new Set<string | undefined>(), series: new Set<string | undefined>() };
  for (const step of steps) {
    if (step.kind === "signal") isKnown.signal.add(step.name);
    if (step.kind === "rows") isKnown.series.add(step.series);
  }
  const signal = Object.keys(signals).find((name) => !isKnown.signal.has(name));
  const series = Object.keys(data).find((name) => !isKnown.series.has(name));
  if (signal !== undefined) throw new RangeError(`walkChart: the chart has no signal ${signal}`);
  if (series !== undefined) throw new RangeError(`walkChart: the chart has no series ${series}`);
}

function dataStep(scope: Scope, step: DataStep, signals: Wanted["signals"], data: Wanted["data"]): void {
  const { values, functions } = scope;
  const rows = "from" in step ? (values[step.from] as Datum[]) : [];
  switch (step.kind) {
    case "signal":
      values[step.slot] = step.name !== undefined && step.name in signals ? signals[step.name] : step.value;
      break;
    case "rows":
      values[step.slot] = (step.values ?? data[step.series ?? ""] ?? []).map((row) => ({ ...row }));
      break;
    case "copy":
      values[step.slot] = rows.map((row) => ({ ...row }));
      break;
    case "filter":
      values[step.slot] = rows.filter((row) => step.test.call(functions, row, {}));
      break;
    case "formula":
      for (const row of rows) row[step.field] = step.value.call(functions, row, {});
      break;
    case "groups":
      values[step.slot] = groupsOf(rows, step.fields);
  }
}

/** A row for each group, in the order in which they are met. */
function groupsOf(rows: readonly Datum[], fields: readonly string[]): readonly Datum[] {
  const groups = new Map<string, Datum>();
  for (const row of rows) {
    const key = keyOf(row, fields);
    if (!groups.has(key)) groups.set(key, Object.fromEntries(fields.map((field) => [field, row[field]])));
  }
  return [...groups.values()];
}

function keyOf(row: Datum, fields: readonly string[]): string {
  return fields.map((field) => String(row[field])).join("|");
}

function round(program: ChartProgram, scope: Scope): Fit {
  let fit: Fit | undefined;
  for (const step of program.sized) {
    if (step.kind === "fit") fit = fitted(scope.group, scope.values[step.autosize] as never, sizeOf(program, scope));
    else sizedStep(scope, step);
  }
  if (fit === undefined) throw new Error("walkChart: the chart is not fitted");
  return fit;
}

/** Width, height and padding as they are now. */
function sizeOf({ data }: ChartProgram, { values }: Scope): { width: number; height: number; padding: never } {
  const named = (name: string) => {
    const step = data.find((one) => one.kind === "signal" && one.name === name);
    return step?.kind === "signal" ? values[step.slot] : undefined;
  };
  return { width: named("width") as number, height: named("height") as number, padding: named("padding") as never };
}

function sizedStep(scope: Scope, step: Exclude<SizedStep, { kind: "fit" }>): void {
  const { values, functions } = scope;
  switch (step.kind) {
    case "compute":
      values[step.slot] = step.value.call(functions, known(scope, step.inputs));
      return;
    case "scale": {
      const scale = configuredScale(values[step.slot], step.type, known(scope, step.inputs));
      values[step.slot] = scale;
      functions.scales[step.name] = scale;
      return;
    }
    case "ticks":
      values[step.slot] = ticksOf(values[step.scale], step.count && inputValue(scope, step.count), step.specifier);
      return;
    case "facet":
      facetStep(scope, step);
      return;
    case "mark":
      values[step.slot] = bindItems(scope, step, values[step.slot] as Mark | undefined);
      return;
    default:
      markStep(scope, step, values[step.mark] as Mark);
  }
}

type OfMark = Extract<SizedStep, { kind: "encode" | "sort" | "bound" | "overlap" }>;

function markStep(scope: Scope, step: OfMark, mark: Mark): void {
  if (step.kind === "encode") encodeMark(mark, step, known(scope, step.inputs), scope);
  else if (scope.isAgain && isUnchanged(mark)) return;
  else if (step.kind === "sort") sortItems(mark, step.paths);
  else if (step.kind === "bound") boundMark(mark, scope.isAgain);
  else hideOverlap(mark, step);
}

function facetStep(scope: Scope, step: Extract<SizedStep, { kind: "facet" }>): void {
  const rows = scope.values[step.from] as readonly Datum[];
  scope.facets[step.rows] ??= new Map(
    (scope.values[step.mark] as Mark).items.map((group) => {
      const values = Object.create(scope.values) as unknown[];
      const key = keyOf(group.datum, step.fields);
      values[step.rows] = rows.filter((row) => keyOf(row, step.fields) === key);
      return [key, { ...scope, values, group, facets: [] }];
    }),
  );
  for (const inside of scope.facets[step.rows]?.values() ?? []) {
    inside.isAgain = scope.isAgain;
    for (const one of step.steps) if (one.kind !== "fit") sizedStep(inside, one);
  }
}

function known(scope: Scope, inputs: Inputs): Known {
  const values: Known = {};
  for (const name in inputs) values[name] = inputValue(scope, inputs[name] as Input);
  return values;
}

function inputValue(scope: Scope, input: Input): unknown {
  if ("slot" in input) return scope.values[input.slot];
  return "list" in input ? input.list.map((one) => inputValue(scope, one)) : input.is;
}
