import { compiledChart } from "../drawing/compiled-chart.ts";
import { chartFrame } from "./chart-frame.ts";
import { legendLayers } from "./legend-layers.ts";
import { meanLines, readingMarks, xAndYSignals, zeroLine } from "./plot-layers.ts";

/** What is left of the error when the fitted line is taken off. */
export const residualChartSpec = compiledChart({
  ...chartFrame,
  params: xAndYSignals,
  layer: [zeroLine, meanLines, readingMarks, ...legendLayers],
});
