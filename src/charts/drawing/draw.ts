import { textMetrics } from "vega-scenegraph";
import { decimalMark, withDecimalMark } from "../../units/decimal-mark.ts";
import type { ChartProgram } from "./chart-program.ts";
import type { CompiledChart } from "./compiled-chart.ts";
import type { DrawingData } from "./drawing-data.ts";
import type { Scene } from "./scene-svg.ts";
import { svgOf } from "./svg-root.ts";
import { textWidth } from "./text-width.ts";
import { walkChart } from "./walk-chart.ts";

export type { DrawingData, Row } from "./drawing-data.ts";

/** A picture and its words: a sentence that says what it shows, how to read it, and what it would say aloud. */
export type Drawing = { svg: string; title: string; caption: string; description: string };

/**
 * How a chart is drawn: by the walker, and by vega where a chart holds what the walker does not know.
 * A series that some records do not have is named in `mayBeEmpty`; it must shape no axis.
 */
export function createDrawing(
  chart: CompiledChart,
  mayBeEmpty: readonly string[] = [],
): (drawing: DrawingData) => Promise<string> {
  const required = chart.series.filter((name) => !mayBeEmpty.includes(name));
  const program = programOf(chart);
  return async (drawing) => {
    const mark = decimalMark();
    requireRows(required, drawing.data);
    textMetrics.width = textWidth as typeof textMetrics.width;
    const scene = program === undefined ? await sceneByVega(chart, drawing) : walkChart(program, drawing);
    return withDecimalMark(mark, () => svgOf(scene, drawing));
  };
}

/** As built, or of its text where a chart is drawn from source. */
function programOf({ program, source }: CompiledChart): ChartProgram | undefined {
  return program ?? (source === undefined ? undefined : (new Function(`return ${source}`)() as ChartProgram));
}

async function sceneByVega({ runtime }: CompiledChart, drawing: DrawingData): Promise<Scene> {
  if (runtime === undefined) throw new Error("draw: a chart has neither a program nor vega's dataflow");
  const { drawByVega } = await import("./draw-by-vega.ts");
  return drawByVega(runtime, drawing);
}

/** An empty series would leave a chart that looks complete, and infinite extents. */
function requireRows(required: readonly string[], data: DrawingData["data"]): void {
  for (const name of required) {
    if ((data[name] ?? []).length === 0) throw new RangeError(`draw: requires at least one row of ${name}`);
  }
}
