import type { Spec } from "vega";
import { compile, type TopLevelSpec } from "vega-lite";
import { strictLogger } from "./strict-logger.ts";

/** A vega-lite specification as vega's own: the only use of vega-lite, so that it can move to build time. */
export function compileSpecification(specification: TopLevelSpec): Spec {
  return compile(structuredClone(specification), { logger: strictLogger }).spec;
}
