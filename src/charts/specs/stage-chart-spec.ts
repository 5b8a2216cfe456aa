import { compiledChart } from "../drawing/compiled-chart.ts";
import { chartFrame } from "./chart-frame.ts";
import { legendAreaLayer, legendLayers } from "./legend-layers.ts";
import { meanLines, readingMarks, toleranceLayers, xAndYSignals, yChannel, zeroLine } from "./plot-layers.ts";

/** The errors of two stages of the loop and the tolerance, in percent of span. */
export const stageChartSpec = compiledChart({
  ...chartFrame,
  params: xAndYSignals,
  layer: [...toleranceLayers(yChannel), zeroLine, meanLines, readingMarks, ...legendLayers, legendAreaLayer],
});
