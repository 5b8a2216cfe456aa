import { compiledChart } from "../drawing/compiled-chart.ts";
import { chartFrame } from "./chart-frame.ts";
import { legendAreaLayer, legendLayers, legendUncertaintyLayers } from "./legend-layers.ts";
import {
  acceptanceLines,
  limitLabels,
  meanLines,
  readingMarks,
  rightChannel,
  toleranceLayers,
  uncertaintyBars,
  xAndYSignals,
  zeroLine,
} from "./plot-layers.ts";

/** Two vertical axes for one quantity: tolerance in distance on the right, errors in percent of span on the left. */
export const errorChartSpec = compiledChart({
  ...chartFrame,
  params: [...xAndYSignals, { name: "rightDomain", value: [0, 1] }, { name: "rightTitle", value: "" }],
  resolve: { scale: { y: "independent" } },
  layer: [
    { layer: [...toleranceLayers(rightChannel)] },
    {
      layer: [
        zeroLine,
        acceptanceLines,
        ...uncertaintyBars,
        meanLines,
        readingMarks,
        limitLabels,
        ...legendLayers,
        legendAreaLayer,
        ...legendUncertaintyLayers,
      ],
    },
  ],
});
