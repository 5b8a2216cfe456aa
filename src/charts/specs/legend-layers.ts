import { palette } from "../palette.ts";
import { colorChannel, dashChannel, fillChannel, shapeChannel, sizeChannel, strokeChannel } from "../series-scales.ts";
import { bandOpacity, barOpacity, type Layer, limitStyle } from "./plot-layers.ts";

const pixel = (field: string) => ({ field, type: "quantitative", scale: null, axis: null }) as const;
const start = { x: pixel("x"), y: pixel("y") };

const lines: Layer = {
  data: { name: "legendLines" },
  mark: { type: "rule", strokeWidth: 1.25 },
  encoding: { ...start, x2: { field: "x2" }, color: colorChannel, strokeDash: dashChannel },
};

const marks: Layer = {
  data: { name: "legendMarks" },
  mark: { type: "point", strokeWidth: 1, opacity: 1 },
  encoding: { ...start, stroke: strokeChannel, fill: fillChannel, shape: shapeChannel, size: sizeChannel },
};

const texts: Layer = {
  data: { name: "legendTexts" },
  mark: { type: "text", align: "left", baseline: "middle" },
  encoding: { ...start, text: { field: "text", type: "nominal" } },
};

/** Draws what `legend.ts` has laid out, in pixels from the upper left corner of the plot. */
export const legendLayers: readonly Layer[] = [lines, marks, texts];

export const legendAreaLayer: Layer = {
  data: { name: "legendAreas" },
  mark: { type: "rect", color: palette.band, fillOpacity: bandOpacity, stroke: palette.limit, strokeWidth: 1 },
  encoding: { ...start, x2: { field: "x2" }, y2: { field: "y2" } },
};

/** What only the error chart has: a bar of uncertainty, a limit of acceptance. */
export const legendUncertaintyLayers: readonly Layer[] = [
  {
    data: { name: "legendBars" },
    mark: { type: "rule", color: palette.quiet, strokeWidth: 1.5, opacity: barOpacity },
    encoding: { ...start, x2: { field: "x2" }, y2: { field: "y2" } },
  },
  {
    data: { name: "legendLimits" },
    mark: { type: "rule", ...limitStyle },
    encoding: { ...start, x2: { field: "x2" }, color: colorChannel },
  },
];
