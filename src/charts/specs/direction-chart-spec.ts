import { compiledChart } from "../drawing/compiled-chart.ts";
import { palette } from "../palette.ts";
import { chartFrame } from "./chart-frame.ts";
import { legendLayers } from "./legend-layers.ts";
import { type Layer, meanLines, meanMarks, xAndYSignals, xChannel, yChannel } from "./plot-layers.ts";

const labelTop = 7;
const labelBottom = 25;

const difference: Layer = {
  data: { name: "pairs" },
  mark: { type: "area", color: palette.difference, opacity: 0.25 },
  encoding: { x: xChannel, y: { ...yChannel, field: "up" }, y2: { field: "down" } },
};

const leader: Layer = {
  data: { name: "worst" },
  mark: { type: "rule", color: palette.quiet, strokeWidth: 1, strokeDash: [1, 2] },
  encoding: { x: xChannel, y: { ...yChannel, field: "upper" }, y2: { value: labelBottom } },
};

const bracket: Layer = {
  data: { name: "worst" },
  mark: { type: "rule", color: palette.ink, strokeWidth: 2.5 },
  encoding: { x: xChannel, y: { ...yChannel, field: "upper" }, y2: { field: "lower" } },
};

const label: Layer = {
  data: { name: "worst" },
  mark: { type: "text", baseline: "top", align: { expr: "labelAlign" }, fontWeight: 600 },
  encoding: { x: xChannel, y: { value: labelTop }, text: { field: "text", type: "nominal" } },
};

/** Rising and falling means, the difference shaded, the greatest difference marked and labelled at the top. */
export const directionChartSpec = compiledChart({
  ...chartFrame,
  params: [...xAndYSignals, { name: "labelAlign", value: "center" }],
  layer: [difference, leader, meanLines, bracket, meanMarks, label, ...legendLayers],
});
