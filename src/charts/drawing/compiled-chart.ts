import { parse, type Runtime, type Spec } from "vega";
import { compile, type TopLevelSpec } from "vega-lite";
import type { ChartProgram } from "./chart-program.ts";
import { programSource } from "./program-source.ts";
import { strictLogger } from "./strict-logger.ts";

/**
 * A chart ready to be drawn: the names of the series that a drawing brings, and the program that the walker goes
 * through. One that the walker does not know wholly has vega's dataflow instead; the built command has only one of both.
 */
export type CompiledChart = Readonly<{
  series: readonly string[];
  runtime?: Runtime;
  /** The program as text, an expression, before it is built. */
  source?: string | undefined;
  program?: ChartProgram;
}>;

/** Compiles and parses a specification; the build does it ahead, and the command holds what comes of it. */
export function compiledChart(specification: TopLevelSpec): CompiledChart {
  const compiled = compileSpecification(specification);
  const data = compiled.data ?? [];
  if (data.some((one) => "url" in one)) {
    throw new Error("compiledChart: a chart loads nothing, and its data has an address");
  }
  const brought = data.filter((one) => !("source" in one) && !("values" in one));
  const runtime = parse(compiled);
  return { series: brought.map(({ name }) => name), runtime, source: programSource(runtime) };
}

/** A vega-lite specification as vega's own: the only use of vega-lite, so that it can move to build time. */
function compileSpecification(specification: TopLevelSpec): Spec {
  return compile(structuredClone(specification), { logger: strictLogger }).spec;
}
