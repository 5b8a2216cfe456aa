import { compiledChart } from "../drawing/compiled-chart.ts";
import { palette } from "../palette.ts";
import { colorChannel, fillChannel, shapeChannel, sizeChannel, strokeChannel } from "../series-scales.ts";
import { chartFrame } from "./chart-frame.ts";
import { legendAreaLayer, legendLayers, legendUncertaintyLayers } from "./legend-layers.ts";
import {
  bandOpacity,
  barOpacity,
  barWidth,
  dotted,
  type Layer,
  xAndYSignals,
  yChannel,
  zeroLine,
} from "./plot-layers.ts";

/** Whole days where less than a year is shown, else months; the year alone where a tick is one. */
const labelOfTick =
  "utcFormat(datum.value, xDomain[1] - xDomain[0] < 3.2e10 ? '%Y-%m-%d' : utcmonth(datum.value) === 0 ? '%Y' : '%Y-%m')";

/** Days, as milliseconds of universal time: the same on every machine. */
const dayChannel = {
  field: "x",
  type: "temporal",
  scale: { type: "utc", domain: { signal: "xDomain" }, nice: false },
  axis: {
    title: { signal: "xTitle" },
    grid: false,
    tickCount: { expr: "ceil(width / 85)" },
    labelExpr: labelOfTick,
  },
} as const;

const whole = { y: { value: 0 }, y2: { value: { expr: "height" } } };

/** The tolerance that held from each record on. */
const tolerance: readonly Layer[] = [
  {
    data: { name: "tolerance" },
    mark: { type: "area", interpolate: "step-after", color: palette.band, opacity: bandOpacity },
    encoding: { x: dayChannel, y: { ...yChannel, field: "high" }, y2: { field: "low" } },
  },
  ...(["high", "low"] as const).map(
    (field): Layer => ({
      data: { name: "tolerance" },
      mark: { type: "line", interpolate: "step-after", color: palette.limit, strokeWidth: 1 },
      encoding: { x: dayChannel, y: { ...yChannel, field } },
    }),
  ),
];

const band: readonly Layer[] = [
  {
    data: { name: "band" },
    mark: { type: "line", clip: true, color: palette.quiet, strokeWidth: 1.25 },
    encoding: { x: dayChannel, y: { ...yChannel, field: "value" } },
  },
  ...(["high", "low"] as const).map(
    (field): Layer => ({
      data: { name: "band" },
      mark: { type: "line", clip: true, color: palette.quiet, ...dotted },
      encoding: { x: dayChannel, y: { ...yChannel, field } },
    }),
  ),
];

/** An adjustment: what was before and what came after are not joined. */
const breaks: readonly Layer[] = [
  {
    data: { name: "breaks" },
    mark: { type: "rule", color: palette.limit, strokeWidth: 1.25, strokeDash: [6, 4] },
    encoding: { x: dayChannel, ...whole },
  },
  {
    data: { name: "breakLabels" },
    mark: {
      type: "text",
      angle: 270,
      align: { expr: "datum.end === 'top' ? 'right' : 'left'" },
      baseline: "top",
      dy: 4,
    },
    encoding: {
      x: dayChannel,
      y: { value: { expr: "datum.end === 'top' ? 5 : height - 5" } },
      text: { field: "text", type: "nominal" },
    },
  },
];

/** Between two adjustments, where no line is fitted. */
const stretches: Layer = {
  data: { name: "joined" },
  mark: { type: "line", color: palette.limit, strokeWidth: 1 },
  encoding: { x: dayChannel, y: yChannel, detail: { field: "stretch", type: "nominal" } },
};

const besideTheMark = { expr: "datum.series === 'asFound' ? -6 : 6" };
const barEnd = (field: "low" | "high"): Layer => ({
  data: { name: "states" },
  mark: {
    type: "tick",
    orient: "horizontal",
    size: barWidth,
    thickness: 1.5,
    xOffset: besideTheMark,
    opacity: barOpacity,
  },
  encoding: { x: dayChannel, y: { ...yChannel, field }, color: colorChannel },
});

const bars: readonly Layer[] = [
  {
    data: { name: "states" },
    mark: { type: "rule", strokeWidth: 1.5, xOffset: besideTheMark, opacity: barOpacity },
    encoding: { x: dayChannel, y: { ...yChannel, field: "low" }, y2: { field: "high" }, color: colorChannel },
  },
  barEnd("low"),
  barEnd("high"),
];

const marks: Layer = {
  data: { name: "states" },
  mark: { type: "point", strokeWidth: 1.25, opacity: 1 },
  encoding: {
    x: dayChannel,
    y: yChannel,
    stroke: strokeChannel,
    fill: fillChannel,
    shape: shapeChannel,
    size: sizeChannel,
  },
};

/** Where the band meets a limit, and the day. */
const crossing: readonly Layer[] = [
  {
    data: { name: "crossing" },
    mark: { type: "point", shape: "cross", size: 110, filled: true, color: palette.ink, opacity: 1 },
    encoding: { x: dayChannel, y: yChannel },
  },
  {
    data: { name: "crossing" },
    mark: { type: "text", align: "right", dx: -9, dy: { expr: "datum.limit === 'upper' ? -12 : 12" } },
    encoding: { x: dayChannel, y: yChannel, text: { field: "text", type: "nominal" } },
  },
];

/** The error of a loop at one place of its range, record by record, with its forecast. */
export const historyChartSpec = compiledChart({
  ...chartFrame,
  params: xAndYSignals,
  layer: [
    ...tolerance,
    zeroLine,
    ...breaks,
    ...band,
    stretches,
    ...bars,
    marks,
    ...crossing,
    ...legendLayers,
    legendAreaLayer,
    ...legendUncertaintyLayers,
  ],
});
