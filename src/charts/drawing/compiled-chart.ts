import { parse, type Runtime, type Spec } from "vega";
import { compile, type TopLevelSpec } from "vega-lite";
import { strictLogger } from "./strict-logger.ts";

/** A chart ready to be drawn, nothing but data: vega's dataflow, and the names of the series that a drawing brings. */
export type CompiledChart = Readonly<{ runtime: Runtime; series: readonly string[] }>;

/** Compiles and parses a specification; the build does it ahead, and the command holds what comes of it. */
export function compiledChart(specification: TopLevelSpec): CompiledChart {
  const compiled = compileSpecification(specification);
  const data = compiled.data ?? [];
  if (data.some((one) => "url" in one)) {
    throw new Error("compiledChart: a chart loads nothing, and its data has an address");
  }
  const brought = data.filter((one) => !("source" in one) && !("values" in one));
  return { runtime: parse(compiled), series: brought.map(({ name }) => name) };
}

/** A vega-lite specification as vega's own: the only use of vega-lite, so that it can move to build time. */
function compileSpecification(specification: TopLevelSpec): Spec {
  return compile(structuredClone(specification), { logger: strictLogger }).spec;
}
