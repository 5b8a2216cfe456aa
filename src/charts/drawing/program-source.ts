import type { Runtime } from "vega";
import { writeEncode, writeFacet, writeMark } from "./program-marks.ts";
import { beyond, expressionText, type FunctionText, isBeyond, textOf } from "./program-text.ts";
import {
  dataStep,
  inputOf,
  inputsOf,
  keyFields,
  newSlot,
  type Operator,
  type Parameters,
  requireOnly,
  type Step,
  slotOf,
  type Writing,
} from "./program-writing.ts";

/**
 * The program of a chart as text: an expression whose value is a `ChartProgram`. Undefined for a chart that holds
 * anything which the walker does not know: vega draws it, rather than the walker wrongly.
 */
export function programSource(runtime: Runtime): string | undefined {
  // As it would be built: what is undefined is not there.
  const { operators, streams, updates, locale } = JSON.parse(JSON.stringify(runtime)) as {
    operators: readonly Operator[];
    streams?: readonly unknown[];
    updates?: readonly unknown[];
    locale?: unknown;
  };
  if ((streams?.length ?? 0) > 0 || (updates?.length ?? 0) > 0 || locale !== undefined) return undefined;
  try {
    return textOf(program(operators));
  } catch (fault) {
    if (isBeyond(fault)) return undefined;
    throw fault;
  }
}

function program(operators: readonly Operator[]): Step {
  const writing: Writing = {
    ...{ slots: new Map(), count: 0, data: [], sized: [], joins: new Map(), groupMarks: new Map() },
    ...{ root: -1, autosize: undefined, isInFacet: false, write },
  };
  for (const operator of operators) write(writing, operator);
  const { count, root, autosize, data, sized } = writing;
  if (autosize === undefined) beyond("a chart that is not fitted into its size");
  return { slots: count, root, data, sized: [...sized, { kind: "fit", autosize }] };
}

function write(writing: Writing, operator: Operator): void {
  const writer = writers[operator.type];
  (writer ?? beyond(operator.type))(writing, operator, operator.params ?? {});
}

type Writer = (writing: Writing, operator: Operator, params: Parameters) => void;

/** Hands on what it gets: nothing is done in a picture that is drawn once. */
const passOn: Writer = (writing, { id }, { pulse, value }) => {
  writing.slots.set(id, slotOf(writing, pulse ?? value));
};

const writers: Readonly<Record<string, Writer>> = {
  ...{ sieve: passOn, proxy: passOn, render: passOn },
  operator: writeOperator,
  collect: writeCollect,
  relay: (writing, operator, params) => {
    if (params.derive !== true) return passOn(writing, operator, params);
    const from = slotOf(writing, params.pulse);
    dataStep(writing, { kind: "copy", slot: newSlot(writing, operator.id), from });
  },
  filter: (writing, { id }, { pulse, expr }) => {
    const from = slotOf(writing, pulse);
    dataStep(writing, { kind: "filter", slot: newSlot(writing, id), from, test: datumExpression(expr) });
  },
  formula: (writing, operator, params) => {
    requireOnly(params, ["expr", "as", "pulse"]);
    passOn(writing, operator, params);
    const { pulse, as, expr } = params;
    dataStep(writing, { kind: "formula", from: slotOf(writing, pulse), field: as, value: datumExpression(expr) });
  },
  aggregate: (writing, { id }, params) => {
    requireOnly(params, ["groupby", "key", "pulse"]);
    const from = slotOf(writing, params.pulse);
    dataStep(writing, { kind: "groups", slot: newSlot(writing, id), from, fields: keyFields(params.key) });
  },
  scale: writeScale,
  axisticks: (writing, { id }, params) => {
    requireOnly(params, ["scale", "count", "formatSpecifier"]);
    const { formatSpecifier: specifier } = params;
    if (specifier !== undefined && typeof specifier !== "string") beyond("a format that is computed");
    const count = params.count === undefined ? undefined : inputOf(writing, params.count);
    const scale = slotOf(writing, params.scale);
    writing.sized.push({ kind: "ticks", slot: newSlot(writing, id), scale, count, specifier });
  },
  datajoin: (writing, { id }, { pulse, key }) => {
    const rows = slotOf(writing, pulse);
    const field = (key as { $field?: string } | undefined)?.$field;
    if (field !== undefined && field !== "value") beyond(`a join by ${field}`);
    writing.joins.set(newSlot(writing, id), { rows, isKeyed: field !== undefined });
  },
  mark: writeMark,
  encode: writeEncode,
  sortitems: (writing, operator, params) => {
    passOn(writing, operator, params);
    writing.sized.push({ kind: "sort", mark: slotOf(writing, params.pulse), paths: comparedPaths(params.sort) });
  },
  bound: (writing, { id }, { mark }) => {
    const slot = slotOf(writing, mark);
    writing.slots.set(id, slot);
    if (slot !== writing.root) writing.sized.push({ kind: "bound", mark: slot });
  },
  overlap: (writing, operator, params) => {
    requireOnly(params, ["method", "separation", "sort", "pulse"]);
    passOn(writing, operator, params);
    const { method = "parity", separation = 0, sort, pulse } = params;
    if (!["parity", "greedy"].includes(String(method)) || typeof separation !== "number") beyond("overlap");
    const paths = sort === undefined ? [] : comparedPaths(sort);
    writing.sized.push({ kind: "overlap", mark: slotOf(writing, pulse), method, separation, paths });
  },
  viewlayout: (writing, operator, params) => {
    requireOnly(params, ["legends", "autosize", "mark", "pulse"]);
    passOn(writing, operator, params);
    if (slotOf(writing, params.mark) === writing.root) writing.autosize = slotOf(writing, params.autosize);
  },
  facet: writeFacet,
};

function writeOperator(writing: Writing, operator: Operator, params: Parameters): void {
  const slot = newSlot(writing, operator.id);
  if (operator.root === true) writing.root = slot;
  else if (operator.update !== undefined) {
    const value = expressionText("_", operator.update.code);
    writing.sized.push({ kind: "compute", slot, inputs: inputsOf(writing, params), value });
  } else if (!writing.isInFacet) {
    writing.data.push({ kind: "signal", slot, name: operator.signal, value: operator.value });
  }
}

function writeCollect(writing: Writing, operator: Operator, params: Parameters): void {
  const { id, data = {} } = operator;
  if (params.sort !== undefined) beyond("sorted rows");
  if (params.pulse !== undefined) passOn(writing, operator, params);
  else if ("root" in data) writing.slots.set(id, writing.root);
  else writeRows(writing, operator);
}

function writeRows(writing: Writing, { id, value, data = {} }: Operator): void {
  const values = Array.isArray(value) ? value : (value as { $ingest?: unknown } | undefined)?.$ingest;
  const series = values === undefined ? Object.keys(data)[0] : undefined;
  if (value !== undefined && !Array.isArray(values)) beyond("rows that are loaded");
  dataStep(writing, { kind: "rows", slot: newSlot(writing, id), series, values });
}

const knownScales = ["linear", "utc", "point", "band", "ordinal"];

function writeScale(writing: Writing, { id, scale: name }: Operator, params: Parameters): void {
  requireOnly(params, ["type", "domain", "range", "nice", "zero", "padding", "paddingInner", "paddingOuter"]);
  const { type, range, padding, ...others } = params;
  const isContinuous = type === "linear" || type === "utc";
  const isOfColors = isContinuous && Array.isArray(range) && range.some((one) => typeof one === "string");
  if (!knownScales.includes(String(type)) || isOfColors || (isContinuous && padding !== undefined)) beyond("a scale");
  const given = { ...others, range, ...(padding === undefined ? {} : { padding }) };
  writing.sized.push({ kind: "scale", slot: newSlot(writing, id), name, type, inputs: inputsOf(writing, given) });
}

function datumExpression(expression: unknown): FunctionText {
  const { $expr, $params = {} } = expression as { $expr: { code: string }; $params?: object };
  if (Object.keys($params).length > 0) beyond("rows that depend on a signal");
  return expressionText("datum,_", $expr.code);
}

/** Where the compared values lie in an item, ascending. */
function comparedPaths(sort: unknown): readonly (readonly string[])[] {
  const { $compare, $order } = sort as { $compare: string | readonly string[]; $order: string | readonly string[] };
  if ([$order].flat().some((order) => order !== "ascending")) beyond("a descending order");
  return [$compare].flat().map((path) => path.replace(/^datum\["(.*)"\]$/u, "datum.$1").split("."));
}
