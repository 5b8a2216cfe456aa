import { compiledChart } from "../drawing/compiled-chart.ts";
import { palette } from "../palette.ts";
import { colorChannel, dashChannel, fillChannel, shapeChannel, sizeChannel, strokeChannel } from "../series-scales.ts";
import { chartFrame } from "./chart-frame.ts";
import { legendAreaLayer, legendLayers } from "./legend-layers.ts";
import { bandOpacity, type Layer, xChannel } from "./plot-layers.ts";

/** A row a cycle, from above in the order of the work. */
const rowChannel = {
  field: "row",
  type: "nominal",
  scale: { domain: { signal: "rowLabels" }, type: "point", padding: 0.7 },
  axis: { title: null, grid: true, domain: false, ticks: false },
} as const;

const tolerance: Layer = {
  data: { name: "tolerance" },
  mark: { type: "rect", color: palette.band, fillOpacity: bandOpacity, stroke: palette.limit, strokeWidth: 1 },
  encoding: {
    x: { ...xChannel, field: "low" },
    x2: { field: "high" },
    y: { value: 0 },
    y2: { value: { expr: "height" } },
  },
};

const setPoint: Layer = {
  data: { name: "setPoint" },
  mark: { type: "rule", color: palette.quiet, strokeWidth: 1.25 },
  encoding: { x: xChannel, y: { value: 0 }, y2: { value: { expr: "height" } } },
};

/** From where the output operates to where it releases. */
const travels: Layer = {
  data: { name: "travels" },
  mark: { type: "rule", strokeWidth: 1.25 },
  encoding: {
    x: { ...xChannel, field: "operating" },
    x2: { field: "release" },
    y: rowChannel,
    color: colorChannel,
    strokeDash: dashChannel,
  },
};

const tripMarks: Layer = {
  data: { name: "trips" },
  mark: { type: "point", strokeWidth: 1, opacity: 1 },
  encoding: {
    x: xChannel,
    y: rowChannel,
    stroke: strokeChannel,
    fill: fillChannel,
    shape: shapeChannel,
    size: sizeChannel,
  },
};

/** The trips of one output by cycle, the set point with its tolerance. */
export const tripChartSpec = compiledChart({
  ...chartFrame,
  // Rows would otherwise have a step of their own, and the chart no size; each drawing sets its own height.
  height: 200,
  params: [
    { name: "xDomain", value: [0, 1] },
    { name: "xTitle", value: "" },
    { name: "rowLabels", value: [""] },
  ],
  layer: [tolerance, setPoint, travels, tripMarks, ...legendLayers, legendAreaLayer],
});
