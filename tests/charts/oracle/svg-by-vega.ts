import { type Runtime, resetSVGDefIds } from "vega";
import type { DrawingData } from "../../../src/charts/drawing/draw.ts";
import { viewOf } from "../../../src/charts/drawing/draw-by-vega.ts";
import { withRoot } from "./svg-root.ts";

/** A chart as vega itself draws and writes it, its text then made short: another road to the bytes of `createDrawing`. */
export async function svgByVega(runtime: Runtime, drawing: DrawingData): Promise<string> {
  const view = viewOf(runtime, drawing);
  resetSVGDefIds();
  try {
    return withRoot(await view.toSVG(), drawing);
  } finally {
    view.finalize();
  }
}
