import type { TopLevelSpec } from "vega-lite";
import { palette } from "../palette.ts";
import { colorChannel, dashChannel, fillChannel, shapeChannel, sizeChannel, strokeChannel } from "../series-scales.ts";

export type Layer = Extract<TopLevelSpec, { layer: unknown }>["layer"][number];

/** The grid shows through. */
export const bandOpacity = 0.22;

export const barWidth = 6;
export const barOpacity = 0.75;

type MarkStyle = { strokeWidth: number; strokeDash: number[]; strokeCap: "round" };

export const dotted: MarkStyle = { strokeWidth: 1.75, strokeDash: [0, 5], strokeCap: "round" };

/** A limit: short dashes as left, dots otherwise, to be told apart without colour. */
export const limitStyle = {
  strokeWidth: 1.75,
  strokeDash: { expr: "datum.series === 'asLeft' ? [5, 5] : [0, 5]" },
  strokeCap: { expr: "datum.series === 'asLeft' ? 'butt' : 'round'" },
} as const;

const signedLabel = "datum.value === 0 ? '0' : datum.label";

/** Reference distance, the same in every layer. */
export const xChannel = {
  field: "x",
  type: "quantitative",
  scale: { domain: { signal: "xDomain" }, nice: false, zero: false },
  axis: { title: { signal: "xTitle" }, format: "f", grid: false, tickCount: { expr: "ceil(width / 65)" } },
} as const;

/** Error in percent of span, on the left. */
export const yChannel = {
  field: "y",
  type: "quantitative",
  scale: { domain: { signal: "yDomain" }, nice: false, zero: false },
  axis: {
    title: { signal: "yTitle" },
    format: "+f",
    labelExpr: signedLabel,
    domain: false,
    grid: true,
    tickCount: { expr: "ceil(height / 45)" },
  },
} as const;

/** The same error as a distance, on the right. */
export const rightChannel = {
  field: "y",
  type: "quantitative",
  scale: { domain: { signal: "rightDomain" }, nice: false, zero: false },
  axis: { ...yChannel.axis, title: { signal: "rightTitle" }, orient: "right", grid: false },
} as const;

export const xAndYSignals = [
  { name: "xDomain", value: [0, 1] },
  { name: "yDomain", value: [0, 1] },
  { name: "xTitle", value: "" },
  { name: "yTitle", value: "" },
];

export const zeroLine: Layer = {
  data: { values: [{ zero: 0 }] },
  mark: { type: "rule", color: palette.quiet, strokeWidth: 1 },
  encoding: { y: { ...yChannel, field: "zero" } },
};

export const meanLines: Layer = {
  data: { name: "means" },
  mark: { type: "line", strokeWidth: 1.25, strokeJoin: "round" },
  encoding: {
    x: xChannel,
    y: yChannel,
    color: colorChannel,
    strokeDash: dashChannel,
    detail: { field: "shape", type: "nominal" },
  },
};

/** As found to the left of the marks, as left to the right, so that neither hides the other. */
const beside = { expr: "datum.series === 'asFound' ? -5 : 5" };
const bar = { data: { name: "uncertainties" }, style: { xOffset: beside, opacity: barOpacity } } as const;

const barEnd = (field: "low" | "high"): Layer => ({
  data: bar.data,
  mark: { type: "tick", orient: "horizontal", size: barWidth, thickness: 1.5, ...bar.style },
  encoding: { x: xChannel, y: { ...yChannel, field }, color: colorChannel },
});

/** From error − U to error + U, with an end cap at either end. */
export const uncertaintyBars: readonly Layer[] = [
  {
    data: bar.data,
    mark: { type: "rule", strokeWidth: 1.5, ...bar.style },
    encoding: { x: xChannel, y: { ...yChannel, field: "low" }, y2: { field: "high" }, color: colorChannel },
  },
  barEnd("low"),
  barEnd("high"),
];

/** Every other dot falls between two dashes, for limits of both phases often lie on each other. */
const betweenDashes = { expr: "datum.series === 'asFound' ? 2.5 : 0" };

/** The limits inside which an error passes. */
export const acceptanceLines: Layer = {
  data: { name: "acceptance" },
  mark: { type: "line", ...limitStyle, strokeDashOffset: betweenDashes },
  encoding: { x: xChannel, y: yChannel, color: colorChannel, detail: { field: "line", type: "nominal" } },
};

const marks = { x: xChannel, y: yChannel, stroke: strokeChannel, fill: fillChannel, shape: shapeChannel };
const markStyle = { type: "point", strokeWidth: 1, opacity: 1 } as const;

export const readingMarks: Layer = {
  data: { name: "readings" },
  mark: markStyle,
  encoding: { ...marks, size: sizeChannel },
};

export const meanMarks: Layer = {
  data: { name: "means" },
  mark: { ...markStyle, size: 88 },
  encoding: marks,
};

/** Each limit of the tolerance with its number, outside the band. */
export const limitLabels: Layer = {
  data: { name: "limitLabels" },
  mark: {
    ...{ type: "text", fontWeight: 600, color: palette.quiet },
    align: { expr: "datum.align" },
    baseline: { expr: "datum.side === 'high' ? 'bottom' : 'top'" },
    dy: { expr: "datum.side === 'high' ? -2 : 3" },
  },
  encoding: { x: xChannel, y: yChannel, text: { field: "text", type: "nominal" } },
};

/** The tolerance as an area with its two limit lines, against one of the vertical axes. */
export function toleranceLayers(channel: typeof yChannel | typeof rightChannel): readonly Layer[] {
  const data = { name: "tolerance" };
  const high = { ...channel, field: "high" };
  const low = { ...channel, field: "low" };
  const limit = { type: "line", color: palette.limit, strokeWidth: 1 } as const;
  return [
    {
      data,
      mark: { type: "area", color: palette.band, opacity: bandOpacity },
      encoding: { x: xChannel, y: high, y2: { field: "low" } },
    },
    { data, mark: limit, encoding: { x: xChannel, y: high } },
    { data, mark: limit, encoding: { x: xChannel, y: low } },
  ];
}
